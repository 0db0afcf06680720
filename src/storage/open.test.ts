import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openProjectText } from '../domain/versions/file.ts';
import { migrations, newestFormat } from '../domain/versions/migrations.ts';
import { commandsKept, createProjectStore } from './projectStore.ts';
import { storageProblemInWords } from './problems.ts';
import { fakeBrowser, rawPut, rawRows } from './testing/fakes.ts';
import { at, house, noteCommand } from './testing/projects.ts';

let browser = fakeBrowser();
const clock = () => '2026-01-05T09:00:00.000Z';
beforeEach(() => {
  browser = fakeBrowser();
});
afterEach(() => {
  browser.closeAll();
});

async function everything() {
  const tables = ['projects', 'commands', 'backups', 'meta'];
  const rows = await Promise.all(tables.map((table) => rawRows(browser.indexedDB, table)));
  return JSON.stringify(rows);
}

const stored = (over: object) => ({
  id: 'p',
  name: 'House',
  changedAt: '2026-01-01T00:00:00.000Z',
  formatVersion: newestFormat,
  revision: 4,
  size: 9,
  document: house('as stored'),
  setAside: [],
  ...over,
});

async function windowWith(row: object) {
  const database = browser.window();
  await database.open();
  await rawPut(browser.indexedDB, 'projects', row);
  return createProjectStore(database, clock);
}

/** P1: opening never changes what is stored. */
describe('P1: opening a project changes nothing that is stored', () => {
  const frozen = openProjectText(readFileSync('tests/files/format-3.json', 'utf8'));
  const frozenProject = frozen.ok ? frozen.project : house();
  test.each([
    ['as it was saved', stored({})],
    ['with everything a file can hold', stored({ document: frozenProject, id: frozenProject.id })],
    ['with damaged parts', stored({ document: { ...house(), openings: { a: 'door' } } })],
    ['of a newer version', stored({ formatVersion: newestFormat + 1 })],
    ['beyond reading', stored({ document: 'porridge' })],
  ])('%s', async (_what, row) => {
    const store = await windowWith(row);
    const before = await everything();
    await store.list();
    await store.load(row.id);
    await store.load(row.id);
    await store.listBackups(row.id);
    expect(await everything()).toBe(before);
  });
});

/** A project that the first release stored in this browser, opened and edited by this one. */
describe('a project stored under format 1', () => {
  const file = JSON.parse(readFileSync('tests/files/format-1.json', 'utf8')) as {
    readonly project: { readonly id: string; readonly spaces: object };
  };
  const old = stored({ id: file.project.id, formatVersion: 1, document: file.project });

  test('opens with its spaces brought up to date, and stays stored as it was until something is saved', async () => {
    const store = await windowWith(old);
    const before = await everything();
    const loaded = await store.load(old.id);
    if (!loaded.ok) throw new Error(storageProblemInWords(loaded.problem));
    expect(loaded.migrated).toEqual(migrations.map((step) => step.name));
    expect(loaded.setAside).toEqual([]);
    expect(loaded.project.spaces['s1']).toMatchObject({ name: 'Corridor', occupantLoad: 40, use: null });
    expect(loaded.project.hardwareSets).toEqual({});
    expect(await everything()).toBe(before);

    const saved = await store.save({ ...loaded, position: at(5), commands: [], after: loaded.position });
    expect(saved.ok).toBe(true);
    expect(await rawRows(browser.indexedDB, 'projects')).toMatchObject([{ formatVersion: newestFormat }]);
    expect(await rawRows(browser.indexedDB, 'backups')).toMatchObject([
      { reason: 'migration', formatVersion: 1, document: file.project },
    ]);
  });
});

/** P5: a record of a newer version is neither read nor written over, by any way in. */
describe('P5: a stored project of a newer version', () => {
  const newer = stored({ formatVersion: newestFormat + 1, document: { shape: 'unheard of' } });

  test('every way in is refused with a plain sentence and leaves it untouched', async () => {
    const store = await windowWith(newer);
    const before = await everything();
    const opened = openProjectText(
      JSON.stringify({ format: 'latchward-project', formatVersion: newestFormat, project: house() }),
    );
    if (!opened.ok) throw new Error('unreadable');
    const tried = await Promise.all([
      store.load('p'),
      store.save({
        project: house(),
        commands: [noteCommand('c', 'x')],
        position: at(5),
        after: at(4),
        setAside: [],
      }),
      store.add(opened),
      store.remove('p'),
    ]);
    for (const result of tried) {
      expect(result.ok ? 'done' : storageProblemInWords(result.problem)).toMatch(
        new RegExp(`“House” was stored by a newer version .format ${newestFormat + 1}.*left untouched`),
      );
    }
    expect(await everything()).toBe(before);
  });

  test('it became newer after this window had opened it', async () => {
    const store = await windowWith(stored({}));
    const loaded = await store.load('p');
    if (!loaded.ok) throw new Error('unreadable');
    await rawPut(browser.indexedDB, 'projects', { ...newer, revision: loaded.position.revision });
    const before = await everything();
    const saved = await store.save({
      project: house('mine'),
      commands: [],
      position: at(5),
      after: loaded.position,
      setAside: [],
    });
    expect(saved).toMatchObject({ ok: false, problem: { kind: 'recordTooNew' } });
    expect(await everything()).toBe(before);
  });
});

