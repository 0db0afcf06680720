import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aSurvey, caseSurveys, type Survey } from '../../../tests/properties/surveys.ts';
import { defaultBasis } from '../codes/basis.ts';
import { all, any, atMost, type Condition, is, isKnown, no, not, over, yes } from '../logic/condition.ts';
import { NO, UNKNOWN, type VerdictWord, verdictWord, YES } from '../logic/verdict.ts';
import { slotsFrom } from '../rules/runCase.ts';
import { type Answers, answersOf } from './clauseIndex.ts';
import { indexClauses } from './indexClauses.ts';
import { ruleBookFor } from './ruleBook.ts';

function answerFor({ speak, sure }: Answers, clause: number): VerdictWord {
  const has = (set: Int32Array) => (((set[clause >>> 5] ?? 0) >>> (clause & 31)) & 1) === 1;
  return verdictWord(has(sure) ? YES : has(speak) ? UNKNOWN : NO);
}

/** Clauses and rows of the fit table that the index answers otherwise than their own condition does. */
function answeredOtherwise({ facts, basis }: Survey): string[] {
  const { clauses, index, rows, rowIndex } = ruleBookFor(basis, []);
  const slots = slotsFrom(facts, basis);
  const answers = answersOf(index, slots);
  const rowAnswers = answersOf(rowIndex, slots);
  const differs = (one: Answers, at: number, own: VerdictWord, name: string) =>
    answerFor(one, at) === own ? [] : [`${name}: ${answerFor(one, at)} for ${own}`];
  return [
    ...clauses.flatMap(({ rule, clause, test: own }, at) =>
      differs(answers, at, verdictWord(own(slots)), `${rule.id}${clause.key ?? ''}`),
    ),
    ...rows.flatMap(({ row, test: own }, at) => differs(rowAnswers, at, verdictWord(own(slots)), row.name)),
  ];
}

test('the index answers as each clause does by itself, at the openings of all rule cases', () => {
  for (const survey of caseSurveys.filter((_one, index) => index % 4 === 0)) {
    expect(answeredOtherwise(survey), JSON.stringify(survey)).toEqual([]);
  }
});

test('and at openings made up of several cases and any answers', () => {
  fc.assert(
    fc.property(aSurvey, (survey) => {
      expect(answeredOtherwise(survey)).toEqual([]);
    }),
    { numRuns: 500, seed: 21 },
  );
});

const ask = (condition: Condition, facts: Survey['facts']) =>
  answerFor(answersOf(indexClauses([condition], defaultBasis), slotsFrom(facts, defaultBasis)), 0);

test.each<[string, Condition, Survey['facts'], VerdictWord]>([
  ['what speaks because a fact is missing', not(isKnown('smokeSeals')), {}, 'yes'],
  ['the same once it is known', not(isKnown('smokeSeals')), { smokeSeals: true }, 'no'],
  [
    'one alternative sure, the other unknown',
    any(yes('smokeSeals'), yes('fireAlarm')),
    { fireAlarm: true },
    'yes',
  ],
  [
    'one alternative out, the other unknown',
    any(yes('smokeSeals'), yes('fireAlarm')),
    { fireAlarm: false },
    'unknown',
  ],
  [
    'a value that no condition names',
    any(is('roomUse', 'office'), yes('fireAlarm')),
    { roomUse: 'lobby' },
    'unknown',
  ],
  ['it is so or it is not so, unknown', any(yes('smokeSeals'), no('smokeSeals')), {}, 'unknown'],
  ['it is so and it is not so, unknown', all(yes('smokeSeals'), no('smokeSeals')), {}, 'unknown'],
  ['a number on the bound', over('occupantLoad', 49), { occupantLoad: 49 }, 'no'],
  ['a number above it', over('occupantLoad', 49), { occupantLoad: 49.5 }, 'yes'],
  [
    'a number between two bounds',
    all(over('occupantLoad', 49), atMost('occupantLoad', 99)),
    { occupantLoad: 60 },
    'yes',
  ],
  [
    'a number above both',
    all(over('occupantLoad', 49), atMost('occupantLoad', 99)),
    { occupantLoad: 100 },
    'no',
  ],
  ['a word where a number is wanted', over('occupantLoad', 49), { occupantLoad: 'many' as never }, 'unknown'],
])('%s', (_what, condition, facts, expected) => {
  expect(ask(condition, facts)).toBe(expected);
});

test('further alternatives belong to their own clause', () => {
  const many = Array.from({ length: 40 }, () => any(yes('smokeSeals'), yes('fireAlarm')));
  const answers = answersOf(
    indexClauses([...many, yes('sprinklered')], defaultBasis),
    slotsFrom({ smokeSeals: false, fireAlarm: true, sprinklered: false }, defaultBasis),
  );
  expect(many.every((_one, clause) => answerFor(answers, clause) === 'yes')).toBe(true);
  expect(answerFor(answers, 40)).toBe('no');
});
