import { describe, expect, test, vi } from 'vitest';
import { openDifferences } from '../domain/merge/differences.ts';
import type { Project } from '../domain/model/project.ts';
import { edited } from '../domain/testing/copies.ts';
import { saveProjectText } from '../domain/versions/file.ts';
import { databaseVersion } from '../storage/database.ts';
import { newestFormat } from '../domain/versions/migrations.ts';
import { createSecondCopy } from '../storage/copy/secondCopy.ts';
import { createDatabase } from '../storage/database.ts';
import { rawPut } from '../storage/testing/fakes.ts';
import { house } from '../storage/testing/projects.ts';
import { steppingClock } from './testing/clock.ts';
import type { TakeHow } from './meeting.ts';
import { browserTimers, type Timers } from '../storage/timers.ts';
import { longestWaitMs, mostLines } from './lineLog.ts';
import type { App } from './session/app.ts';
import { type AppNeeds, createApp } from './session.ts';
import {
  machineOfEach,
  fileFrom,
  noRoom,
  notes,
  notices,
  project,
  saving,
} from '../../tests/screens/machine.ts';

const machine = machineOfEach();
const openWindow = (over: Partial<AppNeeds> = {}) => machine.open(over);
const storedProjects = () => machine.storedProjects();
/** Opens a file and, where its project is here already, says what becomes of it. */
async function openAnd(app: App, how: TakeHow, other: Project) {
  const told = await app.openFile(fileFrom(saveProjectText(other)));
  return told.ok && told.meets ? app.takeFile(told.meets, how) : told;
}

describe('the first start and the next ones', () => {
  test('where nothing is stored the demo is made and stored', async () => {
    const app = await openWindow();
    expect(project(app).notes).toBe('demo');
    expect(app.store.getState().session.ready).toBe(true);
    expect(saving(app)).toEqual({ kind: 'saved' });
    expect(await storedProjects()).toMatchObject([{ id: 'p' }]);
  });

  test('what was edited is there after the next start', async () => {
    const app = await openWindow();
    notes(app, 'typed');
    expect(saving(app).kind).toBe('waiting');
    await app.close();
    const again = await openWindow();
    expect(project(again).notes).toBe('typed');
    const log = await again.listCommands();
    expect(log).toMatchObject({ commands: [{ label: 'Notes' }] });
  });

  test('the project that was open last is opened', async () => {
    const app = await openWindow();
    await app.createProject('Barn');
    await app.openProject('p');
    await app.close();
    expect(project(await openWindow()).name).toBe('House');
  });

  test('P1: starting writes nothing into what is stored', async () => {
    await (await openWindow()).close();
    const before = JSON.stringify(await storedProjects());
    await (await openWindow()).close();
    expect(JSON.stringify(await storedProjects())).toBe(before);
  });

  test('nothing can be edited before the first load has ended', async () => {
    const app = createApp({
      database: machine.browser().window(),
      locks: machine.locks,
      channel: machine.channels,
    });
    expect(notes(app, 'too early')).toMatchObject({ ok: false });
    await app.close();
    expect(await (await openWindow()).listProjects()).toMatchObject({ projects: [{ name: 'House' }] });
  });
});

