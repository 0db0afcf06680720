import { describe, expect, test } from 'vitest';
import { decide } from '../../src/domain/decide/decide.ts';
import {
  clearWidthButt,
  clearWidthOfPairLeaf,
  clearWidthSwingClear,
} from '../../src/domain/egress/clearWidth.ts';
import { limitingStrength } from '../../src/domain/fit/strength.ts';
import { known } from '../../src/domain/testing/facts.ts';
import type { FactValue } from '../../src/domain/model/fields.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import type { Opening } from '../../src/domain/model/project.ts';
import { runCase } from '../../src/domain/rules/runCase.ts';
import { R85 } from '../../src/domain/rules/special/R-85-delayed-egress-in-full.ts';
import { R86 } from '../../src/domain/rules/special/R-86-thirty-seconds-need-approval.ts';
import { qty } from '../../src/domain/units/quantity.ts';

const inch = (value: number) => qty(value, 'in');
const clear = (found: ReturnType<typeof clearWidthButt>) =>
  found.ok ? [Math.round(found.clear * 100) / 100, found.enough] : found.says;

describe('clear width, 2010 ADA Standards 404.2.3 (32 in at 90 degrees, face of leaf to stop)', () => {
  test.each([
    [30, 27.25, false],
    [32, 29.25, false],
    [34, 31.25, false],
    [34.75, 32, true],
    [34.74, 31.99, false],
    [35, 32.25, true],
    [36, 33.25, true],
    [42, 39.25, true],
  ])('derived: %f in frame, 1-3/4 in leaf on butt hinges leaves %f in', (width, wanted, enough) => {
    expect(clear(clearWidthButt(inch(width), inch(1.75)))).toEqual([wanted, enough]);
  });
  test.each([
    [34, 31.63, false],
    [36, 33.63, true],
  ])('derived: %f in frame, 1-3/8 in leaf leaves %f in', (width, wanted, enough) => {
    expect(clear(clearWidthButt(inch(width), inch(1.375)))).toEqual([wanted, enough]);
  });
  test('derived: swing-clear hinges give 32.75 in of a 34 in frame and 32.0 of 33-1/4', () => {
    expect(clear(clearWidthSwingClear(inch(34), inch(1.75)))).toEqual([32.75, true]);
    expect(clear(clearWidthSwingClear(inch(33.25), inch(1.75)))).toEqual([32, true]);
  });
  test('derived: one leaf of a 72 in pair gives 33.8 in, of a 60 in pair 27.8 in', () => {
    expect(clear(clearWidthOfPairLeaf(inch(72), inch(1.75)))).toEqual([33.81, true]);
    expect(clear(clearWidthOfPairLeaf(inch(60), inch(1.75)))).toEqual([27.81, false]);
  });
  test('published figures: a 36 in leaf gives about 33 in, a 32 in leaf 29.6 to 30.5 in; the estimate is never above them', () => {
    const at = (width: number) => (clear(clearWidthButt(inch(width), inch(1.75))) as [number, boolean])[0];
    expect(Math.abs(at(36) - 33)).toBeLessThanOrEqual(0.5);
    expect(at(32)).toBeLessThanOrEqual(30.5);
    expect(at(32)).toBeGreaterThanOrEqual(32 - 3);
  });
  test('sizes out of range are refused', () => {
    expect(
      [
        [11, 1.75],
        [241, 1.75],
        [36, 0.2],
        [36, 7],
      ].map(([w, t]) => clearWidthButt(inch(w as number), inch(t as number)).ok),
    ).toEqual([false, false, false, false]);
    expect(clearWidthSwingClear(inch(11), inch(1.75)).ok || clearWidthOfPairLeaf(inch(36), inch(9)).ok).toBe(
      false,
    );
    expect(
      [
        [12, 0.25],
        [240, 6],
      ].map(([w, t]) => clearWidthButt(inch(w as number), inch(t as number)).ok),
    ).toEqual([true, true]);
  });
});

/** Ratings fire doors are made with, minutes. Source: NFPA 80 (2019) annex, from memory. */
const madeRatings = [20, 45, 60, 90, 180];

/** Whether the decision holds the rating of the door to be too low for its wall. */
function isTooLow(wallKind: FactValue<'wallKind'>, wallRatingMin: number, fireRatingMin: number): boolean {
  const facts = Object.entries({ wallKind, wallRatingMin, fireRatingMin }).map(
    ([key, value]) => [key, known(value)] as const,
  );
  const { findings } = decide(newProject('p', 'P'), {
    ...newOpening('o', '1'),
    facts: Object.fromEntries(facts) as Opening['facts'],
  });
  return findings.some(({ clause }) => clause.effect === 'finding' && clause.field === 'fireRatingMin');
}

