import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Opened } from '../domain/versions/file.ts';
import { newestFormat } from '../domain/versions/migrations.ts';
import { mostBackups, tooMany } from './backups.ts';
import { createProjectStore, type ProjectStore } from './projectStore.ts';
import { fakeBrowser, rawPut, rawRows } from './testing/fakes.ts';
import { at, house } from './testing/projects.ts';

/** P9: a copy is kept before any migration or import, and a restore can itself be taken back. */
let browser = fakeBrowser();
let now = '2026-01-05T09:00:00.000Z';
let store: ProjectStore = createProjectStore(browser.window(), () => now);
beforeEach(() => {
  browser = fakeBrowser();
  now = '2026-01-05T09:00:00.000Z';
  store = createProjectStore(browser.window(), () => now);
});
afterEach(() => {
  browser.closeAll();
  vi.doUnmock('../domain/versions/migrations.ts');
  vi.resetModules();
});

const opened = (notes: string): Extract<Opened, { ok: true }> => ({
  ok: true,
  project: house(notes),
  migrated: [],
  setAside: [],
});
const saveFirst = (notes: string) =>
  store.save({ project: house(notes), position: at(1), commands: [], after: null, setAside: [] });

async function kept() {
  const rows = (await rawRows(browser.indexedDB, 'backups')) as {
    id: number;
    reason: string;
    document: { notes: string };
  }[];
  return rows.map((row) => [row.reason, row.document.notes]);
}

describe('P9: a copy is kept', () => {
  test('before a file takes the place of a stored project', async () => {
    await saveFirst('mine');
    await store.add(opened('from the file'));
    expect(await kept()).toEqual([['import', 'mine']]);
    expect(await store.load('p')).toMatchObject({ project: { notes: 'from the file' } });
  });

  test('of a file that had to be migrated, as it was', async () => {
    const raw = { format: 'latchward-project', formatVersion: 1, project: { notes: 'old shape' } };
    await store.add({ ...opened('new shape'), migrated: ['RunBecomesRunFt'] }, raw);
    expect(await kept()).toEqual([['migration', 'old shape']]);
  });

  test('before a project is removed, and it can be brought back', async () => {
    await saveFirst('mine');
    await store.remove('p');
    expect(await store.load('p')).toMatchObject({ ok: false, problem: { kind: 'noSuchProject' } });
    const listed = await store.listBackups('p');
    if (!listed.ok) throw new Error('unreadable');
    await store.restore(listed.backups[0]?.id ?? 0);
    expect(await store.load('p')).toMatchObject({ project: { notes: 'mine' } });
  });

  test('of today’s state before an older one is restored', async () => {
    await saveFirst('monday');
    now = '2026-01-06T09:00:00.000Z';
    await store.save({
      project: house('tuesday'),
      position: at(2),
      commands: [],
      after: at(1),
      setAside: [],
    });
    const listed = await store.listBackups('p');
    if (!listed.ok) throw new Error('unreadable');
    expect(listed.backups.map((one) => one.reason)).toEqual(['day']);
    const restored = await store.restore(listed.backups[0]?.id ?? 0);
    expect(restored).toMatchObject({ ok: true, project: { notes: 'monday' }, position: { revision: 3 } });
    expect(await kept()).toEqual([
      ['day', 'monday'],
      ['restore', 'tuesday'],
    ]);
  });

  test('once a day, and not with every save of that day', async () => {
    await saveFirst('one');
    await store.save({ project: house('two'), position: at(2), commands: [], after: at(1), setAside: [] });
    expect(await kept()).toEqual([]);
    now = '2026-01-06T09:00:00.000Z';
    await store.save({ project: house('three'), position: at(3), commands: [], after: at(2), setAside: [] });
    await store.save({ project: house('four'), position: at(4), commands: [], after: at(3), setAside: [] });
    expect(await kept()).toEqual([['day', 'two']]);
  });

  test('before a migrated project is written for the first time, in the same transaction', async () => {
    // A later release of this code: one migration more.
    const later = newestFormat + 1;
    vi.resetModules();
    vi.doMock('../domain/versions/migrations.ts', () => ({
      migrations: [
        {
          to: later,
          name: 'NotesInCapitals',
          up: (old: { notes: string }) => ({ ...old, notes: old.notes.toUpperCase() }),
        },
      ],
      newestFormat: later,
    }));
    await saveFirst('old');
    const release = await import('./projectStore.ts');
    const { createDatabase } = await import('./database.ts');
    const { IDBKeyRange } = await import('fake-indexeddb');
    const database = createDatabase({ indexedDB: browser.indexedDB, IDBKeyRange });
    const newer = release.createProjectStore(database, () => now);
    const loaded = await newer.load('p');
    expect(loaded).toMatchObject({ ok: true, migrated: ['NotesInCapitals'], project: { notes: 'OLD' } });
    expect(await kept()).toEqual([]);
    await newer.save({
      project: house('OLD and more'),
      position: at(2),
      commands: [],
      after: at(1),
      setAside: [],
    });
    expect(await kept()).toEqual([['migration', 'old']]);
    expect(await rawRows(browser.indexedDB, 'projects')).toMatchObject([{ formatVersion: later }]);
    database.close();
    // The older release, still open in another window, must keep its hands off now.
    expect(await store.load('p')).toMatchObject({ ok: false, problem: { kind: 'recordTooNew' } });
  });

  test('and when it cannot be kept, nothing is replaced', async () => {
    await saveFirst('mine');
    const { IDBObjectStore } = await import('fake-indexeddb');
    vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    expect(await store.add(opened('other'))).toMatchObject({ ok: false, problem: { kind: 'full' } });
    expect(await store.remove('p')).toMatchObject({ ok: false, problem: { kind: 'full' } });
    vi.restoreAllMocks();
    expect(await store.load('p')).toMatchObject({ project: { notes: 'mine' } });
  });
});

