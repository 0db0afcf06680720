import { Dexie, type EntityTable, type InsertType, type Table } from 'dexie';
import type { Command } from '../domain/commands/command.ts';
import type { SetAside } from '../domain/model/project.ts';
import { problemFrom, Refused, type Result } from './problems.ts';

/** Raised when tables or indexes change; the shape of a project has its own number, `formatVersion`. */
export const databaseVersion = 1;

export interface ProjectRow {
  readonly id: string;
  readonly name: string;
  readonly changedAt: string;
  /** Our own number: the database's version says nothing about a single record. */
  readonly formatVersion: number;
  /** Counts the writes; a window that missed one must not write over it. */
  readonly revision: number;
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

export type BackupReason = 'migration' | 'import' | 'restore' | 'remove' | 'damaged' | 'day';

export interface BackupRow {
  readonly id: number;
  readonly projectId: string;
  readonly name: string;
  readonly at: string;
  readonly reason: BackupReason;
  readonly formatVersion: number;
  readonly document: unknown;
}

export interface Tables {
  readonly projects: EntityTable<ProjectRow, 'id'>;
  /** Append-only: who did what, when. */
  readonly commands: EntityTable<CommandRow, 'seq'>;
  readonly backups: EntityTable<BackupRow, 'id'>;
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
}

export function createDatabase(needs: DatabaseNeeds = {}): Database {
  const name = needs.name ?? 'latchward';
  const factory = 'indexedDB' in needs ? needs.indexedDB : browserFactory();
  const range = needs.IDBKeyRange ?? globalThis.IDBKeyRange;
  const dexie = new Dexie(name, {
    // An automatic reopening would skip the check for a newer database.
    autoOpen: false,
    // "Saved" must hold when the battery dies a second later.
    chromeTransactionDurability: 'strict',
    ...(factory ? { indexedDB: factory, IDBKeyRange: range } : {}),
  });
  dexie.version(databaseVersion).stores({
    projects: 'id, changedAt',
    commands: '++seq, projectId',
    backups: '++id, projectId',
    meta: 'key',
  });
  const tables: Tables = {
    projects: dexie.table('projects'),
    commands: dexie.table('commands'),
    backups: dexie.table('backups'),
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

  const open = async (): Promise<Result<object>> => {
    if (replaced) return { ok: false, problem: { kind: 'databaseReplaced' } };
    if (!factory) return { ok: false, problem: { kind: 'noDatabase', says: 'it has no database' } };
    if (dexie.isOpen()) return { ok: true };
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
      const says = error instanceof Error ? error.message.split('\n')[0] || error.name : String(error);
      return { ok: false, problem: { kind: 'noDatabase', says } };
    }
  };

  return {
    open,
    run: async <T extends object>(mode: Mode, work: (tables: Tables) => PromiseLike<T>) => {
      const opened = await open();
      if (!opened.ok) return opened;
      try {
        const all = [tables.projects, tables.commands, tables.backups, tables.meta];
        const value = await dexie.transaction(mode === 'reading' ? 'r' : 'rw', all, async (transaction) => {
          // Dexie reopens by itself after some errors, so the version is looked at inside as well.
          if (isNewer(transaction.idbtrans.db.version)) throw new Refused({ kind: 'databaseTooNew' });
          return await work(tables);
        });
        return { ok: true, ...value };
      } catch (error) {
        return { ok: false, problem: problemFrom(error, mode) };
      }
    },
    onReplaced: (next) => {
      flush = next;
    },
    close: () => dexie.close({ disableAutoOpen: true }),
  };
}

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
