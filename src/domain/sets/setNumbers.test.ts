import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { decideAll } from '../decide/decide.ts';
import { type Facts } from '../model/fact.ts';
import { known } from '../testing/facts.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import { type Amendment, openingsInOrder, type Project, type StoredSet } from '../model/project.ts';
import { openProjectText } from '../versions/file.ts';
import { scheduleRows } from '../schedules/openings.ts';
import {
  fixNumbers,
  mergeable,
  mergedSets,
  numberingInWords,
  renamed,
  retiredNumbers,
} from './setNumbers.ts';
import { hardwareSets, setInWords } from './sets.ts';
import { wholeSignature } from '../hardware/signature.ts';

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
function edited(project: Project, edits: Parameters<typeof applyEdits>[1]) {
  const done = applyEdits(project, edits);
  if (!done.ok) throw new Error(JSON.stringify(done.problem));
  const undone = applyEdits(done.project, done.inverse, true);
  expect(undone.ok && undone.project).toEqual(project);
  return done.project;
}
const fixed = (project: Project) => edited(project, fixNumbers(project, setsOf(project)));
const withOpenings = (project: Project, other: Project): Project => ({
  ...project,
  openings: other.openings,
});
const chosen = (project: Project, mark: string, candidate: string): Project => {
  const opening = project.openings[mark];
  if (!opening) throw new Error(mark);
  const override = { candidate, reason: 'x', by: 'x', at };
  return { ...project, openings: { ...project.openings, [mark]: { ...opening, override } } };
};
const lettered: Amendment = {
  id: 'm',
  says: 'Written approval is asked for.',
  source: 'Ordinance 1',
  effect: 'require',
  when: {},
  devices: [],
  releases: [],
  failModes: [],
};