describe('saving', () => {
  test('stores project and log in one go, and what is loaded is what was saved', async () => {
    const store = createProjectStore(browser.window(), clock);
    const commands = [noteCommand('c1', 'one'), noteCommand('c2', 'two')];
    const first = await store.save({
      project: house('two'),
      commands,
      position: at(1),
      after: null,
      setAside: [],
    });
    expect(first).toEqual({ ok: true, at: clock() });
    expect(await store.load('p')).toMatchObject({ ok: true, project: house('two'), position: at(1) });
    expect(await store.listCommands('p')).toEqual({ ok: true, commands });
    expect(await store.list()).toMatchObject({
      projects: [{ id: 'p', name: 'House', formatVersion: newestFormat }],
    });
  });

  test('a window that missed a save cannot write over it', async () => {
    const [one, two] = [browser.window(), browser.window()].map((db) => createProjectStore(db, clock));
    if (!one || !two) throw new Error('no windows');
    await one.save({ project: house('first'), commands: [], position: at(1), after: null, setAside: [] });
    await two.save({ project: house('second'), commands: [], position: at(2), after: at(1), setAside: [] });
    const late = await one.save({
      project: house('third'),
      commands: [noteCommand('c', 'third')],
      position: at(3),
      after: at(1),
      setAside: [],
    });
    expect(late).toMatchObject({ ok: false, problem: { kind: 'changedElsewhere' } });
    const again = await two.save({
      project: house('new'),
      commands: [],
      position: at(1),
      after: null,
      setAside: [],
    });
    expect(again).toMatchObject({ ok: false, problem: { kind: 'changedElsewhere' } });
    expect(await two.load('p')).toMatchObject({ project: house('second') });
    expect(await two.listCommands('p')).toMatchObject({ commands: [] });
  });

  test('a project that was removed elsewhere is not brought back by a late save', async () => {
    const store = createProjectStore(browser.window(), clock);
    await store.save({ project: house(), commands: [], position: at(1), after: null, setAside: [] });
    await store.remove('p');
    const late = await store.save({
      project: house(),
      commands: [],
      position: at(2),
      after: at(1),
      setAside: [],
    });
    expect(late).toMatchObject({ ok: false, problem: { kind: 'storedGone' } });
  });

  test('a write that was given up and ended late all the same is this window’s own', async () => {
    const real = browser.window();
    let isDeaf = false;
    const store = createProjectStore(
      {
        ...real,
        run: async (mode, work) => {
          const done = await real.run(mode, work);
          const problem = { kind: 'noAnswer', doing: 'writing', seconds: 15, blocked: false } as const;
          return isDeaf ? { ok: false, problem } : done;
        },
      },
      clock,
    );
    await store.save({ project: house('one'), position: at(1), commands: [], after: null, setAside: [] });
    isDeaf = true;
    await store.save({ project: house('two'), position: at(2), commands: [], after: at(1), setAside: [] });
    isDeaf = false;
    const again = { project: house('three'), position: at(3), commands: [], after: at(1), setAside: [] };
    expect(await store.save(again)).toMatchObject({ ok: true });
    expect(await store.load('p')).toMatchObject({ project: house('three') });
  });

  test('the list of edits keeps the newest two thousand', async () => {
    const store = createProjectStore(browser.window(), clock);
    const commands = Array.from({ length: commandsKept + 200 }, (_, index) => noteCommand(`c${index}`, 'x'));
    await store.save({ project: house(), position: at(1), commands, after: null, setAside: [] });
    const listed = await store.listCommands('p');
    expect(listed.ok && [listed.commands.length, listed.commands[0]?.id]).toEqual([commandsKept, 'c200']);
  });

  test('and what decided something, however old it is', async () => {
    const store = createProjectStore(browser.window(), clock);
    const choice = {
      ...noteCommand('chosen', 'x'),
      edits: [{ kind: 'setOverride' as const, id: 'a', value: null }],
    };
    const notes = Array.from({ length: commandsKept + 200 }, (_, index) => noteCommand(`c${index}`, 'x'));
    const commands = [noteCommand('old', 'x'), choice, ...notes];
    await store.save({ project: house(), position: at(1), commands, after: null, setAside: [] });
    const listed = await store.listCommands('p');
    expect(listed.ok && listed.commands.slice(0, 2).map(({ id }) => id)).toEqual(['chosen', 'c200']);
  });

  test('what was set aside is carried along with every save', async () => {
    const damaged = { ...house(), openings: { ...house().openings, b: 'door' } };
    const store = await windowWith(stored({ document: damaged }));
    const loaded = await store.load('p');
    if (!loaded.ok) throw new Error('unreadable');
    expect(loaded.setAside).toMatchObject([{ where: 'Opening b', raw: 'door' }]);
    await store.save({ ...loaded, position: at(5), commands: [], after: loaded.position });
    const again = await store.load('p');
    expect(again).toMatchObject({ setAside: [{ where: 'Opening b', raw: 'door' }] });
    const backups = await rawRows(browser.indexedDB, 'backups');
    expect(backups).toMatchObject([{ reason: 'damaged', document: damaged }]);
  });

  test('a full disk is told apart, wherever the browser mentions it', async () => {
    const store = createProjectStore(browser.window(), clock);
    await store.list();
    const { IDBObjectStore } = await import('fake-indexeddb');
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    const saved = await store.save({
      project: house(),
      commands: [],
      position: at(1),
      after: null,
      setAside: [],
    });
    expect(saved).toEqual({ ok: false, problem: { kind: 'full' } });
  });
});
