import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide, decideAll } from '../decide/decide.ts';
import { partsOf } from '../decide/parts.ts';
import { slotOf } from '../logic/compile.ts';
import { type Facts, known } from '../model/fact.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { aProject } from '../testing/arbitraries.ts';
import { assignSets, hardwareSets, setSignature } from './sets.ts';

const base: Facts = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  frameMaterial: known('hollowMetal'),
  latch: known('mortise'),
  handing: known('LH'),
  readerSides: known('secure'),
  fireRatingMin: known(0),
  wallRatingMin: known(0),
  wallKind: known('none'),
  egressRole: known('exitAccess'),
  occupantLoad: known(4),
  roomUse: known('office'),
  occupancyGroup: known('B'),
};
function withOpenings(...list: readonly [string, Facts, Opening['override']?][]): Project {
  const openings = Object.fromEntries(
    list.map(([mark, facts, override]) => [
      mark,
      { ...newOpening(mark, mark), facts: { ...base, ...facts }, override: override ?? null },
    ]),
  );
  return { ...newProject('p', 'Project'), openings };
}
const setsOf = (project: Project) => hardwareSets(project, decideAll(project));
const byHand = (candidate: string) => ({ candidate, reason: 'x', by: 'x', at: '2026-03-02T09:00:00Z' });

describe('hardware sets', () => {
  it('puts openings alike in every item into one set and multiplies', () => {
    const sets = setsOf(withOpenings(['101', {}], ['102', {}], ['9', {}]));
    expect(sets.map((set) => set.id)).toEqual(['HS-01']);
    expect(sets[0]?.openings.map((one) => one.mark)).toEqual(['9', '101', '102']);
    for (const line of sets[0]?.lines ?? []) expect(line.total).toBe(line.each * 3);
    expect(sets[0]?.lines.length).toBeGreaterThan(0);
  });

  it('never puts two fail modes into one', () => {
    const sets = setsOf(
      withOpenings(
        ['101', {}, byHand('strikeMortise/secure/free')],
        ['102', {}, byHand('strikeMortise/safe/free')],
      ),
    );
    expect(sets).toHaveLength(2);
  });

  it('never puts a rated and an unrated opening into one', () => {
    const by = byHand('mechanicalLock/none/free');
    const sets = setsOf(withOpenings(['101', {}, by], ['102', { fireRatingMin: known(20) }, by]));
    expect(sets).toHaveLength(2);
  });

  it('keeps rated, unrated and unknown apart even where the parts are the same', () => {
    const project = withOpenings(['101', {}, byHand('mechanicalLock/none/free')]);
    const decision = decide(project, project.openings['101'] as Opening);
    const signatures = [true, false, undefined].map((rated) => {
      const slots = [...decision.slots];
      slots[slotOf('fireRated')] = rated;
      return setSignature({ ...decision, slots });
    });
    expect(new Set(signatures).size).toBe(3);
  });

  it('never puts a pair and a single into one', () => {
    const by = byHand('mechanicalLock/none/free');
    expect(setsOf(withOpenings(['101', {}, by], ['102', { doorType: known('pair') }, by]))).toHaveLength(2);
  });

  it('parts left from right only where an item is ordered by hand', () => {
    const handed = byHand('mortiseLock/secure/free');
    const plain = byHand('strikeMortise/secure/free');
    const right: Facts = { handing: known('RH') };
    expect(setsOf(withOpenings(['101', {}, handed], ['102', right, handed]))).toHaveLength(2);
    expect(setsOf(withOpenings(['101', {}, plain], ['102', right, plain]))).toHaveLength(1);
  });

  it('numbers in the order of the schedule and keeps the numbers given before', () => {
    expect([...assignSets(['x', 'y', 'x', 'z'])]).toEqual([
      ['x', 'HS-01'],
      ['y', 'HS-02'],
      ['z', 'HS-03'],
    ]);
    const before = new Map([
      ['gone', 'HS-07'],
      ['y', 'HS-02'],
    ]);
    const after = assignSets(['x', 'y'], before);
    expect(after.get('y')).toBe('HS-02');
    expect(after.get('x')).toBe('HS-08');
    expect(after.get('gone')).toBe('HS-07');
  });

  it('holds for any project: alike inside a set, every chosen opening in exactly one', () => {
    fc.assert(
      fc.property(aProject, (project) => {
        const sensible = { ...project, amendments: [] };
        const decisions = decideAll(sensible);
        const sets = hardwareSets(sensible, decisions);
        const chosen = Object.values(sensible.openings).filter(
          (one) => setSignature(decide(sensible, one)) !== undefined,
        );
        const listed = sets.flatMap((set) => set.openings.map((one) => one.id));
        // Two entries of a made-up project may carry one id; they are then one decision.
        expect(new Set(listed)).toEqual(new Set(chosen.map((one) => one.id)));
        for (const set of sets) {
          const members = set.openings.map((one) => decisions.get(one.id));
          const alike = new Set(
            members.map((one) =>
              JSON.stringify([
                one?.chosen?.candidate.id,
                one?.slots[slotOf('fireRated')] ?? null,
                one?.slots[slotOf('isPair')] ?? null,
                one && partsOf(one).map((part) => `${part.item}${part.quantity}`),
              ]),
            ),
          );
          expect(alike.size).toBe(1);
        }
      }),
      { numRuns: 60 },
    );
  });
});
