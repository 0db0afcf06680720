import type { Decision } from '../../src/domain/decide/decision.ts';
import { decideFacts } from '../../src/domain/decide/decide.ts';
import { ruleBookFor } from '../../src/domain/decide/ruleBook.ts';
import { defaultWeights } from '../../src/domain/model/project.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';
import { invariants } from '../../tests/properties/invariants.ts';
import { brokenOutcomes } from '../../tests/properties/outcomeInvariants.ts';
import {
  heldPointAt,
  heldSpaceSize,
  type Point,
  pointAt,
  seeded,
  spaceSize,
} from '../../tests/properties/space.ts';
import { argumentsOf, countOf } from '../lib/arguments.mjs';

/**
 * Walks the decision spaces and holds every answer against the invariants: those over facts and answer, and those over
 * what happens when. `npx tsx scripts/proof/enumerate.ts` walks all of both; `200000` a sample of that size of each at
 * a fixed seed.
 */
const spaces = {
  'ordinary openings': { at: pointAt, size: spaceSize },
  'openings at which a lock can shut somebody in': { at: heldPointAt, size: heldSpaceSize },
} as const;
const { words } = argumentsOf({
  usage: 'npx tsx scripts/proof/enumerate.ts [openings of each space]',
  words: ['openings of each space'],
});
const wanted = countOf(words[0], 'The number of openings', Number.MAX_SAFE_INTEGER);

function brokenAt(point: Point, decision: Decision): readonly (readonly [string, string])[] {
  const plain = Object.entries(invariants).flatMap(([name, invariant]) => {
    const says = invariant(point, decision);
    return says === undefined ? [] : [[name, says] as const];
  });
  return [...plain, ...brokenOutcomes(point, decision)];
}

let bad = false;
for (const [what, { at, size }] of Object.entries(spaces)) {
  const random = seeded(20261125);
  const broken = new Map<string, { count: number; first: string }>();
  const states = new Map<string, number>();
  const started = performance.now();
  const count = Math.min(wanted, size);
  for (let step = 0; step < count; step++) {
    const point = at(count === size ? step : Math.floor(random() * size));
    const view = { slots: slotsFrom(point.facts, point.basis), assumed: new Map() };
    const decision = decideFacts(view, ruleBookFor(point.basis, []), defaultWeights);
    states.set(decision.state, (states.get(decision.state) ?? 0) + 1);
    for (const [name, says] of brokenAt(point, decision)) {
      const before = broken.get(name);
      if (before) before.count++;
      else {
        const first = `place ${point.index}: ${says} ${JSON.stringify(point.facts)} ${JSON.stringify(point.basis)}`;
        broken.set(name, { count: 1, first });
      }
    }
    if (step % 500_000 === 499_999) console.error(`${step + 1} of ${count}`);
  }
  const seconds = (performance.now() - started) / 1000;
  console.log(`${count} of ${size} ${what}, ${Math.round(count / seconds)} a second.`);
  for (const [state, times] of states) console.log(`${state}: ${times}`);
  for (const [name, one] of broken) console.log(`BROKEN ${one.count} times: ${name}\n  ${one.first}`);
  bad ||= broken.size > 0;
}
process.exitCode = bad ? 1 : 0;
