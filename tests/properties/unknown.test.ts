import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoProject } from '../../scripts/demo/demoProject.ts';
import { openingOf, silentLosses } from '../../scripts/proof/silentLosses.ts';
import { answersTo } from '../../src/domain/decide/answers.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { silentDefaults } from '../../src/domain/decide/defaults.ts';
import { valueIn } from '../../src/domain/logic/slots.ts';
import { answered, outcome } from '../../src/domain/decide/whatMatters.ts';
import { NO } from '../../src/domain/logic/verdict.ts';
import { type FactKey, factKeys } from '../../src/domain/model/fields.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';
import { isRelevant, sense } from '../../src/domain/survey/relevance.ts';
import { missingForOrder } from '../../src/domain/sets/forOrder.ts';
import { missingKeys } from '../../src/domain/sets/missing.ts';
import { wholeSignature } from '../../src/domain/hardware/signature.ts';
import { runs } from './effort.ts';
import { heardOnlyWhenRecorded } from './onlyWhenRecorded.ts';
import { seeded } from './space.ts';
import { caseSurveys } from './surveys.ts';

const demo = demoProject();
const some = <T>(of: readonly T[], count: number, seed: number): readonly T[] => {
  const random = seeded(seed);
  return Array.from({ length: count }, () => of[Math.floor(random() * of.length)] as T);
};

test('a fact that is made unknown drops no item without a word', () => {
  const openings: readonly (readonly [Project, Opening])[] = [
    ...Object.values(demo.openings).map((opening) => [demo, opening] as const),
    ...some(caseSurveys, 300, 20261130).map((survey, index) => openingOf(survey, String(index))),
  ];
  const found = openings.map((one) => silentLosses(...one));
  expect(found.flatMap(({ lost }) => lost)).toEqual([]);
  expect(found.reduce((sum, { trials }) => sum + trials, 0)).toBeGreaterThan(10_000);
}, 120_000);

/**
 * Facts whose answers may be given in any order: what rules hear only when it was recorded is left as it stands, and so
 * is what counts as an answer before it is given, which an answer would correct.
 */
const supposed = new Set<FactKey>(silentDefaults.map(({ fact }) => fact));
const inAnyOrder = factKeys.filter((key) => !heardOnlyWhenRecorded.has(key) && !supposed.has(key));

/**
 * Requests, needs and approvals are brought forward by somebody and found by no survey: until one is recorded there is
 * none. What the plan says of a load stands until somebody counts.
 */
const broughtForward = new Set<FactKey>([
  ...supposed,
  'clinicalNeed',
  'fieldModificationApproved',
  'occupantLoad',
]);

test('no fact that makes sense at a settled opening and was never asked changes what it comes to', () => {
  const chance = seeded(7);
  const openings: readonly (readonly [Project, Opening])[] = [
    ...Object.values(demo.openings).map((opening) => [demo, opening] as const),
    ...some(caseSurveys, runs(60, 150), 20261201).map((survey, index) => openingOf(survey, String(index))),
  ];
  const wrong = new Set<string>();
  let trials = 0;
  for (const [project, full] of openings) {
    const facts = Object.fromEntries(Object.entries(full.facts).filter(() => chance() > 0.1));
    const opening: Opening = { ...full, facts };
    const decision = decide(project, opening);
    if (decision.state !== 'settled') continue;
    for (const key of factKeys) {
      const given = opening.facts[key] ?? project.building[key];
      if (given !== undefined && given.is !== 'unknown') continue;
      if (broughtForward.has(key) || !isRelevant(key, decision.slots, project.basis, false)) continue;
      for (const value of answersTo(key)) {
        const after = decide(...answered(project, opening, key, value));
        trials++;
        if (after.state !== 'refused' && byRules(after) !== byRules(decision)) {
          wrong.add(`${key}=${value} at ${opening.mark}`);
        }
      }
    }
  }
  expect([...wrong]).toEqual([]);
  expect(trials).toBeGreaterThan(500);
}, 120_000);

