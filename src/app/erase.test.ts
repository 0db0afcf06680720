import { expect, test, vi } from 'vitest';
import { savedAs, viewsOf, withViews } from '../domain/grid/view.ts';
import { saveProjectText } from '../domain/versions/file.ts';
import { createSecondCopy } from '../storage/copy/secondCopy.ts';
import { rawRows } from '../storage/testing/fakes.ts';
import { house } from '../storage/testing/projects.ts';
import { machineOfEach, fileFrom, noRoom, notes, notices, project } from '../../tests/screens/machine.ts';

const machine = machineOfEach();

/** Everything this browser holds, as text. */
async function everything(): Promise<string> {
  const { indexedDB } = machine.browser();
  const tables = await Promise.all(
    ['projects', 'backups', 'commands'].map((name) => rawRows(indexedDB, name)),
  );
  const files = [...machine.disk.kept].map(([name, bytes]) => name + new TextDecoder().decode(bytes));
  const texts = Array.from({ length: localStorage.length }, (_, index) => {
    const key = localStorage.key(index) ?? '';
    return `${key} ${localStorage.getItem(key)}`;
  });
  return JSON.stringify([tables, files, texts]);
}
const secret = 'weak door in the basement';
const draft = { place: 'project/notes', label: 'Notes', href: '#/project' };

test('erased for good, nothing of a project is left in the database, the second copy or the settings', async () => {
  const app = await machine.open();
  notes(app, secret);
  await app.openFile(fileFrom(saveProjectText({ ...house(secret), name: secret })));
  notes(app, `${secret}, again`);
  app.drafts.type(draft, secret);
  app.preferences.set('gridViews', withViews('', 'p', savedAs(viewsOf('', 'p'), secret)));
  await app.flush();
  expect((await everything()).split(secret).length).toBeGreaterThan(4);
  expect(await app.eraseProject('p')).toEqual({ ok: true });
  expect(await everything()).not.toContain(secret);
  expect(project(app).name).not.toBe(secret);
  await app.close();
  const again = await machine.open();
  expect(notices(again)).toBe('');
  expect(await everything()).not.toContain(secret);
});

test('a project that was removed earlier is erased with its backups', async () => {
  const app = await machine.open();
  notes(app, secret);
  await app.createProject('Barn');
  await app.removeProject('p');
  expect(await everything()).toContain(secret);
  expect(await app.eraseProject('p')).toEqual({ ok: true });
  expect(await everything()).not.toContain(secret);
});

test('a project that is open in another window is not erased', async () => {
  const first = await machine.open();
  notes(first, 'mine');
  const second = await machine.open();
  await second.createProject('Barn');
  expect(await second.eraseProject('p')).toMatchObject({
    ok: false,
    says: expect.stringContaining('another window'),
  });
  await first.flush();
  expect(await everything()).toContain('mine');
});

test('a second copy that cannot be erased is said', async () => {
  const app = await machine.open({ copies: createSecondCopy(() => undefined) });
  await app.eraseProject('p');
  expect(notices(app)).toMatch(/second copy could not be erased/);
});

test('P9: without a backup no list is brought in, unless nothing can be lost', async () => {
  const app = await machine.open();
  expect(await app.copyBeforeList()).toEqual({ ok: true });
  expect(await app.listBackups('p')).toMatchObject({ backups: [{ reason: 'list' }] });
  noRoom();
  notes(app, 'not stored');
  expect(await app.copyBeforeList()).toMatchObject({
    ok: false,
    says: expect.stringContaining('Nothing was brought in'),
  });
  vi.restoreAllMocks();
});