describe('P3: saving fails', () => {
  test('a full disk is shown at once, the work stays, a copy can be saved, and it heals by itself', async () => {
    const app = await openWindow();
    noRoom();
    notes(app, 'typed on a full disk');
    await app.flush();
    expect(saving(app)).toMatchObject({ kind: 'failed', says: expect.stringContaining('full') });
    notes(app, 'and more');
    expect((await app.copyToSave()).text).toBe(saveProjectText(project(app)));
    expect((await app.copyToSave()).text).toContain('and more');
    vi.restoreAllMocks();
    await app.flush();
    expect(saving(app)).toEqual({ kind: 'saved' });
    expect(await storedProjects()).toMatchObject([{ document: { notes: 'and more' } }]);
  });

  test('nobody is taken away from unsaved work; a saved copy frees them', async () => {
    const app = await openWindow();
    noRoom();
    notes(app, 'unsaved');
    const tried = [
      await app.createProject('Barn'),
      await app.openFile(fileFrom(saveProjectText({ ...house(), id: 'q' }))),
    ];
    expect(tried.map((told) => !told.ok && told.says)).toEqual([
      expect.stringContaining('Save a copy'),
      expect.stringContaining('Save a copy'),
    ]);
    expect(project(app).notes).toBe('unsaved');
    vi.stubGlobal('URL', { createObjectURL: () => 'blob:x', revokeObjectURL: () => undefined });
    document.body.addEventListener('click', (event) => event.preventDefault(), { once: true });
    await app.downloadCopy();
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
    expect(await app.createProject('Barn')).toEqual({ ok: true });
  });

  test('leaving the page asks first where an edit is nowhere but on the screen, and only there', async () => {
    const app = await openWindow();
    const leave = () => {
      const event = new Event('beforeunload', { cancelable: true });
      window.dispatchEvent(event);
      return event.defaultPrevented;
    };
    expect(leave()).toBe(false);
    notes(app, 'in the journal');
    expect(leave()).toBe(false);
    await app.flush();
    vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    notes(app, 'nowhere else');
    expect(leave()).toBe(true);
    await app.flush();
    expect(leave()).toBe(false);
  });

  test('a hidden page is saved at once', async () => {
    const app = await openWindow();
    notes(app, 'typed');
    vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
    document.dispatchEvent(new Event('visibilitychange'));
    await vi.waitFor(() => expect(saving(app).kind).toBe('saved'), { timeout: 350, interval: 5 });
    expect(await storedProjects()).toMatchObject([{ document: { notes: 'typed' } }]);
  });
});

describe('a browser without a database', () => {
  const dead = () => createDatabase({ indexedDB: undefined });

  test('the app works in memory and says so at once', async () => {
    const app = await openWindow({ database: dead() });
    expect(project(app).notes).toBe('demo');
    expect(saving(app)).toMatchObject({ kind: 'failed', says: expect.stringContaining('save a copy') });
    expect(notes(app, 'typed')).toEqual({ ok: true, changed: true });
    expect((await app.copyToSave()).text).toContain('typed');
  });

  test('a file can be opened, edited and saved as a copy', async () => {
    const app = await openWindow({ database: dead() });
    expect(await app.openFile(fileFrom(saveProjectText(house('from the file'))))).toEqual({ ok: true });
    expect(project(app).notes).toBe('from the file');
    notes(app, 'edited');
    expect((await app.copyToSave()).text).toContain('edited');
    expect(saving(app).kind).toBe('failed');
  });
});

describe('P5: newer versions', () => {
  test('a stored project of a newer version is named and left, and another one is opened', async () => {
    const first = await openWindow();
    await first.createProject('Barn');
    await first.close();
    const [row] = (await storedProjects()).filter((one) => one.id !== 'p');
    await rawPut(machine.browser().indexedDB, 'projects', { ...row, formatVersion: newestFormat + 1 });
    const before = JSON.stringify(await storedProjects());
    const app = await openWindow();
    expect(project(app).name).toBe('House');
    expect(notices(app)).toMatch(/“Barn” was stored by a newer version/);
    await app.close();
    expect(JSON.stringify(await storedProjects())).toBe(before);
  });

  test('a newer version starting in another window makes this one read-only, with the last edit saved', async () => {
    vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    const app = await openWindow();
    notes(app, 'last words');
    const request = machine.browser().indexedDB.open('latchward', (databaseVersion + 1) * 10);
    await new Promise<void>((resolve) => {
      request.addEventListener('success', () => resolve());
    });
    const rows = await new Promise((resolve) => {
      const asked = request.result.transaction('projects').objectStore('projects').getAll();
      asked.addEventListener('success', () => resolve(asked.result));
    });
    request.result.close();
    expect(rows).toMatchObject([{ document: { notes: 'last words' } }]);
    expect(saving(app)).toMatchObject({ kind: 'readOnly', says: expect.stringContaining('newer version') });
    expect(notes(app, 'more')).toMatchObject({ ok: false });
    expect(project(app).notes).toBe('last words');
    const next = await openWindow();
    expect(saving(next)).toMatchObject({ kind: 'readOnly', says: expect.stringContaining('left untouched') });
    expect(notes(next, 'x').ok).toBe(false);
  });
});