test('a backup of a newer version, or one that is gone, is not restored', async () => {
  await saveFirst('mine');
  await rawPut(browser.indexedDB, 'backups', {
    id: 9,
    projectId: 'p',
    name: 'House',
    at: now,
    reason: 'day',
    formatVersion: 99,
    document: {},
  });
  expect(await store.restore(9)).toMatchObject({ ok: false, problem: { kind: 'recordTooNew', found: 99 } });
  expect(await store.restore(10)).toMatchObject({ ok: false, problem: { kind: 'noSuchBackup' } });
  expect(await store.load('p')).toMatchObject({ project: { notes: 'mine' } });
});

test('at most ten copies: the three newest, then the newest of each day', () => {
  const aDay = fc
    .integer({ min: 1, max: 28 })
    .map((day) => `2026-01-${String(day).padStart(2, '0')}T09:00:00.000Z`);
  fc.assert(
    fc.property(fc.array(aDay, { maxLength: 40 }), (days) => {
      const all = days
        .toSorted()
        .map((at, index) => ({ id: index + 1, at, reason: 'day' as const, formatVersion: newestFormat }));
      const gone = new Set(tooMany(all));
      const left = all.filter((backup) => !gone.has(backup.id)).toReversed();
      const newestFirst = all.toReversed();
      expect(left.length).toBeLessThanOrEqual(mostBackups);
      expect(left.slice(0, 3)).toEqual(newestFirst.slice(0, 3));
      const older = left.slice(3).map((backup) => backup.at);
      expect(new Set(older).size).toBe(older.length);
      const daysBefore = new Set(newestFirst.slice(3).map((backup) => backup.at));
      expect(older).toEqual([...daysBefore].slice(0, mostBackups - 3));
    }),
  );
});

test('copies are thinned out as they are added, per project', async () => {
  await saveFirst('mine');
  for (let count = 0; count < 8; count += 1) {
    // oxlint-disable-next-line no-await-in-loop -- copies are counted in the order they come
    await store.add(opened(`import ${count}`));
  }
  // All of one day: the three newest, and the newest of the rest.
  expect(await kept()).toEqual([
    ['import', 'import 3'],
    ['import', 'import 4'],
    ['import', 'import 5'],
    ['import', 'import 6'],
  ]);
});

test('P9: the copy made before a migration outlives any number of others', async () => {
  const raw = { format: 'latchward-project', formatVersion: 1, project: { notes: 'old shape' } };
  await store.add({ ...opened('new shape'), migrated: ['RunBecomesRunFt'] }, raw);
  for (let count = 0; count < 8; count += 1) {
    // oxlint-disable-next-line no-await-in-loop -- copies are counted in the order they come
    await store.add(opened(`import ${count}`));
  }
  expect(await kept()).toContainEqual(['migration', 'old shape']);
});

test('P9: a copy is kept before a door list is brought in', async () => {
  await saveFirst('mine');
  expect(await store.backup('p', 'list')).toEqual({ ok: true });
  expect(await kept()).toEqual([['list', 'mine']]);
});

test('an issued edition is frozen, outlives any number of copies, and its number is used once', async () => {
  await saveFirst('as issued');
  const edition = { number: '1', on: '2026-03-02', purpose: 'Bid', by: 'Estimator' };
  expect(await store.issue('p', edition)).toEqual({ ok: true });
  expect(await store.issue('p', edition)).toMatchObject({ ok: false, problem: { kind: 'editionTaken' } });
  for (let count = 0; count < 12; count += 1) {
    // oxlint-disable-next-line no-await-in-loop -- copies are counted in the order they come
    await store.add(opened(`import ${count}`));
  }
  const listed = await store.listBackups('p');
  const issued = listed.ok ? listed.backups.filter((backup) => backup.edition !== undefined) : [];
  expect(issued.map((backup) => backup.edition)).toEqual([edition]);
  expect(await store.issued(issued[0]?.id ?? 0)).toMatchObject({ project: { notes: 'as issued' }, edition });
});
