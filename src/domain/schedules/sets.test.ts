import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide, decideAll } from '../decide/decide.ts';
import { type Part, partsOf } from '../decide/parts.ts';
import type { ItemId } from '../devices/items.ts';
import { slotOf } from '../logic/compile.ts';
import { type Facts, known } from '../model/fact.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { aProject } from '../testing/arbitraries.ts';
import { isIncluded } from './setLines.ts';
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

  it('says of a lock what it has to be ordered with, and with which openings where they differ', () => {
    const by = byHand('strikeRim/secure/free');
    const rim: Facts = { latch: known('rimExit'), supplyVolts: known('24'), workStatus: known('existing') };
    const [set] = setsOf(
      withOpenings(['101', rim, by], ['102', { ...rim, supplyVolts: known('12') }, by], ['103', rim, by]),
    );
    const line = (item: string) => set?.lines.find((one) => one.item === item);
    expect(line('electricStrike')?.detail).toContain('Electric strike for a rim exit device, fail secure');
    expect(line('electricStrike')?.detail).toContain('24 V DC: 101, 103; 12 V DC: 102');
    expect(line('lockSupply')?.detail).toBe('24 V DC: 101, 103; 12 V DC: 102');
    expect(line('reader')?.detail).toBe('');
    expect(set?.work).toBe('Existing, not altered');
  });

  it('says what nobody surveyed', () => {
    const [set] = setsOf(withOpenings(['101', {}, byHand('mechanicalLock/none/free')]));
    expect(set?.work).toBe('new or existing not surveyed');
    expect(set?.lines.find((one) => one.item === 'mechanicalLock')?.detail).toBe('Mortise latch · LH');
  });

  it('counts one lock once: what asks something of it is included', () => {
    const part = (item: ItemId, quantity = 1): Part => ({ item, quantity, ruleId: undefined });
    const included = (parts: readonly Part[], leaves = 1) =>
      parts.filter((one) => isIncluded(one.item, parts, leaves)).map((one) => one.item);
    expect(included([part('fireListedStrike'), part('preloadStrike'), part('fireLabelledHardware')])).toEqual(
      ['preloadStrike', 'fireLabelledHardware'],
    );
    expect(included([part('preloadStrike'), part('reader')])).toEqual([]);
    expect(included([part('electricStrike'), part('storeroomLockset')])).toEqual([]);
    expect(included([part('mortiseLock'), part('storeroomLockset')])).toEqual(['storeroomLockset']);
    expect(included([part('latchingHardware'), part('electricStrike')])).toEqual([]);
    expect(included([part('latchingHardware'), part('mechanicalLock')])).toEqual(['latchingHardware']);
    const bars = [part('delayedExitDevice'), part('fireExitHardware')];
    expect(included(bars)).toEqual(['fireExitHardware']);
    expect(included(bars, 2)).toEqual([]);
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
