import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { askMarkAndFloor, markDoubt, nextMarkOn } from './markOnFloor.ts';

const floors = {
  a: { id: 'a', name: 'First', level: 1 },
  b: { id: 'b', name: 'Second', level: 2 },
  c: { id: 'c', name: 'Third', level: 3 },
};
const withDoors = (...doors: readonly (readonly [string, string | null])[]): Project => ({
  ...newProject('p', 'P'),
  floors,
  openings: Object.fromEntries(
    doors.map(([mark, floorId]) => [mark, { ...newOpening(mark, mark), floorId }]),
  ),
});
const building = withDoors(['1-01', 'a'], ['1-02', 'a'], ['2-01', 'b'], ['2-02', 'b'], ['2-04', 'b']);

describe('the next free mark on a floor', () => {
  test('counts on from the door one stands at, and elsewhere from the last of the floor', () => {
    expect(nextMarkOn(building, 'b', { mark: '2-02', floorId: 'b' })).toBe('2-03');
    expect(nextMarkOn(building, 'b', { mark: '1-02', floorId: 'a' })).toBe('2-05');
    expect(nextMarkOn(withDoors(['2-01', 'b'], ['2-02', 'b'], ['X9', 'b']), 'b')).toBe('2-03');
  });

  test('is not made up for a floor without marks, nor taken from the floor above', () => {
    expect(nextMarkOn(building, 'c', { mark: '2-02', floorId: 'b' })).toBeUndefined();
    const full = withDoors(['298', 'b'], ['299', 'b'], ['301', 'c'], ['302', 'c']);
    expect(nextMarkOn(full, 'b', { mark: '299', floorId: 'b' })).toBeUndefined();
  });

  test('is never in use and never in doubt', () => {
    const mark = fc.tuple(fc.constantFrom('1-', '2-', '', 'S2-'), fc.integer({ min: 1, max: 320 }));
    const doors = fc.array(fc.tuple(mark, fc.constantFrom('a', 'b', 'c', null)), { maxLength: 12 });
    fc.assert(
      fc.property(doors, fc.constantFrom('a', 'b', 'c', null), (made, floorId) => {
        const project = withDoors(...made.map(([[start, n], on]) => [`${start}${n}`, on] as const));
        const near = Object.values(project.openings)[0];
        const next = nextMarkOn(project, floorId, near);
        if (next === undefined) return;
        expect(project.openings[next]).toBeUndefined();
        expect(markDoubt(project, next, floorId)).toBeUndefined();
      }),
      { numRuns: 200 },
    );
  });
});

describe('a mark and a floor that disagree', () => {
  test('are asked about, with each way out', () => {
    expect(askMarkAndFloor(building, '2-05', 'a', { mark: '1-01', floorId: 'a' })).toEqual({
      says: 'Other marks like 2-05 are on “Second”; you chose “First”. Which is right?',
      move: { floorId: 'b', says: 'Put it on “Second”' },
      rename: { mark: '1-03', says: 'Mark it 1-03' },
      keep: 'Keep 2-05 on “First”',
    });
  });

  test('name no floor where marks like it are on several', () => {
    const both = withDoors(['2-01', 'a'], ['2-02', 'b']);
    const doubt = markDoubt(both, '2-03', 'c');
    expect(doubt?.says).toBe(
      'Other marks like 2-03 are on “First” and “Second”; you chose “Third”. Which is right?',
    );
    expect(doubt?.move).toBeUndefined();
    expect(markDoubt(both, '2-03', 'a')).toBeUndefined();
  });

  test('a beginning nobody has is asked about where the floor has a pattern; one mark makes none', () => {
    expect(markDoubt(building, '5-01', 'b')?.says).toBe(
      'Marks on “Second” begin with 2-; 5-01 does not. Is it right?',
    );
    expect(markDoubt(withDoors(['2-01', 'b']), '5-01', 'b')).toBeUndefined();
    expect(markDoubt(building, '5-01', null)).toBeUndefined();
  });
});