describe.each([
  ['with locks', true],
  ['by talking', false],
])('P10: two windows on one project, %s', (_how, withLocks) => {
  const open = () => openWindow({ locks: withLocks ? machine.locks : undefined });

  test('the second is read-only, says so, follows, and takes over with everything the first saved', async () => {
    const first = await open();
    const second = await open();
    expect(saving(second)).toMatchObject({
      kind: 'readOnly',
      says: expect.stringContaining('another window'),
    });
    expect(notes(second, 'no')).toMatchObject({ ok: false });
    notes(first, 'seen by both');
    await first.flush();
    await vi.waitFor(() => expect(project(second).notes).toBe('seen by both'));
    notes(first, 'last of the first');
    await first.close();
    await vi.waitFor(() => expect(saving(second).kind).toBe('saved'));
    expect(project(second).notes).toBe('last of the first');
    expect(notices(second)).toMatch(/can be edited here now/);
    notes(second, 'by the second');
    await second.flush();
    expect(await storedProjects()).toMatchObject([{ document: { notes: 'by the second' } }]);
  });

  test('a file of a project that is open elsewhere is not put under it', async () => {
    const first = await open();
    const second = await open();
    for (const how of ['replace', 'merge'] as const) {
      // oxlint-disable-next-line no-await-in-loop -- one after the other, as a person would try
      const told = await openAnd(second, how, house('from the file'));
      expect(told).toMatchObject({ ok: false, says: expect.stringContaining('another window') });
    }
    expect(await storedProjects()).toMatchObject([{ document: { notes: 'demo' } }]);
    expect(saving(first).kind).toBe('saved');
  });
});

test('a window that heard of no save takes over with what was saved all the same', async () => {
  const deaf = { channel: () => undefined };
  const first = await openWindow(deaf);
  const second = await openWindow(deaf);
  notes(first, 'never announced');
  await first.close();
  await vi.waitFor(() => expect(saving(second).kind).toBe('saved'));
  expect(project(second).notes).toBe('never announced');
  notes(second, 'and on');
  await second.flush();
  expect(await storedProjects()).toMatchObject([{ document: { notes: 'and on' } }]);
});

test('without locks and channels, the window that missed a save keeps its work on screen and stops', async () => {
  const alone = { locks: undefined, channel: () => undefined };
  const first = await openWindow(alone);
  const second = await openWindow(alone);
  notes(first, 'first');
  await first.flush();
  notes(second, 'second');
  await second.flush();
  expect(saving(second)).toMatchObject({ kind: 'readOnly', says: expect.stringContaining('Save a copy') });
  expect(project(second).notes).toBe('second');
  expect(await storedProjects()).toMatchObject([{ document: { notes: 'first' } }]);
});