describe('hardware sets as they were issued', () => {
  const first = building(['102', strike], ['103', lock]);

  it('have no fixed number until somebody does it, by one step that can be taken back, and only once', () => {
    expect(setsOf(first).map((set) => [set.id, set.numberState])).toEqual([
      ['HS-01', 'notFixed'],
      ['HS-02', 'notFixed'],
    ]);
    expect(numberingInWords(first, setsOf(first))[0]).toMatch(/not fixed yet/);
    expect(fixNumbers(first, [])).toEqual([]);
    const project = fixed(first);
    expect(fixNumbers(project, setsOf(project))).toEqual([]);
    expect(numberingInWords(project, setsOf(project))).toEqual([
      'Set numbers are fixed: each set has the number of earlier issues.',
    ]);
  });

  it('keep their numbers when a set comes before them, which gets the next free one', () => {
    const project = fixed(first);
    const later = withOpenings(project, building(['101', magnet], ['102', strike], ['103', lock]));
    expect(numbersBy(later)).toEqual({ '101': 'HS-03', '102': 'HS-01', '103': 'HS-02' });
    expect(setsOf(later).map((set) => set.numberState)).toEqual(['fixed', 'fixed', 'new']);
    expect(numberingInWords(later, setsOf(later))[0]).toMatch(/except those new since then: HS-03\./);
  });

  it('are revised, and not numbered anew, by a change that meets all their openings alike', () => {
    const project = fixed(building(['101', strike], ['102', strike], ['103', lock]));
    const both = chosen(chosen(project, '101', magnet), '102', magnet);
    const [set] = setsOf(both);
    expect([set?.id, set?.revision, set?.numberState]).toEqual(['HS-01', 1, 'revised']);
    expect(numbersBy(both)).toEqual({ '101': 'HS-01', '102': 'HS-01', '103': 'HS-02' });
    expect(numberingInWords(both, setsOf(both)).join(' ')).toContain(
      'Revised since the numbers were fixed: HS-01.',
    );
    const again = fixed(both);
    expect(setsOf(again).map(setInWords)).toEqual(['HS-01 revision 1', 'HS-02']);
    expect(setsOf(again)[0]?.numberState).toBe('fixed');
  });

  it('let go of the opening that changed alone: it joins a set that has what it asks for, or gets a new one', () => {
    const project = fixed(building(['101', strike], ['102', strike], ['103', lock]));
    expect(numbersBy(chosen(project, '101', lock))).toEqual({
      '101': 'HS-02',
      '102': 'HS-01',
      '103': 'HS-02',
    });
    expect(numbersBy(chosen(project, '101', magnet))['101']).toBe('HS-03');
  });

  it('were told apart by the label once: sets fixed then keep number and revision, and may be merged', () => {
    const rated = { ...room, fireRatingMin: known(45) };
    const { openings, ...now } = building(['101', strike], ['102', strike]);
    const both = {
      ...now,
      openings: Object.fromEntries(
        Object.entries(openings).map(([mark, one]) => [
          mark,
          mark === '102' ? { ...one, facts: rated } : one,
        ]),
      ),
    };
    const then = (number: string, mark: string, content: string): StoredSet => ({
      id: number,
      number,
      name: '',
      revision: 0,
      content,
      members: { [mark]: true },
    });
    const rest = '1 doorPosition|1 exitShuntSensor';
    const project: Project = {
      ...both,
      hardwareSets: {
        'HS-01': then(
          'HS-01',
          '101',
          `${strike}|rated false|pair false|${rest}|1 electricStrike ? V|1 keyCylinder|1 lockCable|1 reader|1 storeroomLockset mortise`,
        ),
        'HS-02': then(
          'HS-02',
          '102',
          `${strike}|rated true|pair false|${rest}|1 fireListedStrike ? V|1 keyCylinder|1 lockCable|1 reader|1 storeroomLockset mortise`,
        ),
      },
    };
    const sets = setsOf(project);
    expect(sets.map((set) => [setInWords(set), set.numberState])).toEqual([
      ['HS-01', 'fixed'],
      ['HS-02', 'fixed'],
    ]);
    expect(fixNumbers(project, sets)).toEqual([]);
    expect(mergeable(sets).map((alike) => alike.map((set) => set.id))).toEqual([['HS-01', 'HS-02']]);
  });

  it('leave a number that no opening uses to nobody else, and print it as not used', () => {
    const project = fixed(first);
    const without = withOpenings(project, building(['101', magnet], ['102', strike]));
    expect(numbersBy(without)).toEqual({ '101': 'HS-03', '102': 'HS-01' });
    expect(retiredNumbers(without, setsOf(without))).toEqual(['HS-02']);
    expect(numberingInWords(without, setsOf(without)).at(-1)).toMatch(/^Not used: HS-02\./);
    const again = withOpenings(fixed(without), building(['101', magnet], ['104', lock]));
    expect(numbersBy(again)['104']).toBe('HS-04');
  });

  it('are merged and renamed by a person; that two are alike is only said', () => {
    const project = fixed(building(['101', strike], ['102', strike], ['103', lock]));
    const alike = chosen(project, '103', strike);
    expect(numbersBy(alike)['103']).toBe('HS-02');
    expect(mergeable(setsOf(alike)).map((sets) => sets.map((set) => set.id))).toEqual([['HS-01', 'HS-02']]);
    expect(numberingInWords(alike, setsOf(alike)).join(' ')).toContain(
      'HS-01 and HS-02 are made of the same',
    );
    const merged = edited(alike, mergedSets(alike, 'set-HS-02', 'set-HS-01'));
    expect(numbersBy(merged)['103']).toBe('HS-01');
    expect(retiredNumbers(merged, setsOf(merged))).toEqual(['HS-02']);
    const edits = renamed(merged, 'set-HS-01', { number: 'A1' });
    if ('says' in edits) throw new Error(edits.says);
    expect(numbersBy(edited(merged, edits))['101']).toBe('A1');
    // Not even the number that is not used any more: bidders hold papers with it.
    for (const number of ['hs-02', ''])
      expect(renamed(merged, 'set-HS-01', { number })).toHaveProperty('says');
    expect(renamed(merged, 'set-HS-01', { number: 'HS-01' })).toHaveLength(1);
  });

  it('lose no number to an amendment that asks every opening for a paper, whatever the openings are', () => {
    const anOpening = fc.constantFrom(strike, lock, magnet);
    fc.assert(
      fc.property(fc.array(anOpening, { minLength: 1, maxLength: 6 }), (candidates) => {
        const project = fixed(building(...candidates.map((one, index) => [`${101 + index}`, one] as const)));
        const amended = { ...project, amendments: [lettered] };
        expect(numbersBy(amended)).toEqual(numbersBy(project));
        expect(retiredNumbers(amended, setsOf(amended))).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });
});

describe('numbers fixed before sets had openings', () => {
  /** As they were told apart then. */
  const signatures = (project: Project) =>
    openingsInOrder(project).flatMap(({ id, mark }) => {
      const decision = decideAll(project).get(id);
      const signature = decision && wholeSignature(decision);
      return signature === undefined ? [] : [[mark, signature] as const];
    });
  const oldNumbers = (project: Project) =>
    Object.fromEntries(
      [...new Set(signatures(project).map(([, signature]) => signature))].map((signature, index) => [
        signature,
        `HS-${index + 11}`,
      ]),
    );
  const text = readFileSync('demo-data/small-office.json', 'utf8');

  it('come back from an old file, and stay when a paper is asked for before anybody fixed them again', () => {
    const opened = openProjectText(text);
    if (!opened.ok) throw new Error('The office does not open.');
    const { hardwareSets: _sets, ...rest } = opened.project;
    const numbers = oldNumbers(opened.project);
    const old = { ...rest, setNumbers: numbers };
    const file = { format: 'latchward-project', formatVersion: 3, project: old };
    const back = openProjectText(JSON.stringify(file));
    if (!back.ok) throw new Error('The old file does not open.');
    const { project } = back;
    const then = signatures(opened.project).map(([mark, signature]) => [mark, numbers[signature]]);
    expect(numbersBy(project)).toMatchObject(Object.fromEntries(then));
    expect(Object.keys(numbers).length).toBeGreaterThan(2);
    const amended = { ...project, amendments: [lettered] };
    expect(numbersBy(amended)).toEqual(numbersBy(project));
    expect(Object.values(fixed(project).hardwareSets).some((set) => set.formerly !== undefined)).toBe(false);
  });
});