describe('fire door ratings by wall', () => {
  test.each([
    ['fireWall', 240, 180, 'IBC Table 716.1(2), read'],
    ['fireBarrier', 240, 180, 'IBC Table 716.1(2), read'],
    ['fireWall', 180, 180, 'IBC Table 716.1(2), read'],
    ['fireBarrier', 180, 180, 'IBC Table 716.1(2), read'],
    ['fireWall', 120, 90, 'IBC Table 716.1(2), read'],
    ['fireBarrier', 120, 90, 'IBC Table 716.1(2), read'],
    ['fireWall', 90, 90, 'IBC Table 716.1(2), read'],
    ['fireBarrier', 90, 90, 'IBC Table 716.1(2), read'],
    ['exitEnclosure', 120, 90, 'IBC Table 716.1(2), second-hand, agrees with NFPA 101 8.3.3.2.2 (2018)'],
    ['exitEnclosure', 60, 60, 'IBC Table 716.1(2), from memory'],
    ['fireBarrier', 60, 45, 'IBC Table 716.1(2), second-hand'],
    ['corridor', 60, 20, 'IBC Table 716.1(2), second-hand'],
    ['corridor', 30, 20, 'IBC Table 716.1(2), from memory'],
    ['otherPartition', 60, 45, 'IBC Table 716.1(2), from memory'],
    ['otherPartition', 30, 20, 'IBC Table 716.1(2), from memory'],
    ['smokeBarrier', 60, 20, 'IBC Table 716.1(2), second-hand'],
    ['horizontalExit', 120, 90, 'IBC Table 716.1(2), from memory'],
    ['horizontalExit', 180, 180, 'IBC Table 716.1(2), from memory'],
    ['horizontalExit', 240, 180, 'IBC Table 716.1(2), from memory'],
    ['exterior', 180, 90, 'IBC Table 716.1(2), from memory'],
    ['exterior', 120, 90, 'IBC Table 716.1(2), from memory'],
    ['exterior', 60, 45, 'IBC Table 716.1(2), from memory'],
    ['smokePartition', 0, 0, 'IBC 710 and 407.3.1, read for I-2'],
  ] as const)(
    '%s of %i min: a door of %i min is taken, one of the next lower rating is not (%s)',
    (kind, wall, door, _source) => {
      expect(isTooLow(kind, wall, door)).toBe(false);
      const lower = madeRatings.findLast((minutes) => minutes < door);
      expect(lower === undefined || isTooLow(kind, wall, lower)).toBe(true);
    },
  );
});

describe('strength', () => {
  const steel = { leafMaterial: 'hollowMetal', frameMaterial: 'hollowMetal', frameGrouted: false } as const;
  test('worked example, common practice, no source: strike 1500, bored latch 500, 16 gauge frame, wood leaf 600 hold 500 lbf, limited by the latch', () => {
    expect(
      limitingStrength('strikeCylindrical', {
        latch: 'bored',
        latchProjectionIn: 0.5,
        leafMaterial: 'woodSolidCore',
        frameMaterial: 'hollowMetal',
        frameGrouted: false,
      }),
    ).toEqual({ lbf: 500, highestLbf: 500, limitedBy: 'latch' });
  });
  test('worked example, common practice, no source: a magnet on a narrow stile holds 600 lbf, limited by the leaf', () => {
    expect(limitingStrength('magnet', { ...steel, leafMaterial: 'aluminiumNarrow' })).toMatchObject({
      lbf: 600,
      limitedBy: 'doorEdge',
    });
  });
  test('the same model: a strike of 1500 lbf with a weak latch in a wood jamb is a wood-jamb result', () => {
    expect(
      limitingStrength('strikeCylindrical', {
        ...steel,
        latch: 'bored',
        latchProjectionIn: 0.5,
        frameMaterial: 'wood',
      }),
    ).toMatchObject({ lbf: 300, limitedBy: 'frame' });
  });
});

test('P22, magnet instruction sheet and A156.24: a push of at most 3 s starts a count that nothing stops, 15 s, and 30 s only with approval', () => {
  const facts = {
    egressRole: 'exteriorExit',
    wishDelayedEgress: true,
    wishDelay30s: true,
    swingsWithEgress: true,
    wishNoDelaySign: false,
  } as const;
  const at = (clause: string, delay30sApproved: boolean) =>
    runCase(R86, {
      name: '',
      clause,
      on: 'delayedExitDevice/safe/delayed',
      facts: { ...facts, delay30sApproved },
      expect: 'yes',
    });
  expect([at('c', true), at('c', false)]).toEqual(['yes', 'no']);
  const says = R85.clauses.map((clause) => clause.says).join(' ');
  expect(says).toMatch(/at most 3 s .* delay of 15 s that nothing can stop/);
});