describe('projects, files and backups', () => {
  test('a file of a project that is here changes nothing until somebody says how', async () => {
    const app = await openWindow();
    notes(app, 'typed here');
    const told = await app.openFile(fileFrom(saveProjectText(house('from the file'))));
    expect(told).toMatchObject({ ok: true, meets: { compared: { differing: [{ what: 'Notes' }] } } });
    expect(project(app).notes).toBe('typed here');
    expect((await storedProjects()).map(({ document }) => document.notes)).toEqual(['typed here']);
    expect(await app.listBackups('p')).toEqual({ ok: true, backups: [] });
  });

  test('a file that holds just what is here asks nothing', async () => {
    const app = await openWindow();
    expect(await app.openFile(fileFrom(saveProjectText(project(app))))).toEqual({ ok: true });
  });

  test('a file opened as a separate copy leaves the project as it is', async () => {
    const app = await openWindow();
    notes(app, 'typed here');
    expect(await openAnd(app, 'copy', house('from the file'))).toEqual({ ok: true });
    expect(project(app)).toMatchObject({ notes: 'from the file', name: 'House (copy)' });
    const stored = await storedProjects();
    expect(stored.map(({ document }) => document.notes).toSorted()).toEqual(['from the file', 'typed here']);
  });

  test('a merge is one step, kept as a backup first, and undone whole', async () => {
    const app = await openWindow();
    const copy = project(app);
    const there = edited(copy, 'ben', [
      { kind: 'setProject', field: 'jurisdiction', value: 'Example City' },
      { kind: 'setProject', field: 'notes', value: 'from the file' },
    ]);
    notes(app, 'typed here');
    const before = project(app);
    expect(await openAnd(app, 'merge', there)).toEqual({ ok: true });
    expect(project(app).jurisdiction).toBe('Example City');
    expect(openDifferences(project(app))).toMatchObject([
      { what: 'Notes', sides: [{ says: 'typed here' }, { says: 'from the file' }] },
    ]);
    expect(await app.listBackups('p')).toMatchObject({ backups: [{ reason: 'import' }] });
    app.store.getState().undo();
    expect(project(app)).toEqual(before);
    app.store.getState().redo();
    await app.close();
    const again = await openWindow();
    expect(project(again).jurisdiction).toBe('Example City');
    expect(openDifferences(project(again))).toHaveLength(1);
  });

  test('what is settled is asked no more, and undo asks again', async () => {
    const app = await openWindow();
    const there = edited(project(app), 'ben', [{ kind: 'setProject', field: 'notes', value: 'there' }]);
    notes(app, 'here');
    await openAnd(app, 'merge', there);
    const side = openDifferences(project(app))[0]?.sides.find(({ says }) => says === 'here');
    if (!side) throw new Error('Nothing was asked.');
    app.store.getState().dispatch(side.label, [side.edit]);
    expect([project(app).notes, openDifferences(project(app))]).toEqual(['here', []]);
    app.store.getState().undo();
    expect(openDifferences(project(app))).toHaveLength(1);
    // Typing the answer settles as well.
    notes(app, 'neither');
    expect(openDifferences(project(app))).toEqual([]);
    app.store.getState().undo();
    expect(openDifferences(project(app))).toHaveLength(1);
  });

  test('opening a file of the shown project keeps today’s state, which can be restored', async () => {
    const app = await openWindow();
    notes(app, 'typed here');
    expect(await openAnd(app, 'replace', house('from the file'))).toEqual({ ok: true });
    expect(project(app).notes).toBe('from the file');
    expect(saving(app).kind).toBe('saved');
    const listed = await app.listBackups('p');
    if (!listed.ok) throw new Error(listed.says);
    expect(listed.backups).toMatchObject([{ reason: 'import' }]);
    expect(await app.restoreBackup(listed.backups[0]?.id ?? 0)).toEqual({ ok: true });
    expect(project(app).notes).toBe('typed here');
    expect(notes(app, 'and on')).toEqual({ ok: true, changed: true });
    await app.flush();
    expect(saving(app).kind).toBe('saved');
  });

  test('P5: a file that is refused changes nothing', async () => {
    const app = await openWindow();
    expect(await app.openFile(fileFrom('{'))).toMatchObject({ ok: false });
    expect(project(app).notes).toBe('demo');
    expect(notes(app, 'still editable')).toMatchObject({ ok: true });
  });

  test('damaged parts of a file are shown, stored, and shown again until they are forgotten', async () => {
    const app = await openWindow();
    const damaged = JSON.parse(saveProjectText({ ...house(), id: 'q' })) as {
      project: { openings: Record<string, unknown> };
    };
    damaged.project.openings['b'] = 'door';
    await app.openFile(fileFrom(JSON.stringify(damaged)));
    expect(notices(app)).toMatch(/could not be read and were set aside.*Opening b/);
    notes(app, 'edited');
    await app.close();
    const again = await openWindow();
    expect(again.store.getState().session.notices).toMatchObject([
      { kind: 'setAside', setAside: [{ where: 'Opening b', raw: 'door' }] },
    ]);
    again.forgetSetAside();
    await again.close();
    expect(notices(await openWindow())).toBe('');
  });

  test('a removed project gives way to the next one and stays in the backups', async () => {
    const app = await openWindow();
    await app.createProject('Barn');
    const barn = project(app).id;
    expect(await app.removeProject(barn)).toEqual({ ok: true });
    expect(project(app).name).toBe('House');
    expect(await app.listBackups(barn)).toMatchObject({ backups: [{ reason: 'remove', name: 'Barn' }] });
  });

  test('opening the project that is shown changes nothing', async () => {
    const app = await openWindow();
    notes(app, 'x');
    expect(await app.openProject('p')).toEqual({ ok: true });
    expect(saving(app).kind).not.toBe('readOnly');
    expect(app.store.getState().document.past).toHaveLength(1);
  });

  test('a project that is gone is told, and the shown one stays editable', async () => {
    const app = await openWindow();
    expect(await app.openProject('zz')).toMatchObject({
      ok: false,
      says: expect.stringContaining('no longer'),
    });
    expect(notes(app, 'still here')).toEqual({ ok: true, changed: true });
    await app.flush();
    expect(saving(app).kind).toBe('saved');
  });
});

