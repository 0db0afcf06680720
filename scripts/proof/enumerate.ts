import { decideFacts } from '../../src/domain/decide/decide.ts';
import { ruleBookFor } from '../../src/domain/decide/ruleBook.ts';
import { defaultWeights } from '../../src/domain/model/project.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';
import { invariants } from '../../tests/properties/invariants.ts';
import { argumentsOf, countOf } from '../lib/arguments.mjs';
import { pointAt, seeded, spaceSize } from '../../tests/properties/space.ts';

/**
 * Walks the decision space and holds every answer against the invariants.
 * `npx tsx scripts/proof/enumerate.ts` walks all of it; `enumerate.ts 200000` a sample of that size at a fixed seed.
 */
const { words } = argumentsOf({
  usage: 'npx tsx scripts/proof/enumerate.ts [openings]',
  words: ['openings'],
});
const wanted = countOf(words[0], 'The number of openings', spaceSize);
const random = seeded(20261125);
const amendments: never[] = [];
const broken = new Map<string, { count: number; first: string }>();
const states = new Map<string, number>();
const started = performance.now();
for (let step = 0; step < wanted; step++) {
  const point = pointAt(wanted >= spaceSize ? step : Math.floor(random() * spaceSize));
  const view = { slots: slotsFrom(point.facts, point.basis), assumed: new Map() };
  const decision = decideFacts(view, ruleBookFor(point.basis, amendments), defaultWeights);
  states.set(decision.state, (states.get(decision.state) ?? 0) + 1);
  for (const [name, invariant] of Object.entries(invariants)) {
    const says = invariant(point, decision);
    if (says === undefined) continue;
    const before = broken.get(name);
    if (before) before.count++;
    else
      broken.set(name, {
        count: 1,
        first: `place ${point.index}: ${says} ${JSON.stringify(point.facts)} ${JSON.stringify(point.basis)}`,
      });
  }
  if (step % 500_000 === 499_999) console.error(`${step + 1} of ${wanted}`);
}
const seconds = (performance.now() - started) / 1000;
console.log(
  `${wanted} of ${spaceSize} openings of the decision space, ${Math.round(wanted / seconds)} a second.`,
);
for (const [state, count] of states) console.log(`${state}: ${count}`);
for (const [name, { count, first }] of broken) console.log(`BROKEN ${count} times: ${name}\n  ${first}`);
process.exitCode = broken.size === 0 ? 0 : 1;
