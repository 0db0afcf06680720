import { Dexie, type EntityTable, type InsertType, type Table } from 'dexie';
import type { Command } from '../domain/commands/command.ts';
import type { SetAside } from '../domain/model/project.ts';
import { problemFrom, Refused, type Result, type StorageProblem } from './problems.ts';
import { browserTimers, type Timers } from './timers.ts';

/** Raised when tables or indexes change; the shape of a project has its own number, `formatVersion`. */
export const databaseVersion = 2;

export interface ProjectRow {
  readonly id: string;
  readonly name: string;
  readonly changedAt: string;
  /** Our own number: the database's version says nothing about a single record. */
  readonly formatVersion: number;
  /** Counts the edits that went into it; a window that missed one must not write over it. */
  readonly revision: number;
  /** Names the last of them; absent in records of the first release. */
  readonly tip?: string;
  readonly size: number;
  /** A plain object as it was saved; read it only through domain/versions. */
  readonly document: unknown;
  /** Parts of a damaged document, kept until the user has seen to them. */
  readonly setAside: readonly SetAside[];
}

export interface CommandRow {
  readonly seq: number;
  readonly projectId: string;
  readonly command: Command;
}

export type BackupReason =
  | 'migration'
  | 'import'
  | 'list'
  | 'restore'
  | 'remove'
  | 'damaged'
  | 'day'
  | 'copy'
  | 'apart'
  | 'edition';

/** A copy that went out: what stands on its papers. It is never edited and never thinned out. */
export interface Edition {
  readonly number: string;
  /** A day, as 2026-03-02. */
  readonly on: string;
  readonly purpose: string;
  readonly by: string;
}

export interface BackupRow {
  readonly id: number;
  readonly projectId: string;
  readonly name: string;
  readonly at: string;
  readonly reason: BackupReason;
  /** Of a copy that was issued. */
  readonly edition?: Edition;
  readonly formatVersion: number;
  readonly document: unknown;
}

/** A picture by the SHA-256 of its bytes. It is part of no project: whatever names it, it lies here once. */
export interface PhotoRow {
  readonly sha256: string;
  readonly bytes: Uint8Array;
  /** When it was stored last; a new one may still wait for the record that names it. */
  readonly at: string;
}

export interface Tables {
  readonly projects: EntityTable<ProjectRow, 'id'>;
  /** Who did what, when; only ever added to, and thinned from its old end. */
  readonly commands: EntityTable<CommandRow, 'seq'>;
  readonly backups: EntityTable<BackupRow, 'id'>;
  readonly photos: EntityTable<PhotoRow, 'sha256'>;
  readonly meta: Table<{ readonly key: string; readonly value: unknown }, string>;
}
export type NewBackup = InsertType<BackupRow, 'id'>;

type Mode = 'reading' | 'writing';

export interface Database {
  readonly open: () => Promise<Result<object>>;
  /** One transaction over all tables; resolves only after the browser has said that it is complete. */
  readonly run: <T extends object>(
    mode: Mode,
    work: (tables: Tables) => PromiseLike<T>,
  ) => Promise<Result<T>>;
  /** A newer version (or a wipe) asks for the database: last edits are flushed, then it is closed for good. */
  readonly onReplaced: (flush: () => Promise<void>) => void;
  readonly close: () => void;
}

export interface DatabaseNeeds {
  readonly name?: string;
  readonly indexedDB?: IDBFactory | undefined;
  readonly IDBKeyRange?: typeof globalThis.IDBKeyRange | undefined;
  readonly timers?: Timers;
}

/** How long the database may take before the page goes on without it. A save of 20,000 openings takes 5 s, reading them 6 s. */
export const answerLimitsS = { opening: 8, reading: 12, writing: 15 } as const;

