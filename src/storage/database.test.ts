import { Dexie } from 'dexie';
import { IDBDatabase, IDBKeyRange } from 'fake-indexeddb';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { answerLimitsS, createDatabase, databaseVersion, type ProjectRow } from './database.ts';
import { storageProblemInWords } from './problems.ts';
import { answer, fakeBrowser, handTimers, rawRows } from './testing/fakes.ts';

let browser = fakeBrowser();
afterEach(() => {
  browser.closeAll();
  browser = fakeBrowser();
});

const row: ProjectRow = {
  id: 'p',
  name: 'House',
  changedAt: '2026-01-01T00:00:00.000Z',
  formatVersion: 1,
  revision: 1,
  size: 2,
  document: { of: 'a newer version' },
  setAside: [],
};

/** The database as a later release might have made it. */
async function newerDatabase(version: number) {
  const later = new Dexie('latchward', { indexedDB: browser.indexedDB, IDBKeyRange });
  later.version(version).stores({ projects: 'id, changedAt, client', rooms: 'id' });
  await later.open();
  await later.table('projects').put({ ...row, client: 'x' });
  later.close();
}

async function nativeState() {
  const database = await answer(browser.indexedDB.open('latchward'));
  const state = { version: database.version, tables: [...database.objectStoreNames] };
  database.close();
  return { ...state, projects: await rawRows(browser.indexedDB, 'projects') };
}

describe('a database that is newer than the code', () => {
  test('the accident: Dexie alone opens it, and may even change its version and tables', async () => {
    vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    vi.spyOn(console, 'debug').mockImplementation(() => undefined);
    await newerDatabase(databaseVersion + 1);
    const before = await nativeState();
    const careless = new Dexie('latchward', { indexedDB: browser.indexedDB, IDBKeyRange });
    careless.version(databaseVersion).stores({ projects: 'id, changedAt', commands: '++seq', meta: 'key' });
    await careless.open();
    await careless.table('projects').put({ ...row, document: 'overwritten' });
    careless.close();
    expect(await nativeState()).not.toEqual(before);
  });

  test('is refused with a plain sentence and left untouched', async () => {
    await newerDatabase(databaseVersion + 1);
    const before = await nativeState();
    const database = browser.window();
    const opened = await database.open();
    expect(opened).toEqual({ ok: false, problem: { kind: 'databaseTooNew' } });
    expect(storageProblemInWords({ kind: 'databaseTooNew' })).toMatch(/newer version.*left untouched/);
    const written = await database.run('writing', async (tables) => {
      await tables.projects.put(row);
      return {};
    });
    expect(written).toEqual({ ok: false, problem: { kind: 'databaseTooNew' } });
    expect(await nativeState()).toEqual(before);
  });

  test('is refused although it became newer while this window was closed for a moment', async () => {
    const database = browser.window();
    expect((await database.open()).ok).toBe(true);
    database.close();
    await newerDatabase(databaseVersion + 1);
    const before = await nativeState();
    const written = await database.run('writing', async (tables) => {
      await tables.projects.put(row);
      return {};
    });
    expect(written.ok).toBe(false);
    expect(await nativeState()).toEqual(before);
  });
});

describe('opening', () => {
  test('asking for the version of a database that does not exist creates none of its own', async () => {
    const database = browser.window();
    expect(await database.open()).toEqual({ ok: true });
    const { version, tables } = await nativeState();
    expect(version).toBe(databaseVersion * 10);
    expect(tables).toEqual(['backups', 'commands', 'meta', 'photos', 'projects']);
  });

  test('a browser without any database says so', async () => {
    const opened = await createDatabase({ indexedDB: undefined }).open();
    expect(opened).toMatchObject({ ok: false, problem: { kind: 'noDatabase' } });
  });

  test('a browser that refuses says why', async () => {
    const refusing = {
      open: () => {
        throw new DOMException('Not in private windows.', 'SecurityError');
      },
    } as unknown as IDBFactory;
    const opened = await createDatabase({ indexedDB: refusing, IDBKeyRange }).open();
    expect(opened.ok ? '' : storageProblemInWords(opened.problem)).toMatch(
      /Not in private windows.*save a copy/,
    );
  });
});

test('a database that never answers ends in a sentence, and the same opening serves later calls', async () => {
  const clock = handTimers();
  const silent = { open: () => new EventTarget() } as unknown as IDBFactory;
  const database = createDatabase({ indexedDB: silent, IDBKeyRange, timers: clock.timers });
  const opened = database.open();
  await clock.pass(answerLimitsS.opening * 1000);
  const result = await opened;
  expect(result.ok ? '' : storageProblemInWords(result.problem)).toMatch(/not answered for 8 seconds/);
});

test.each(['reading', 'writing'] as const)(
  'a database that hangs while %s ends in a sentence',
  async (doing) => {
    const clock = handTimers();
    const { indexedDB } = browser;
    const database = createDatabase({ indexedDB, IDBKeyRange, timers: clock.timers });
    await database.open();
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(
      () => new EventTarget() as ReturnType<IDBDatabase['transaction']>,
    );
    const asked = database.run(doing, async (tables) => ({ count: await tables.projects.count() }));
    await clock.settle();
    await clock.pass(answerLimitsS[doing] * 1000);
    const result = await asked;
    expect(result.ok ? '' : storageProblemInWords(result.problem)).toMatch(/not answered for|could not be/);
    vi.restoreAllMocks();
    database.close();
  },
);

describe('another window brings a newer version', () => {
  test('the last edits are flushed, then the database is given up for good', async () => {
    vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    const database = browser.window();
    await database.open();
    const flushed = vi.fn<() => Promise<void>>(async () => {
      const written = await database.run('writing', async (tables) => {
        await tables.projects.put(row);
        return {};
      });
      expect(written).toEqual({ ok: true });
    });
    database.onReplaced(flushed);
    await newerDatabase(databaseVersion + 1);
    expect(flushed).toHaveBeenCalledOnce();
    const after = await database.run('reading', async () => ({}));
    expect(after).toEqual({ ok: false, problem: { kind: 'databaseReplaced' } });
  });

  test('a flush that fails does not keep the database from the newer version', async () => {
    const database = browser.window();
    await database.open();
    database.onReplaced(() => Promise.reject(new Error('full')));
    await newerDatabase(databaseVersion + 1);
    expect(await database.open()).toMatchObject({ ok: false });
  });
});

describe('transactions', () => {
  test('all or nothing', async () => {
    const database = browser.window();
    const result = await database.run('writing', async (tables) => {
      await tables.projects.put(row);
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(result).toEqual({ ok: false, problem: { kind: 'full' } });
    expect(await rawRows(browser.indexedDB, 'projects')).toEqual([]);
  });
});
