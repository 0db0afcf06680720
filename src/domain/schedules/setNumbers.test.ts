import { describe, expect, it } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { decideAll } from '../decide/decide.ts';
import { type Facts, known } from '../model/fact.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { scheduleRows } from './openings.ts';
import { fixNumbers, numberingInWords, retiredNumbers } from './setNumbers.ts';
import { hardwareSets } from './sets.ts';

const room: Facts = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  frameMaterial: known('hollowMetal'),
  latch: known('mortise'),
  handing: known('LH'),
  readerSides: known('secure'),
};
const at = '2026-03-02T09:00:00Z';
const strike = 'strikeMortise/secure/free';
const lock = 'mortiseLock/secure/free';
const magnet = 'magnet/safe/sensor';
const building = (...list: readonly (readonly [string, string])[]): Project => ({
  ...newProject('p', 'Project'),
  openings: Object.fromEntries(
    list.map(([mark, candidate]) => [
      mark,
      { ...newOpening(mark, mark), facts: room, override: { candidate, reason: 'x', by: 'x', at } },
    ]),
  ),
});
const setsOf = (project: Project) => hardwareSets(project, decideAll(project));
const numbersBy = (project: Project) =>
  Object.fromEntries(scheduleRows(project, decideAll(project)).map((row) => [row.mark, row.set]));
function fixed(project: Project): { project: Project; before: Project } {
  const edit = fixNumbers(setsOf(project));
  const done = applyEdits(project, edit ? [edit] : []);
  if (!done.ok) throw new Error('The numbers were refused.');
  const undone = applyEdits(done.project, done.inverse, true);
  if (!undone.ok) throw new Error('The numbers could not be taken back.');
  return { project: done.project, before: undone.project };
}
const withOpenings = (project: Project, other: Project): Project => ({
  ...project,
  openings: other.openings,
});

describe('set numbers', () => {
  const first = building(['102', strike], ['103', lock]);

  it('are not fixed until somebody does it', () => {
    expect(setsOf(first).map((set) => [set.id, set.numberState])).toEqual([
      ['HS-01', 'notFixed'],
      ['HS-02', 'notFixed'],
    ]);
    expect(numberingInWords(first, setsOf(first))[0]).toMatch(/not fixed yet/);
    expect(fixNumbers([])).toBeUndefined();
  });

  it('stay with their sets when a set comes before them, which gets the next free number', () => {
    const { project } = fixed(first);
    const later = withOpenings(project, building(['101', magnet], ['102', strike], ['103', lock]));
    expect(numbersBy(later)).toEqual({ '101': 'HS-03', '102': 'HS-01', '103': 'HS-02' });
    expect(setsOf(later).map((set) => [set.id, set.numberState])).toEqual([
      ['HS-01', 'fixed'],
      ['HS-02', 'fixed'],
      ['HS-03', 'new'],
    ]);
    expect(numberingInWords(later, setsOf(later))[0]).toMatch(/except those new since then: HS-03\./);
    // Not fixed, the same change would have numbered everything anew.
    expect(numbersBy(building(['101', magnet], ['102', strike], ['103', lock]))['102']).toBe('HS-02');
  });

  it('are not given to another set when no opening uses theirs, and come back with it', () => {
    const { project } = fixed(first);
    const without = withOpenings(project, building(['101', magnet], ['102', strike]));
    expect(numbersBy(without)).toEqual({ '101': 'HS-03', '102': 'HS-01' });
    expect(retiredNumbers(without, setsOf(without))).toEqual(['HS-02']);
    expect(numberingInWords(without, setsOf(without)).at(-1)).toMatch(/given to no other set: HS-02\./);
    const again = withOpenings(fixed(without).project, building(['104', lock]));
    expect(numbersBy(again)).toEqual({ '104': 'HS-02' });
  });

  it('are fixed by one edit that can be taken back, and only once', () => {
    const { project, before } = fixed(first);
    expect(Object.values(project.setNumbers).toSorted()).toEqual(['HS-01', 'HS-02']);
    expect(before.setNumbers).toEqual({});
    expect(fixNumbers(setsOf(project))).toBeUndefined();
    expect(numberingInWords(project, setsOf(project))).toEqual([
      'Set numbers are fixed: each set has the number of earlier issues.',
    ]);
  });
});
