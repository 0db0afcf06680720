// What happens when, held against the whole decision space: the second model knows no rule, only circuits, so a
// decision that it finds deadly is a fault of one of the two.
import { describe, expect, test } from 'vitest';
import { decideFacts } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { ruleBookFor } from '../../src/domain/decide/ruleBook.ts';
import { candidates } from '../../src/domain/devices/candidates.ts';
import { defaultWeights } from '../../src/domain/model/project.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';
import { conditionIds } from '../../src/domain/simulate/conditions.ts';
import { simulate } from '../../src/domain/decide/whatHappens.ts';
import { type Point, pointAt, seeded, spaceSize } from './space.ts';

const sample = 4_000;

function decided(point: Point, override?: (typeof candidates)[number]): Decision {
  const view = { slots: slotsFrom(point.facts, point.basis), assumed: new Map() };
  return decideFacts(view, ruleBookFor(point.basis, []), defaultWeights, override);
}

function points(seed: number, count: number): readonly Point[] {
  const random = seeded(seed);
  return Array.from({ length: count }, () => pointAt(Math.floor(random() * spaceSize)));
}

describe('what happens when, over the decision space', () => {
  test('no decision that stands has a severe finding', () => {
    const broken: string[] = [];
    let standing = 0;
    for (const point of points(20261126, sample)) {
      const decision = decided(point);
      if (!decision.stands) continue;
      standing++;
      const severe = simulate(decision)?.findings.find((one) => one.severity === 'severe');
      if (severe) broken.push(`place ${point.index}: ${decision.chosen?.candidate.id}: ${severe.says}`);
    }
    expect(standing).toBeGreaterThan(sample / 10);
    expect(broken).toEqual([]);
  }, 120_000);

  test('whatever a person chooses instead: the statements of the trade hold in every condition', () => {
    const broken: string[] = [];
    const random = seeded(7);
    for (const point of points(7, 800)) {
      const candidate = candidates[Math.floor(random() * candidates.length)];
      const found = simulate(decided(point, candidate));
      if (!found || !candidate) continue;
      const { outcomes, arrangement } = found;
      // A lever or bolt of the leaf holds by itself, whatever the device beside it does.
      const deviceAlone =
        arrangement.lockedOutsideBy === 'device' || arrangement.leafLock.outsideLocked === 'no';
      const wrong = (says: string) => broken.push(`place ${point.index}, ${candidate.id}: ${says}`);
      for (const id of conditionIds) {
        const one = outcomes[id];
        if (one.says === '') wrong(`${id} says nothing`);
        if (!one.applies) continue;
        if (
          candidate.failMode === 'safe' &&
          one.entry === 'unlocked' &&
          one.coil === 'yes' &&
          id !== 'doorHeld'
        )
          wrong(`${id}: energized and unlocked`);
        if (deviceAlone && candidate.failMode === 'secure' && one.entry === 'locked' && one.coil === 'yes')
          wrong(`${id}: energized and locked`);
        if (candidate.device.keepsLatch && candidate.device.family === 'lock' && one.latched === 'no')
          if (id !== 'doorHeld') wrong(`${id}: a lock that is not latched`);
      }
      if (deviceAlone && candidate.failMode === 'safe' && outcomes.batterySpent.entry !== 'unlocked')
        wrong('fail safe and locked without any power');
      if (candidate.failMode === 'secure' && outcomes.batterySpent.entry !== 'locked')
        wrong('fail secure and unlocked without any power');
      // A magnet is fail safe only: without power nobody is held.
      if (candidate.device.family === 'magnet' && deviceAlone && outcomes.batterySpent.exit !== 'free')
        wrong('a magnet that holds without power');
    }
    expect(broken).toEqual([]);
  }, 60_000);
});
