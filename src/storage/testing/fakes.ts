// oxlint-disable-next-line no-restricted-imports -- a database in memory, for tests only
import { IDBFactory, IDBKeyRange } from 'fake-indexeddb';
import type { Timers } from '../timers.ts';
import { createKeeper, type Files } from '../copy/keeper.ts';
import { type Call, inTurns } from '../copy/turns.ts';
import type { Answer, SecondCopy } from '../copy/secondCopy.ts';
import { createDatabase, type Database } from '../database.ts';
import type { LocalKeeper } from '../localKeeper.ts';
import type { Channel, Locks } from '../tabGuard.ts';

/** One browser: every window of it sees the same database. */
export function fakeBrowser() {
  const indexedDB = new IDBFactory();
  const open: Database[] = [];
  return {
    indexedDB,
    window: (): Database => {
      const database = createDatabase({ indexedDB, IDBKeyRange });
      open.push(database);
      return database;
    },
    closeAll: () => {
      for (const database of open) database.close();
    },
  };
}

/** Everything in a store, as raw as it lies there. */
export function rawRows(indexedDB: globalThis.IDBFactory, table: string): Promise<unknown[]> {
  return raw(indexedDB, table, 'readonly', (store) => store.getAll() as IDBRequest<unknown[]>);
}

export async function rawPut(indexedDB: globalThis.IDBFactory, table: string, row: unknown): Promise<void> {
  await raw(indexedDB, table, 'readwrite', (store) => store.put(row));
}

export async function rawClear(indexedDB: globalThis.IDBFactory, table: string): Promise<void> {
  await raw(indexedDB, table, 'readwrite', (store) => store.clear() as IDBRequest<unknown>);
}

async function raw<T>(
  indexedDB: globalThis.IDBFactory,
  table: string,
  mode: IDBTransactionMode,
  ask: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const database = await answer(indexedDB.open('latchward'));
  try {
    return await answer(ask(database.transaction(table, mode).objectStore(table)));
  } finally {
    database.close();
  }
}

export function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.addEventListener('success', () => resolve(request.result));
    request.addEventListener('error', () => reject(request.error ?? new Error('The request failed.')));
  });
}

/** Time that passes only when told. */
export function handTimers() {
  let now = 0;
  let count = 0;
  const waiting = new Map<number, { readonly due: number; readonly work: () => void }>();
  const timers: Timers = {
    set: (work, milliseconds) => {
      count += 1;
      waiting.set(count, { due: now + milliseconds, work });
      return count;
    },
    clear: (timer) => {
      waiting.delete(timer as number);
    },
  };
  const settle = async () => {
    for (let round = 0; round < 20; round += 1) {
      // oxlint-disable-next-line no-await-in-loop -- promises that are ready get their turn, round by round
      await Promise.resolve();
    }
  };
  return {
    timers,
    settle,
    waiting: () => waiting.size,
    pass: async (milliseconds: number) => {
      const end = now + milliseconds;
      await settle();
      for (;;) {
        const next = [...waiting].toSorted(([, a], [, b]) => a.due - b.due)[0];
        if (!next || next[1].due > end) break;
        waiting.delete(next[0]);
        now = next[1].due;
        next[1].work();
        // oxlint-disable-next-line no-await-in-loop
        await settle();
      }
      now = end;
      await settle();
    },
  };
}

/** Web locks as the standard describes them, for one browser. */
export function fakeLocks(): Locks {
  const queues = new Map<string, (() => void)[]>();
  const held = new Set<string>();
  const request = async (
    name: string,
    options: LockOptions,
    work: (lock: Lock | null) => Promise<unknown>,
  ): Promise<unknown> => {
    // Even a free lock is never given in the same turn.
    await Promise.resolve();
    if (held.has(name)) {
      if (options.ifAvailable) return work(null);
      await new Promise<void>((resolve, reject) => {
        const queue = queues.get(name) ?? [];
        queues.set(name, queue);
        queue.push(resolve);
        options.signal?.addEventListener('abort', () => {
          if (!queue.includes(resolve)) return;
          queue.splice(queue.indexOf(resolve), 1);
          reject(new DOMException('The request was aborted.', 'AbortError'));
        });
      });
    }
    held.add(name);
    try {
      return await work({ name, mode: 'exclusive' });
    } finally {
      // The browser hears of the end a little later than the window itself.
      for (let turn = 0; turn < 5; turn += 1) {
        // oxlint-disable-next-line no-await-in-loop
        await Promise.resolve();
      }
      held.delete(name);
      queues.get(name)?.shift()?.();
    }
  };
  return { request: request as Locks['request'] };
}

/** Windows that hear one another, but never themselves. */
export function fakeChannels() {
  const members = new Map<string, Set<(message: unknown) => void>>();
  return (name: string): Channel => {
    const all = members.get(name) ?? new Set();
    members.set(name, all);
    const mine = new Set<(message: unknown) => void>();
    return {
      post: (message) => {
        for (const hear of all) {
          if (!mine.has(hear)) queueMicrotask(() => all.has(hear) && hear(structuredClone(message)));
        }
      },
      listen: (hear) => {
        mine.add(hear);
        all.add(hear);
      },
      close: () => {
        for (const hear of mine) all.delete(hear);
      },
    };
  };
}

/** A localStorage of its own, that nothing else writes into. */
export function memoryKeeper(): LocalKeeper {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (index) => [...kept.keys()][index] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}

/** Files in memory; they outlive every window, as the private file system does. */
export function fakeFiles() {
  const kept = new Map<string, Uint8Array>();
  const files: Files = {
    names: () => Promise.resolve([...kept.keys()]),
    read: (name) => Promise.resolve(kept.get(name)),
    write: (name, bytes) => Promise.resolve(void kept.set(name, bytes)),
    append: (name, bytes) => {
      const before = kept.get(name) ?? new Uint8Array();
      const after = new Uint8Array(before.length + bytes.length);
      after.set(before);
      after.set(bytes, before.length);
      return Promise.resolve(void kept.set(name, after));
    },
    release: () => undefined,
    remove: (name) => Promise.resolve(void kept.delete(name)),
  };
  return { kept, files };
}

/** The second copy without a worker; calls come in the same turns. */
export function fakeSecondCopy(files: Files): SecondCopy {
  const doInTurn = inTurns(createKeeper(files));
  const ask = async <T>(call: Call, ...given: readonly unknown[]): Promise<Answer<T>> => {
    try {
      return { ok: true, value: structuredClone(await doInTurn(call, structuredClone(given))) as T };
    } catch (error) {
      return { ok: false, says: String(error) };
    }
  };
  return {
    ids: () => ask('ids'),
    look: (id) => ask('look', id),
    put: (copy) => ask('put', copy),
    append: (id, lines) => ask('append', id, lines),
    openLog: (id) => ask('openLog', id),
    release: () => ask('release'),
    remove: (id) => ask('remove', id),
    putPhoto: (sha256, bytes) => ask('putPhoto', sha256, bytes),
    photo: (sha256) => ask('photo', sha256),
    dropPhotos: (names) => ask('dropPhotos', names),
    close: () => undefined,
  };
}
