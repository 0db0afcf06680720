import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits, type Edit } from '../commands/command.ts';
import { feetBetween, type FloorPlan } from '../model/floorPlan.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { planDistances } from '../power/planDistance.ts';
import { openProjectText, saveProjectText } from '../versions/file.ts';
import {
  newPlan,
  notPinned,
  pinnedAt,
  pinnedOn,
  planOfFloor,
  runsInWords,
  scaled,
  withoutPlan,
} from './floorPlans.ts';

const at = '2026-03-02T12:00:00.000Z';
const stamp = { at, by: 'A. Surveyor' };
const floor = { id: 'f2', name: 'Second floor', level: 2 };
const picture = { sha256: 'c'.repeat(64), widthPx: 2000, heightPx: 1000, bytes: 9 };
const closet = {
  id: 'c',
  name: 'Closet 2',
  floorId: null,
  spaceId: null,
  linePower: null,
  temperatureC: null,
  notes: '',
};
const start: Project = {
  ...newProject('p', 'House'),
  floors: { f2: floor },
  openings: { a: newOpening('a', '2-03'), b: { ...newOpening('b', '2-01'), floorId: 'f2' } },
  closets: { c: closet },
};
const done = (project: Project, ...edits: readonly Edit[]) => {
  const applied = applyEdits(project, edits);
  if (!applied.ok) throw new Error(applied.problem.kind);
  return applied.project;
};
const withPlan = done(start, newPlan(floor, 'A-102', picture, { id: 'plan', ...stamp }));
const planIn = (project: Project) => planOfFloor(project, 'f2') as FloorPlan;
const read = scaled(planIn(withPlan), { x: 0.1, y: 0.5 }, { x: 0.6, y: 0.5 }, '100 ft');
if (!read.ok) throw new Error(read.says);
const measured = done(withPlan, read.edit);

test('a length is measured by the scale whatever the shape of the drawing: across as well as down', () => {
  const plan = planIn(measured);
  // Half of 2000 px are 100 ft, so all of 1000 px down are as many.
  expect(feetBetween(plan, { x: 0, y: 0 }, { x: 0, y: 1 })).toBeCloseTo(100);
  expect(feetBetween(plan, { x: 0, y: 0 }, { x: 1, y: 0 })).toBeCloseTo(200);
  expect(feetBetween({ ...plan, scale: null }, { x: 0, y: 0 }, { x: 1, y: 0 })).toBeUndefined();
});

test('measuring is even, never negative, and twice the typed length is twice every distance', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const spot = fc.record({ x: share, y: share });
  fc.assert(
    fc.property(spot, spot, spot, spot, (a, b, from, to) => {
      fc.pre(Math.hypot(to.x - from.x, to.y - from.y) > 0.02);
      const scale = { fromX: from.x, fromY: from.y, toX: to.x, toY: to.y, lengthFt: 30 };
      const plan = { ...picture, scale };
      const feet = feetBetween(plan, a, b) ?? Number.NaN;
      expect(feet).toBeGreaterThanOrEqual(0);
      expect(feetBetween(plan, b, a)).toBeCloseTo(feet);
      expect(feetBetween(plan, from, to)).toBeCloseTo(30);
      expect(feetBetween({ ...plan, scale: { ...scale, lengthFt: 60 } }, a, b)).toBeCloseTo(feet * 2);
    }),
    { numRuns: 100 },
  );
});

test('a scale of two near points, or of no length, is refused with a sentence', () => {
  const plan = planIn(withPlan);
  const ends = [
    { x: 0.1, y: 0.1 },
    { x: 0.6, y: 0.1 },
  ] as const;
  expect(scaled(plan, ends[0], { x: 0.11, y: 0.1 }, '10 ft')).toMatchObject({ ok: false });
  expect(scaled(plan, ...ends, '0')).toMatchObject({ ok: false });
  expect(scaled(plan, ...ends, 'long')).toMatchObject({ ok: false });
  expect(scaled(plan, ...ends, '24 ft')).toMatchObject({ ok: true });
});

test('a pin gives the floor, is moved by another tap, and goes with the plan and comes back with it', () => {
  expect(notPinned(measured, planIn(measured)).map(({ name }) => name)).toEqual(['2-01', '2-03', 'Closet 2']);
  const pinned = done(measured, ...pinnedAt(measured, planIn(measured), 'a', { x: 0.25, y: 1.4 }, stamp));
  expect(pinned.openings['a']?.floorId).toBe('f2');
  expect(pinnedOn(pinned, 'plan')).toEqual([
    { id: 'a', is: 'opening', name: '2-03', spot: { x: 0.25, y: 1 } },
  ]);
  const moved = done(pinned, ...pinnedAt(pinned, planIn(pinned), 'a', { x: 0.5, y: 0.5 }, stamp));
  expect(pinnedOn(moved, 'plan')[0]?.spot).toEqual({ x: 0.5, y: 0.5 });
  expect(notPinned(moved, planIn(moved)).map(({ id }) => id)).toEqual(['b', 'c']);
  const gone = applyEdits(moved, withoutPlan(moved, planIn(moved)));
  if (!gone.ok) throw new Error('refused');
  expect([gone.project.plans, gone.project.pins]).toEqual([{}, {}]);
  expect(applyEdits(gone.project, gone.inverse, true)).toMatchObject({
    ok: true,
    project: { pins: moved.pins },
  });
});

test('the way between two pins proposes the run, and what says it names its rule of thumb', () => {
  const one = done(measured, ...pinnedAt(measured, planIn(measured), 'a', { x: 0.1, y: 0.5 }, stamp));
  const two = done(one, ...pinnedAt(one, planIn(one), 'c', { x: 0.6, y: 0.5 }, stamp));
  const opening = two.openings['a'] as Project['openings'][string];
  expect(planDistances(two).pinned(closet, opening)).toBe(135);
  expect(planDistances(two).feet(closet, opening)).toBe(135);
  expect(runsInWords(two, planIn(two))).toMatch(
    /2-03 135 ft\. Pin to pin, times 1\.25 .*common practice, no source/,
  );
  // Without a scale nothing is measured.
  const blind = done(two, { kind: 'putPlan', id: 'plan', value: { ...planIn(two), scale: null } });
  expect(planDistances(blind).pinned(closet, opening)).toBeUndefined();
  expect(runsInWords(blind, planIn(blind))).toBeUndefined();
});

test('plan and pins go out and come in the same; a scale that cannot be read is set aside alone', () => {
  const project = done(measured, ...pinnedAt(measured, planIn(measured), 'a', { x: 0.1, y: 0.5 }, stamp));
  const text = saveProjectText(project);
  expect(openProjectText(text)).toMatchObject({
    ok: true,
    setAside: [],
    project: { plans: project.plans, pins: project.pins },
  });
  const raw = JSON.parse(text) as { project: { plans: Record<string, object> } };
  Object.assign(raw.project.plans['plan'] ?? {}, { scale: { lengthFt: 'far' } });
  const opened = openProjectText(JSON.stringify(raw));
  if (!opened.ok) throw new Error('refused');
  expect(opened.project.plans['plan']).toMatchObject({ scale: null, sha256: picture.sha256 });
  expect(opened.setAside.map(({ where }) => where)).toEqual(['Floor plan A-102, scale']);
});