test('what an opening waits for is a question that makes sense there', () => {
  const chance = seeded(11);
  const openings: readonly (readonly [Project, Opening])[] = [
    ...Object.values(demo.openings).map((opening) => [demo, opening] as const),
    ...some(caseSurveys, runs(150, 600), 20261202).map((survey, index) => openingOf(survey, String(index))),
  ];
  const wrong = new Set<string>();
  let asked = 0;
  for (const [project, full] of openings) {
    const facts = Object.fromEntries(Object.entries(full.facts).filter(() => chance() > 0.2));
    const opening: Opening = { ...full, facts };
    const decision = decide(project, opening);
    for (const key of missingKeys(project, opening, decision)) {
      asked++;
      if (sense(key, decision.slots, project.basis) === NO) wrong.add(`${key} at ${opening.mark}`);
    }
  }
  expect([...wrong]).toEqual([]);
  expect(asked).toBeGreaterThan(500);
}, 120_000);

describe('however the answers come', () => {
  const opening: fc.Arbitrary<readonly [Project, Opening]> = fc.oneof(
    fc.constantFrom(...Object.values(demo.openings)).map((one) => [demo, one] as const),
    fc.constantFrom(...caseSurveys).map((survey) => openingOf(survey, 'case')),
  );

  test('what is settled once stays settled, with its arrangement, items and signatures', () => {
    let settled = 0;
    fc.assert(
      fc.property(opening, fc.nat(), ([project, full], seed) => {
        // What the plan says of the load is a supposition, too, until somebody counts.
        const given = inAnyOrder.filter(
          (key) =>
            key !== 'occupantLoad' && full.facts[key] !== undefined && project.building[key] === undefined,
        );
        const chance = seeded(seed);
        const order = given
          .map((key) => [chance(), key] as const)
          .toSorted(([one], [other]) => one - other)
          .map(([, key]) => key);
        const kept = Object.fromEntries(
          Object.entries(full.facts).filter(([key]) => !given.includes(key as FactKey)),
        );
        let now: Opening = { ...full, facts: kept };
        let before: Decision | undefined;
        for (const key of order) {
          now = { ...now, facts: { ...now.facts, [key]: full.facts[key] } };
          const after = decide(project, now);
          if (after.state === 'refused') break;
          if (before) expect(byRules(after), `after ${key}`).toBe(byRules(before));
          if (after.state === 'settled') {
            if (!before) settled++;
            before = after;
          }
        }
      }),
      { numRuns: runs(100, 250), seed: 17, endOnFailure: true },
    );
    expect(settled).toBeGreaterThan(runs(40, 100));
  }, 120_000);

  test('what is complete for the order is ordered the same after any further answer, and after most two', () => {
    let complete = 0;
    const pairs = seeded(5);
    fc.assert(
      fc.property(opening, ([project, one]) => {
        const decision = decide(project, one);
        if (decision.state !== 'settled' || missingForOrder(project, one, decision).length > 0) return;
        complete++;
        const unknown = inAnyOrder.filter((key) => valueIn(decision.slots, key) === undefined);
        const ordered = orderedOf(decision);
        const trial = (...given: readonly (readonly [FactKey, string | number | boolean])[]) => {
          const [after, where] = given.reduce<[Project, Opening]>(
            (at, [key, value]) => answered(...at, key, value),
            [project, one],
          );
          const told = decide(after, where);
          if (told.state !== 'refused') expect(orderedOf(told), JSON.stringify(given)).toBe(ordered);
        };
        for (const key of unknown) for (const value of answersTo(key)) trial([key, value]);
        const draw = <T>(of: readonly T[]): T => of[Math.floor(pairs() * of.length)] as T;
        for (let count = 0; count < 200 && unknown.length > 1; count++) {
          const [key, other] = [draw(unknown), draw(unknown)];
          if (key !== other) trial([key, draw(answersTo(key))], [other, draw(answersTo(other))]);
        }
      }),
      { numRuns: runs(25, 60), seed: 23, endOnFailure: true },
    );
    expect(complete).toBeGreaterThan(runs(10, 30));
  }, 120_000);
});

/** Without the reminders that a fact is only assumed: one comes with every rule that is found to lean on it. */
function byRules(decision: Decision): string {
  return outcome(decision)
    .split('|')
    .filter((part) => !part.includes(' is assumed ('))
    .join('|');
}

/** What is bought and who does what, as the sets print it. */
function orderedOf(decision: Decision): string {
  const work = decision.modifies.map(({ rule, clause }) => `${rule.id}${clause.key ?? ''}`);
  return [outcome(decision), wholeSignature(decision), ...work].join('\n');
}