/** P2: what was accepted is there again, whichever of the two stores was hurt. */
describe('the second copy', () => {
  test('P2: a database that is lost with everything in it is made good, and never by the demo', async () => {
    const app = await openWindow();
    notes(app, 'a day of work');
    await app.close();
    machine.loseDatabase();
    const again = await openWindow({ firstProject: () => Promise.resolve(house('another demo')) });
    expect(project(again).notes).toBe('a day of work');
    expect(notices(again)).toMatch(/lost the stored project “House”.*brought back from the second copy/);
    expect(await storedProjects()).toMatchObject([{ document: { notes: 'a day of work' } }]);
  });

  test('P2: a clock that is years off, or set back between two starts, loses nothing', async () => {
    const years = ['2026', '1999', '2041', '2003'];
    for (const year of years) {
      const app = await openWindow({ clock: steppingClock(`${year}-03-02T08:00:00.000Z`) });
      expect(project(app).notes).toBe(years[years.indexOf(year) - 1] ?? 'demo');
      notes(app, year);
      await app.close();
    }
    machine.loseDatabase();
    const back = await openWindow({ clock: steppingClock('1990-01-01T00:00:00.000Z') });
    expect(project(back).notes).toBe('2003');
    noRoom();
    notes(back, 'only in the log');
    await back.close();
    vi.restoreAllMocks();
    const last = await openWindow({ clock: steppingClock('1980-01-01T00:00:00.000Z') });
    expect(project(last).notes).toBe('only in the log');
  });

  test('P2: an edit that never reached the database is done again', async () => {
    const app = await openWindow();
    noRoom();
    notes(app, 'accepted a moment ago');
    await app.close();
    vi.restoreAllMocks();
    const again = await openWindow();
    expect(project(again).notes).toBe('accepted a moment ago');
    expect(notices(again)).toMatch(/1 edit had not reached the database/);
    notes(again, 'and on');
    await again.close();
    expect(project(await openWindow()).notes).toBe('and on');
  });

  test('P2: undo is done again as well, from the journal alone where there is no second copy', async () => {
    const none = { copies: createSecondCopy(() => undefined) };
    const app = await openWindow(none);
    expect(app.whereKept().join(' ')).toContain('Kept once');
    noRoom();
    notes(app, 'one');
    notes(app, 'two');
    app.store.getState().undo();
    await app.close();
    vi.restoreAllMocks();
    expect(project(await openWindow(none)).notes).toBe('one');
  });

  test('P2: “Saved” is not said before the second copy has the edit too', async () => {
    const copies = machine.secondCopy();
    let answer: () => void = () => undefined;
    const slow = new Promise<void>((resolve) => {
      answer = resolve;
    });
    const app = await openWindow({
      copies: { ...copies, append: (id, lines) => slow.then(() => copies.append(id, lines)) },
    });
    notes(app, 'on its way');
    const flushed = app.flush();
    await vi.waitFor(async () =>
      expect(await storedProjects()).toMatchObject([{ document: { notes: 'on its way' } }]),
    );
    expect(saving(app).kind).toBe('saving');
    answer();
    await flushed;
    expect(saving(app).kind).toBe('saved');
  });

  test('P2: an edit is in the log before a slot is written, and a slot is written only where the log falls short', async () => {
    const asked: string[] = [];
    const noting = () => {
      const copies = machine.secondCopy();
      return {
        ...copies,
        put: (...given: Parameters<typeof copies.put>) => {
          asked.push('slot');
          return copies.put(...given);
        },
        openLog: (...given: Parameters<typeof copies.openLog>) => {
          asked.push('ready');
          return copies.openLog(...given);
        },
        append: (...given: Parameters<typeof copies.append>) => {
          asked.push('line');
          return copies.append(...given);
        },
      };
    };
    await (await openWindow()).close();
    const app = await openWindow({ copies: noting() });
    for (let edit = 1; edit <= mostLines + 1; edit += 1) notes(app, `edit ${edit}`);
    expect([asked[0], ...asked.slice(mostLines + 1)]).toEqual(['ready', 'line', 'slot']);
    await app.close();
    // The database misses two edits and the log has them: nothing has to be written whole.
    asked.length = 0;
    const second = await openWindow({ copies: noting() });
    noRoom();
    notes(second, 'only in the log');
    await second.close();
    vi.restoreAllMocks();
    const third = await openWindow({ copies: noting() });
    expect(project(third).notes).toBe('only in the log');
    expect(asked).toEqual(['ready', 'line', 'ready']);
  });

  test('P2: no edit is taken before its log is open, and a log that never opens is not waited for', async () => {
    await (await openWindow()).close();
    let open = () => undefined as void;
    const copies = {
      ...machine.secondCopy(),
      openLog: () =>
        new Promise<{ readonly ok: true; readonly value: null }>((resolve) => {
          open = () => resolve({ ok: true, value: null });
        }),
    };
    let giveUp: (() => void) | undefined;
    const timers: Timers = {
      set: (work, ms) => {
        if (ms !== longestWaitMs) return browserTimers.set(work, ms);
        giveUp = work;
        return undefined;
      },
      clear: browserTimers.clear,
    };
    for (const goesOn of [() => open(), () => giveUp?.()]) {
      giveUp = undefined;
      const app = machine.window({ copies, timers });
      let isStarted = false;
      const started = app.start().then(() => {
        isStarted = true;
      });
      await vi.waitFor(() => expect(giveUp).toBeDefined());
      expect(isStarted).toBe(false);
      expect(notes(app, 'x').ok).toBe(false);
      goesOn();
      await started;
      expect(notes(app, 'x').ok).toBe(true);
      await app.close();
    }
  });

  test('without a second copy a lost project is named, and the demo does not take its place', async () => {
    const none = { copies: createSecondCopy(() => undefined) };
    await (await openWindow(none)).close();
    machine.loseDatabase();
    const again = await openWindow(none);
    expect(project(again).name).toBe('New project');
    expect(notices(again)).toMatch(/“House”.*no longer in this browser/);
  });

  test('a removed project is not brought back', async () => {
    const app = await openWindow();
    await app.createProject('Barn');
    await app.removeProject('p');
    await app.close();
    const again = await openWindow();
    expect(notices(again)).toBe('');
    expect(await again.listProjects()).toMatchObject({ projects: [{ name: 'Barn' }] });
  });

  test('a file opened over a project stays, and so does a restored backup', async () => {
    const app = await openWindow();
    notes(app, 'typed here');
    await openAnd(app, 'replace', house('from the file'));
    await app.close();
    const again = await openWindow();
    expect([project(again).notes, notices(again)]).toEqual(['from the file', '']);
  });
});

test('no edit is taken while another project is opened', async () => {
  const app = await openWindow();
  const opening = app.createProject('Barn');
  await Promise.resolve();
  expect(notes(app, 'too late')).toMatchObject({ ok: false });
  await opening;
  expect(notes(app, 'in the barn')).toMatchObject({ ok: true });
});

test('P10: a project edited in another window is neither removed nor replaced by a backup here', async () => {
  const first = await openWindow();
  notes(first, 'mine');
  await openAnd(first, 'replace', house('newer'));
  const second = await openWindow();
  await second.createProject('Barn');
  const listed = await second.listBackups('p');
  if (!listed.ok) throw new Error(listed.says);
  const tried = [await second.removeProject('p'), await second.restoreBackup(listed.backups[0]?.id ?? 0)];
  expect(tried.map((told) => !told.ok && told.says)).toEqual([
    expect.stringContaining('another window'),
    expect.stringContaining('another window'),
  ]);
  notes(first, 'still mine');
  await first.flush();
  expect(saving(first)).toEqual({ kind: 'saved' });
});
