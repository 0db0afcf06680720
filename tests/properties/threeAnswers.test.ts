import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptySet, has } from '../../src/domain/decide/candidateSet.ts';
import { judge } from '../../src/domain/decide/judge.ts';
import { type RuleBook, ruleBookFor } from '../../src/domain/decide/ruleBook.ts';
import { candidates } from '../../src/domain/devices/candidates.ts';
import { UNKNOWN, YES } from '../../src/domain/logic/verdict.ts';
import type { FactKey } from '../../src/domain/model/fields.ts';
import { allRules } from '../../src/domain/rules/all.ts';
import type { Clause } from '../../src/domain/rules/rule.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';
import { aSurveyWithGaps, caseSurveys, leave, stands, type Survey } from './surveys.ts';

/**
 * A missing fact is neither yes nor no, so supplying it may settle a doubt and never unsettle what is sure. Only a
 * clause that says something because a fact is missing may fall silent; what such a clause forbids is listed here.
 */
const speaksOfTheMissing = (clause: Clause) => stands(clause.when, true, (leaf) => leaf.op === 'known');

/** Forbidden until somebody records the approval, wish, need or place that lifts it. */
const forbiddenUntilKnown = [
  'R-39a',
  'R-39b',
  'R-39c',
  'R-39d',
  'R-39e',
  'R-39f',
  'R-39g',
  'R-39j',
  // Counts as a fire door until somebody answers its rating.
  'R-53f',
  'R-53g',
  'R-54a',
  'R-54b',
  'R-59a',
  'R-59c',
  'R-66b',
  // A lock that reads nothing, until the opening is said to be sealed off.
  'N-01a',
  // A lock that nobody asked for.
  'N-10',
  'N-90',
  'N-91',
  'N-92',
  'N-93',
  'N-94',
];

const named = allRules.flatMap((rule) =>
  rule.clauses.map((clause) => ({ id: `${rule.id}${clause.key ?? ''}`, clause })),
);

test('the prohibitions that a recorded fact may lift are these, and no others', () => {
  const found = named
    .filter(({ clause }) => clause.effect === 'prohibit' && speaksOfTheMissing(clause))
    .map(({ id }) => id);
  expect(found.toSorted()).toEqual(forbiddenUntilKnown.toSorted());
});

function everyClause(book: RuleBook) {
  return book.clauses.filter(({ clause }) => !speaksOfTheMissing(clause));
}
const steadyByBook = new Map<RuleBook, ReturnType<typeof everyClause>>();

/** Clauses that were sure without these facts and are not with them. */
function unsettled({ facts, basis }: Survey, fewer: Survey['facts']): string[] {
  const book = ruleBookFor(basis, []);
  const steady = steadyByBook.get(book) ?? everyClause(book);
  steadyByBook.set(book, steady);
  const [before, after] = [slotsFrom(fewer, basis), slotsFrom(facts, basis)];
  return steady.flatMap(({ rule, clause, test }) => {
    const was = test(before);
    const now = test(after);
    // With a part that asks whether something is known, a "no" may become a "yes"; a "yes" always stays.
    return was === YES && now !== YES
      ? [`${rule.id}${clause.key ?? ''} was sure and is ${now === UNKNOWN ? 'unknown' : 'silent'}`]
      : [];
  });
}

describe('a fact more', () => {
  test('unsettles no rule at the openings of the rule cases, whichever fact is added last', () => {
    const random = caseSurveys.filter((_one, index) => index % 12 === 0);
    for (const survey of random) {
      for (const key of Object.keys(survey.facts) as FactKey[]) {
        const found = unsettled(survey, leave(survey.facts, [key]));
        expect(found, `${key} added to ${JSON.stringify(survey)}`).toEqual([]);
      }
    }
  }, 60_000);

  test('unsettles no rule at openings made up of several cases and any answers', () => {
    fc.assert(
      fc.property(aSurveyWithGaps, (survey) => {
        expect(unsettled(survey, survey.fewer)).toEqual([]);
      }),
      { numRuns: 600, seed: 7 },
    );
  });

  test('never revives a candidate that rules forbade, nor one that cannot go into the door', () => {
    fc.assert(
      fc.property(aSurveyWithGaps, ({ facts, fewer, basis }) => {
        const book = ruleBookFor(basis, []);
        const before = judge(book, slotsFrom(fewer, basis));
        const after = judge(book, slotsFrom(facts, basis));
        const liftable = emptySet();
        for (const { speaksOf, clause } of before.sure) {
          if (speaksOfTheMissing(clause))
            speaksOf.forEach((bits, word) => (liftable[word] = (liftable[word] ?? 0) | bits));
        }
        const revived = candidates.filter(
          ({ index }) => has(before.rejected, index) && !has(after.rejected, index) && !has(liftable, index),
        );
        // Where the fact leads out of the fit table, a device may turn from impossible to "ask": never to allowed.
        expect(revived.filter(({ index }) => !has(after.fitDoubted, index)).map(({ id }) => id)).toEqual([]);
      }),
      { numRuns: 600, seed: 8 },
    );
  });
});
