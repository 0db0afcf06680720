import { expect, test, vi } from 'vitest';
import { zipSync, unzipSync } from 'fflate';
import type { Project } from '../domain/model/project.ts';
import { captioned } from '../domain/survey/photos.ts';
import { saveProjectText } from '../domain/versions/file.ts';
import { rawRows } from '../storage/testing/fakes.ts';
import { aMachine, machineOfEach, noRoom, notices, project } from '../../tests/screens/machine.ts';
import { fakeShrink, jpegOf } from '../../tests/screens/pictures.ts';
import { newOpening } from '../domain/model/newProject.ts';
import { house } from '../storage/testing/projects.ts';
import type { App } from './session/app.ts';

const machine = machineOfEach();

const opening = newOpening('a', '101');
const withOpening = (): Project => ({ ...house('House'), openings: { a: opening } });
const open = (over = {}) =>
  machine.open({ shrink: fakeShrink, firstProject: () => Promise.resolve(withOpening()), ...over });
const photograph = async (app: App, ...bytes: readonly number[]) => {
  const added = await app.photos.add(opening, 'fireLabel', new Blob([jpegOf(...bytes)]));
  if (!added.ok) throw new Error(added.says);
  const photo = project(app).photos[added.id];
  if (!photo) throw new Error('no record');
  return photo;
};
const bytesOf = async (app: App, sha256: string) => [...((await app.photos.read(sha256)) ?? [])];
/** A browser that never saw this project. */
const stranger = { firstProject: () => Promise.resolve({ ...house('Barn'), id: 'barn' }) };
const stored = async () =>
  ((await rawRows(machine.browser().indexedDB, 'photos')) as { sha256: string }[]).map(
    ({ sha256 }) => sha256,
  );

test('a photo is kept before its record, once however often it is taken, and is there after a reload', async () => {
  const app = await open();
  const first = await photograph(app, 1);
  const again = await photograph(app, 1);
  expect(again.sha256).toBe(first.sha256);
  expect(again.id).not.toBe(first.id);
  await app.close();
  const later = await open();
  expect(await stored()).toEqual([first.sha256]);
  expect(await bytesOf(later, first.sha256)).toEqual([...jpegOf(1)]);
  expect(project(later).photos[first.id]).toMatchObject({
    openingId: 'a',
    about: 'fireLabel',
    widthPx: 1200,
  });
});

test('the second copy brings back what the database lost, picture and record', async () => {
  const app = await open();
  const photo = await photograph(app, 2);
  await app.close();
  machine.loseDatabase();
  const later = await open();
  expect(project(later).photos[photo.id]?.sha256).toBe(photo.sha256);
  expect(await bytesOf(later, photo.sha256)).toEqual([...jpegOf(2)]);
  expect(await stored()).toEqual([photo.sha256]);
});

test('a full disk is said at the place, and neither picture nor record is half there', async () => {
  const app = await open();
  noRoom();
  const added = await app.photos.add(opening, '', new Blob([jpegOf(3)]));
  expect(added).toMatchObject({ ok: false, says: expect.stringContaining('storage is full') });
  expect(project(app).photos).toEqual({});
  vi.restoreAllMocks();
  expect(await app.photos.add(opening, '', new Blob([jpegOf(3)]))).toMatchObject({ ok: true });
});

test('what is no picture changes nothing', async () => {
  const app = await open();
  expect(await app.photos.add(opening, '', new Blob(['a letter']))).toMatchObject({
    ok: false,
    says: expect.stringContaining('not a picture'),
  });
  expect(project(app).photos).toEqual({});
  expect(await stored()).toEqual([]);
});

test('a picture stays as long as a project, a backup or an edit names it, and a day if nothing does', async () => {
  const app = await open();
  const removed = await photograph(app, 4);
  app.store.getState().dispatch('Remove photo', [{ kind: 'putPhoto', id: removed.id, value: null }]);
  const kept = await app.photos.keepPicture(new Blob([jpegOf(5)]));
  if (!kept.ok) throw new Error(kept.says);
  await app.close();
  const sameDay = await open();
  await sameDay.photos.sweep();
  expect((await stored()).toSorted()).toEqual([removed.sha256, kept.sha256].toSorted());
  await sameDay.close();
  // Three days later nothing can name the one without a record; the other one stands in the list of edits.
  const later = await open({ clock: () => '2026-01-08T08:00:00.000Z' });
  await later.photos.sweep();
  expect(await stored()).toEqual([removed.sha256]);
  expect([...machine.disk.kept.keys()].filter((name) => name.startsWith('photo-'))).toEqual([
    `photo-${removed.sha256}.jpg`,
  ]);
});

test('erased for good, a project takes its pictures with it, but none that another project names', async () => {
  const app = await open();
  const only = await photograph(app, 6);
  const shared = await photograph(app, 7);
  const copy = { ...project(app), id: 'q', photos: { [shared.id]: shared } };
  await app.openFile(new Blob([saveProjectText(copy)]));
  expect(await app.eraseProject('p')).toEqual({ ok: true });
  expect(await stored()).toEqual([shared.sha256]);
  expect([...machine.disk.kept.keys()].join()).not.toContain(only.sha256);
});

test('a file carries its photos to another browser, and says what it lacks', async () => {
  const app = await open();
  const [one, two] = [await photograph(app, 8), await photograph(app, 9)];
  app.store.getState().dispatch('Caption', [captioned(one, 'worn')]);
  const file = await app.copyToSave();
  expect(file.says).toBe('');
  const here = project(app);
  const elsewhere = aMachine();
  const other = await elsewhere.open(stranger);
  expect(await other.openFile(new Blob([file.bytes]))).toEqual({ ok: true });
  expect(project(other).photos).toEqual(here.photos);
  expect(await bytesOf(other, one.sha256)).toEqual([...jpegOf(8)]);
  expect(notices(other)).toBe('');
  await elsewhere.closeAll();

  // One picture is another one than its name says, one is gone, and a strange one lies beside them.
  const entries = unzipSync(file.bytes);
  entries[`photos/${one.sha256}.jpg`] = jpegOf(99);
  delete entries[`photos/${two.sha256}.jpg`];
  entries[`photos/${'0'.repeat(64)}.jpg`] = jpegOf(1);
  const third = aMachine();
  const reader = await third.open(stranger);
  expect(await reader.openFile(new Blob([zipSync(entries)]))).toEqual({ ok: true });
  expect(project(reader).photos).toEqual(here.photos);
  expect(project(reader).setAside).toBeUndefined();
  expect(notices(reader)).toContain('2 photos damaged or not at all: 101');
  expect(notices(reader)).toContain('1 photo that no opening names');
  expect(await reader.photos.read(one.sha256)).toBeUndefined();
  await third.closeAll();
  // Where the pictures are already, nothing is missing.
  expect(await app.openFile(new Blob([saveProjectText(here)]))).toEqual({ ok: true });
  expect(notices(app)).toBe('');
});
