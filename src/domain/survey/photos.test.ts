import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import type { Edit } from '../commands/command.ts';
import type { Photo } from '../model/photo.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { openProjectText, saveProjectText } from '../versions/file.ts';
import { captioned, movedByKey, photoInWords, photosAt, photosMissing, pointedAt } from './photos.ts';

const at = (minute: number) => `2026-03-02T12:0${minute}:00.000Z`;
const photo = (id: string, about: string, minute = 0): Photo => ({
  id,
  openingId: 'a',
  about,
  caption: '',
  arrows: {},
  sha256: 'a'.repeat(64),
  widthPx: 1200,
  heightPx: 1600,
  bytes: 200_000,
  at: at(minute),
  by: '',
});
const withPhotos = (...photos: readonly Photo[]): Project => ({
  ...newProject('p', 'House'),
  openings: { a: newOpening('a', '101') },
  photos: Object.fromEntries(photos.map((one) => [one.id, one])),
});
const after = (project: Project, ...edits: readonly Edit[]) => {
  const applied = applyEdits(project, edits);
  if (!applied.ok) throw new Error(applied.problem.kind);
  return applied;
};

test('photos stand as the door is walked round, then as they were taken; those of another opening do not', () => {
  const project = withPhotos(
    photo('whole', ''),
    photo('late', 'head', 2),
    photo('early', 'head', 1),
    photo('label', 'fireLabel', 3),
    { ...photo('other', 'head'), openingId: 'b' },
  );
  expect(photosAt(project, 'a').map(({ id }) => id)).toEqual(['label', 'early', 'late', 'whole']);
});

test('photos go with their opening and come back with it, and a photo of another stays', () => {
  const before = withPhotos(photo('one', 'edge'), photo('two', ''), {
    ...photo('other', ''),
    openingId: 'b',
  });
  const gone = after(before, { kind: 'putOpening', id: 'a', value: null });
  expect(Object.keys(gone.project.photos)).toEqual(['other']);
  const back = applyEdits(gone.project, gone.inverse, true);
  expect(back).toMatchObject({ ok: true, project: { openings: before.openings, photos: before.photos } });
});

test('what nobody could tell asks for a photo until there is one of it or of its place', () => {
  const unknown = { is: 'unknown' } as const;
  const opening = {
    ...newOpening('a', '101'),
    facts: {
      fireLabel: unknown,
      closing: unknown,
      wishLockdown: unknown,
      doorType: { is: 'known', value: 'single' },
    },
  } as never;
  const missing = (...photos: readonly Photo[]) => photosMissing(withPhotos(...photos), opening);
  expect(missing()).toEqual(expect.arrayContaining(['fireLabel', 'closing']));
  expect(missing()).toHaveLength(2);
  expect(missing(photo('one', 'fireLabel'))).toEqual(['closing']);
  expect(missing(photo('one', 'fireLabel'), photo('two', 'head'))).toEqual([]);
});

test('caption and arrows are said, and an arrow never leaves the picture', () => {
  const plain = photo('one', 'fireLabel');
  expect(photoInWords(plain)).toBe('Photo, fire label');
  const project = after(withPhotos(plain), captioned(plain, 'worn')).project;
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 4, maxLength: 4 }),
      (ends) => {
        const [fromX = 0, fromY = 0, toX = 0, toY = 0] = ends;
        const one = project.photos['one'] as Photo;
        const pointed = after(project, pointedAt(one, 'x', { fromX, fromY, toX, toY })).project.photos[
          'one'
        ] as Photo;
        expect(photoInWords(pointed)).toBe('Photo, fire label: worn; 1 arrow');
        const { id, ...shares } = pointed.arrows['x'] ?? { id: '' };
        expect(id).toBe('x');
        expect(Object.values(shares).every((share) => Number(share) >= 0 && Number(share) <= 1)).toBe(true);
        expect(after(project, pointedAt(pointed, 'x', null)).project.photos['one']?.arrows).toEqual({});
      },
    ),
    { numRuns: 50 },
  );
});

test('an end of an arrow moves by the arrow keys and by no other', () => {
  const arrow = { id: 'x', fromX: 0.2, fromY: 0.8, toX: 0.5, toY: 0.5 };
  expect(movedByKey(arrow, 'to', 'ArrowLeft')).toMatchObject({ toX: 0.48, toY: 0.5, fromX: 0.2 });
  expect(movedByKey(arrow, 'from', 'ArrowUp')).toMatchObject({ fromY: 0.78, toX: 0.5 });
  expect(movedByKey(arrow, 'to', 'Enter')).toBeUndefined();
});

test('a photo goes out in the file and comes in the same; a damaged part of it is set aside alone', () => {
  const project = withPhotos(photo('one', 'edge'), photo('two', 'head'));
  const text = saveProjectText(project);
  expect(openProjectText(text)).toMatchObject({
    ok: true,
    setAside: [],
    project: { photos: project.photos },
  });
  const raw = JSON.parse(text) as { project: { photos: Record<string, Record<string, unknown>> } };
  Object.assign(raw.project.photos['one'] ?? {}, { caption: 7 });
  Object.assign(raw.project.photos['two'] ?? {}, { sha256: 'no hash' });
  const opened = openProjectText(JSON.stringify(raw));
  if (!opened.ok) throw new Error('refused');
  expect(Object.keys(opened.project.photos)).toEqual(['one']);
  expect(opened.project.photos['one']).toMatchObject({ caption: '', about: 'edge' });
  expect(opened.setAside.map(({ where }) => where)).toEqual(['Photo one, caption', 'Photo two']);
});
