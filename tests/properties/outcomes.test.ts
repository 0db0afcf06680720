// What a settled arrangement does, held against plain statements: who is held, on which side, and what frees them.
import { expect, test } from 'vitest';
import { decideFacts } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { ruleBookFor } from '../../src/domain/decide/ruleBook.ts';
import { awaited } from '../../src/domain/decide/steps.ts';
import { simulate } from '../../src/domain/decide/whatHappens.ts';
import { defaultWeights } from '../../src/domain/model/project.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';
import { runs } from './effort.ts';
import { brokenOutcomes } from './outcomeInvariants.ts';
import { heldPointAt, heldSpaceSize, type Point, pointAt, seeded, spaceSize } from './space.ts';

/** Fixed samples, twice as large with `npm run thorough`; `npx tsx scripts/proof/enumerate.ts` walks both spaces. */
const samples = [
  ['ordinary openings', pointAt, spaceSize, runs(4_000, 8_000)],
  ['openings at which a lock can shut somebody in', heldPointAt, heldSpaceSize, runs(8_000, 16_000)],
] as const;

function decided({ facts, basis }: Point): Decision {
  const view = { slots: slotsFrom(facts, basis), assumed: new Map() };
  return decideFacts(view, ruleBookFor(basis, []), defaultWeights);
}

test.each(samples)(
  '%s: every statement about what happens holds',
  (_name, at, size, count) => {
    const random = seeded(20261130);
    const broken: string[] = [];
    let standing = 0;
    for (let step = 0; step < count && broken.length < 5; step++) {
      const point = at(Math.floor(random() * size));
      const decision = decided(point);
      if (decision.stands) standing++;
      for (const [name, says] of brokenOutcomes(point, decision)) {
        broken.push(`${name}: ${says}; place ${point.index}, ${JSON.stringify(point)}`);
      }
    }
    expect(broken).toEqual([]);
    expect(standing).toBeGreaterThan(count / 20);
  },
  120_000,
);

const waitsForParts = (decision: Decision) =>
  decision.state === 'open' && awaited(decision).some(({ clause }) => clause.effect === 'require');

test('what is remembered of an arrangement is what it does: severe is said where it is so, and nowhere else', () => {
  const random = seeded(20261129);
  const wrong: string[] = [];
  const states = new Set<string>();
  let waiting = 0;
  for (let step = 0; step < 8_000 && wrong.length < 5; step++) {
    const point = heldPointAt(Math.floor(random() * heldSpaceSize));
    const decision = decided(point);
    states.add(decision.state);
    const found = (simulate(decision)?.findings ?? [])
      .filter((one) => one.severity === 'severe')
      .map((one) => one.says);
    const said = decision.severe.map((one) => one.says);
    // Only where a part may yet come that ends it, and then nothing is settled and the fact is asked.
    if (said.length === 0 && found.length > 0 && waitsForParts(decision)) waiting++;
    else if (found.join() !== said.join())
      wrong.push(`place ${point.index}: ${found.join()} but says ${said.join()}`);
    if ((decision.state === 'severe') !== said.length > 0) wrong.push(`place ${point.index}: state`);
  }
  expect(wrong).toEqual([]);
  expect([...states]).toContain('severe');
  expect(waiting).toBeGreaterThan(0);
}, 60_000);
