import { expect, test } from 'vitest';
import { decideFacts } from '../../src/domain/decide/decide.ts';
import { ruleBookFor } from '../../src/domain/decide/ruleBook.ts';
import { defaultWeights } from '../../src/domain/model/project.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';
import { runs } from './effort.ts';
import { invariants } from './invariants.ts';
import { pointAt, seeded, spaceSize } from './space.ts';

/** A fixed sample; `npx tsx scripts/proof/enumerate.ts` walks the whole space. */
const sampleSize = runs(10_000, 20_000);

test('every sampled opening of the decision space keeps every invariant', () => {
  const random = seeded(20261125);
  const broken: string[] = [];
  const states = new Set<string>();
  let standing = 0;
  for (let step = 0; step < sampleSize && broken.length < 5; step++) {
    const point = pointAt(Math.floor(random() * spaceSize));
    const view = { slots: slotsFrom(point.facts, point.basis), assumed: new Map() };
    const decision = decideFacts(view, ruleBookFor(point.basis, []), defaultWeights);
    states.add(decision.state);
    if (decision.stands) standing++;
    for (const [name, invariant] of Object.entries(invariants)) {
      const says = invariant(point, decision);
      if (says === undefined) continue;
      broken.push(`${name}: ${says}; place ${point.index} of the space, ${JSON.stringify(point)}`);
    }
  }
  expect(broken).toEqual([]);
  // A sample in which nothing stands would keep every invariant and prove nothing.
  expect(standing).toBeGreaterThan(sampleSize / 10);
  expect([...states]).toEqual(expect.arrayContaining(['none', 'open', 'referred', 'refused']));
}, 120_000);
