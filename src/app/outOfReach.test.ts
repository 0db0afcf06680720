import { describe, expect, test, vi } from 'vitest';
import { newestFormat } from '../domain/versions/migrations.ts';
import { createSecondCopy } from '../storage/copy/secondCopy.ts';
import { createDatabase, type Database } from '../storage/database.ts';
import type { StorageProblem } from '../storage/problems.ts';
import { rawPut, rawRows } from '../storage/testing/fakes.ts';
import { house } from '../storage/testing/projects.ts';
import { machineOfEach, noRoom, notes, notices, project, saving } from '../../tests/screens/machine.ts';

const machine = machineOfEach();

const noAnswer = { kind: 'noAnswer', doing: 'opening', seconds: 8, blocked: false } as const;
const dead = () => createDatabase({ indexedDB: undefined });

/** A database that answers only once it is told to. */
function sulking(real: Database, problem: StorageProblem = noAnswer) {
  let answers = false;
  const no = () => Promise.resolve({ ok: false as const, problem });
  const database: Database = {
    ...real,
    open: () => (answers ? real.open() : no()),
    run: (mode, work) => (answers ? real.run(mode, work) : no()),
  };
  return {
    database,
    answer: () => {
      answers = true;
    },
  };
}
const aDayOfWork = async () => {
  const app = await machine.open();
  notes(app, 'a day of work');
  await app.close();
};
/** The second retry of a failed save is not waited for. */
const triedAgain = (app: Awaited<ReturnType<typeof machine.open>>) => app.flush();

describe('P3: the database does not answer at the start', () => {
  test.each([
    ['never answers', noAnswer, /has not answered for 8 seconds.*opened from its second copy/],
    ['is held by another window', { ...noAnswer, blocked: true }, /Another window holds it.*second copy/],
    ['is dead', { kind: 'noDatabase', says: 'Internal error' }, /cannot be opened \(Internal error\)/],
    ['cannot be read', { kind: 'readFailed', says: 'torn' }, /cannot be read \(torn\)/],
  ] as const)(
    'it %s: the second copy is opened, the header says so, edits are kept',
    async (_how, problem, says) => {
      await aDayOfWork();
      const { database } = sulking(machine.browser().window(), problem);
      const app = await machine.open({ database });
      expect(project(app).notes).toBe('a day of work');
      expect(saving(app)).toMatchObject({ kind: 'failed', says: expect.stringMatching(says) });
      expect(notes(app, 'and on')).toEqual({ ok: true, changed: true });
      expect((await app.copyToSave()).text).toContain('and on');
      await app.close();
      expect(project(await machine.open()).notes).toBe('and on');
    },
  );

  test('once it answers again the edits are stored there, in its list of edits too', async () => {
    await aDayOfWork();
    const { database, answer } = sulking(machine.browser().window());
    const app = await machine.open({ database });
    notes(app, 'meanwhile');
    answer();
    await triedAgain(app);
    expect(saving(app)).toEqual({ kind: 'saved' });
    expect(notices(app)).toMatch(/answers again/);
    expect(await machine.storedProjects()).toMatchObject([{ document: { notes: 'meanwhile' } }]);
    expect(await app.listCommands()).toMatchObject({ commands: [{ label: 'Notes' }, { label: 'Notes' }] });
    expect(await app.listBackups('p')).toMatchObject({ backups: [] });
  });

  test('it held another history: the screen goes on, the other one is kept and both are named', async () => {
    await aDayOfWork();
    const [row] = (await machine.storedProjects()) as object[];
    await rawPut(machine.browser().indexedDB, 'projects', {
      ...row,
      tip: 'elsewhere',
      document: house('another history'),
    });
    const { database, answer } = sulking(machine.browser().window());
    const app = await machine.open({ database });
    answer();
    await triedAgain(app);
    expect(saving(app)).toEqual({ kind: 'saved' });
    expect(notices(app)).toMatch(/another state of “House”.*Both are kept/);
    expect(await machine.storedProjects()).toMatchObject([{ document: { notes: 'a day of work' } }]);
    expect(await rawRows(machine.browser().indexedDB, 'backups')).toMatchObject([
      { document: { notes: 'another history' } },
    ]);
  });

  test('without a second copy the project is named, nothing of it is touched, and it is opened once it can be', async () => {
    const none = { copies: createSecondCopy(() => undefined) };
    const first = await machine.open(none);
    notes(first, 'a day of work');
    await first.close();
    const before = JSON.stringify(await machine.storedProjects());
    const { database, answer } = sulking(machine.browser().window());
    const app = await machine.open({ ...none, database });
    expect(project(app).name).toBe('New project');
    expect(notices(app)).toMatch(/“House”.*cannot be opened now/);
    answer();
    await triedAgain(app);
    await vi.waitFor(() => expect(project(app).notes).toBe('a day of work'));
    expect(JSON.stringify(await machine.storedProjects())).toBe(before);
  });

  test('two windows without a database: the second only reads', async () => {
    await aDayOfWork();
    const first = await machine.open({ database: dead() });
    const second = await machine.open({ database: dead() });
    expect(saving(first).kind).toBe('failed');
    expect(saving(second)).toMatchObject({
      kind: 'readOnly',
      says: expect.stringContaining('another window'),
    });
    expect(project(second).notes).toBe('a day of work');
  });

  test('P5: a newer database is left alone, and the copy this version can read is shown', async () => {
    await aDayOfWork();
    const { database } = sulking(machine.browser().window(), { kind: 'databaseTooNew' });
    const app = await machine.open({ database });
    expect(project(app).notes).toBe('a day of work');
    expect(saving(app)).toMatchObject({ kind: 'readOnly', says: expect.stringContaining('left untouched') });
    expect(notes(app, 'x').ok).toBe(false);
  });
});