export function createDatabase(needs: DatabaseNeeds = {}): Database {
  const name = needs.name ?? 'latchward';
  const factory = 'indexedDB' in needs ? needs.indexedDB : browserFactory();
  const range = needs.IDBKeyRange ?? globalThis.IDBKeyRange;
  const timers = needs.timers ?? browserTimers;
  const dexie = new Dexie(name, {
    // An automatic reopening would skip the check for a newer database.
    autoOpen: false,
    // "Saved" must hold when the battery dies a second later.
    chromeTransactionDurability: 'strict',
    ...(factory ? { indexedDB: factory, IDBKeyRange: range } : {}),
  });
  dexie.version(1).stores({
    projects: 'id, changedAt',
    commands: '++seq, projectId',
    backups: '++id, projectId',
    meta: 'key',
  });
  dexie.version(databaseVersion).stores({ photos: 'sha256' });
  const tables: Tables = {
    projects: dexie.table('projects'),
    commands: dexie.table('commands'),
    backups: dexie.table('backups'),
    photos: dexie.table('photos'),
    meta: dexie.table('meta'),
  };

  let replaced = false;
  let flush: () => Promise<void> = () => Promise.resolve();
  dexie.on('versionchange', () => {
    const leave = () => {
      replaced = true;
      dexie.close({ disableAutoOpen: true });
    };
    flush().then(leave, leave);
    // False keeps Dexie from its own answer: closing at once (losing the flush) and opening again later.
    return false;
  });

  let blocked = false;
  dexie.on('blocked', () => {
    blocked = true;
  });

  /** A database may never answer, and an awaited promise that never ends would leave the page waiting for ever. */
  const inTime = <T>(doing: keyof typeof answerLimitsS, work: Promise<Result<T>>): Promise<Result<T>> =>
    new Promise((resolve) => {
      const seconds = answerLimitsS[doing];
      const timer = timers.set(
        () => resolve({ ok: false, problem: { kind: 'noAnswer', doing, seconds, blocked } }),
        seconds * 1000,
      );
      void work.then((result) => {
        timers.clear(timer);
        resolve(result);
      });
    });

  const openNow = async (): Promise<Result<object>> => {
    if (!factory) return noDatabase('it has no database');
    try {
      // Asked before Dexie touches it: on a newer database Dexie tries again without a version, opens it,
      // and may even add tables that it misses.
      if (isNewer(await storedVersion(factory, name))) {
        return { ok: false, problem: { kind: 'databaseTooNew' } };
      }
      await dexie.open();
      if (isNewer(dexie.backendDB().version)) {
        dexie.close({ disableAutoOpen: true });
        return { ok: false, problem: { kind: 'databaseTooNew' } };
      }
      return { ok: true };
    } catch (error) {
      return noDatabase(error instanceof Error ? error.message.split('\n')[0] || error.name : String(error));
    }
  };

  /** One opening at a time: a call that came too early for a slow database is answered by the same opening. */
  let opening: Promise<Result<object>> | undefined;
  const open = (): Promise<Result<object>> => {
    if (replaced) return Promise.resolve({ ok: false, problem: { kind: 'databaseReplaced' } });
    if (dexie.isOpen()) return Promise.resolve({ ok: true });
    opening ??= openNow().finally(() => {
      opening = undefined;
    });
    return inTime('opening', opening);
  };

  const transact = async <T extends object>(mode: Mode, work: (tables: Tables) => PromiseLike<T>) => {
    try {
      const all = [tables.projects, tables.commands, tables.backups, tables.photos, tables.meta];
      const value = await dexie.transaction(mode === 'reading' ? 'r' : 'rw', all, async (transaction) => {
        // Dexie reopens by itself after some errors, so the version is looked at inside as well.
        if (isNewer(transaction.idbtrans.db.version)) throw new Refused({ kind: 'databaseTooNew' });
        return await work(tables);
      });
      return { ok: true as const, ...value };
    } catch (error) {
      return { ok: false as const, problem: problemFrom(error, mode) };
    }
  };

  return {
    open,
    run: async <T extends object>(mode: Mode, work: (tables: Tables) => PromiseLike<T>) => {
      const opened = await open();
      return opened.ok ? inTime<T>(mode, transact(mode, work)) : opened;
    },
    onReplaced: (next) => {
      flush = next;
    },
    close: () => dexie.close({ disableAutoOpen: true }),
  };
}

const noDatabase = (says: string): { ok: false; problem: StorageProblem } => ({
  ok: false,
  problem: { kind: 'noDatabase', says },
});

/** Reading the property throws where a browser blocks all storage. */
function browserFactory(): IDBFactory | undefined {
  try {
    return globalThis.indexedDB;
  } catch {
    return undefined;
  }
}

/** Dexie multiplies its version by ten, and adds less than ten when it mends a table by itself. */
const isNewer = (nativeVersion: number) => Math.floor(nativeVersion / 10) > databaseVersion;

/** The native version of the stored database, 0 when there is none; asking creates nothing. */
function storedVersion(factory: IDBFactory, name: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const request = factory.open(name);
    request.addEventListener('upgradeneeded', () => request.transaction?.abort());
    request.addEventListener('success', () => {
      const { version } = request.result;
      request.result.close();
      resolve(version);
    });
    request.addEventListener('error', (event) => {
      event.preventDefault();
      if (request.error?.name === 'AbortError') resolve(0);
      else reject(request.error ?? new Error('The database cannot be opened.'));
    });
  });
}