test('P5: a second copy of a newer version is a sentence, not an end of the start', async () => {
  await aDayOfWork();
  const copy = await machine.secondCopy().look('p');
  if (!copy.ok || !copy.value.copy) throw new Error('There should be a copy.');
  await machine.secondCopy().put({ ...copy.value.copy, formatVersion: newestFormat + 1 });
  machine.loseDatabase();
  const app = await machine.open();
  expect(app.store.getState().session.ready).toBe(true);
  expect(notices(app)).toMatch(/“House”/);
});

describe('two histories of one project', () => {
  const putOther = async (revision: number) => {
    await machine.secondCopy().put({
      id: 'p',
      name: 'House',
      at: '2026-01-05T09:00:00.000Z',
      formatVersion: newestFormat,
      document: house('another history'),
      setAside: [],
      revision,
      tip: 'elsewhere',
    });
  };

  test.each([
    ['of one length', 2, /both hold 2 edits, and they are not the same.*Both are kept/],
    ['the copy is shorter and no older state', 1, /holds edits that are not in the database.*Both are kept/],
  ])('%s: both are kept, and it is said', async (_how, revision, says) => {
    await aDayOfWork();
    await putOther(revision);
    const app = await machine.open();
    expect(project(app).notes).toBe('a day of work');
    expect(notices(app)).toMatch(says);
    expect(await app.listBackups('p')).toMatchObject({ backups: [{ reason: 'apart' }] });
    const listed = await app.listBackups('p');
    await app.restoreBackup(listed.ok ? (listed.backups[0]?.id ?? 0) : 0);
    expect(project(app).notes).toBe('another history');
    await app.close();
    expect(notices(await machine.open())).toBe('');
  });

  test('a copy that is only an older state is no second history', async () => {
    const app = await machine.open();
    notes(app, 'one');
    await app.flush();
    const copy = await machine.secondCopy().look('p');
    notes(app, 'two');
    notes(app, 'three');
    await app.close();
    if (!copy.ok || !copy.value.copy) throw new Error('There should be a copy.');
    machine.disk.kept.clear();
    const [line] = copy.value.lines;
    const older = { ...copy.value.copy, revision: line?.revision ?? 0, tip: line?.command.id ?? '' };
    await machine.secondCopy().put(older);
    const again = await machine.open();
    expect([project(again).notes, notices(again)]).toEqual(['three', '']);
  });
});

test('site data cleared under the app: it says so, and the project is stored again when asked', async () => {
  const app = await machine.open();
  const one = await machine.storedProjects();
  await machine.forgetProjects();
  expect(one).toHaveLength(1);
  notes(app, 'only on the screen');
  await app.flush();
  expect(saving(app)).toMatchObject({
    kind: 'readOnly',
    says: expect.stringContaining('cleared'),
    canStoreAgain: true,
  });
  await app.storeAgain();
  expect(saving(app)).toEqual({ kind: 'saved' });
  expect(await machine.storedProjects()).toMatchObject([{ document: { notes: 'only on the screen' } }]);
  await app.close();
  expect(project(await machine.open()).notes).toBe('only on the screen');
});

test('a full disk while the database is out of reach leaves the edit in the second copy', async () => {
  await aDayOfWork();
  const app = await machine.open({ database: dead() });
  noRoom();
  notes(app, 'on a full disk');
  await app.close();
  vi.restoreAllMocks();
  expect(project(await machine.open()).notes).toBe('on a full disk');
});
