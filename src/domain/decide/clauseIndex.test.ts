import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aSurvey, caseSurveys, type Survey } from '../../../tests/properties/surveys.ts';
import { all, is, isKnown, not, yes } from '../logic/condition.ts';
import { NO } from '../logic/verdict.ts';
import { slotsFrom } from '../rules/runCase.ts';
import { defaultBasis } from '../codes/basis.ts';
import { clausesLeft, indexClauses } from './clauseIndex.ts';
import { ruleBookFor } from './ruleBook.ts';

/** Clauses that the index passes over although they have something to say, and how many it passes over at all. */
function passedOver({ facts, basis }: Survey): { wrongly: string[]; count: number } {
  const { clauses, index, rows, rowIndex } = ruleBookFor(basis, []);
  const slots = slotsFrom(facts, basis);
  const left = clausesLeft(index, slots);
  const isLeft = (set: Uint32Array, at: number) => (((set[at >>> 5] ?? 0) >>> (at & 31)) & 1) === 1;
  const out = clauses.filter((_ready, at) => !isLeft(left, at));
  const rowsLeft = clausesLeft(rowIndex, slots);
  const wrongly = [...out, ...rows.filter((_row, at) => !isLeft(rowsLeft, at))].filter(
    (ready) => ready.test(slots) !== NO,
  );
  return {
    wrongly: wrongly.map((one) => ('rule' in one ? `${one.rule.id}${one.clause.key ?? ''}` : one.row.name)),
    count: out.length,
  };
}

test('the index passes over no clause that has something to say, at the openings of all rule cases', () => {
  let count = 0;
  for (const survey of caseSurveys.filter((_one, index) => index % 4 === 0)) {
    const found = passedOver(survey);
    expect(found.wrongly, JSON.stringify(survey)).toEqual([]);
    count += found.count;
  }
  expect(count).toBeGreaterThan(10_000);
});

test('nor at openings made up of several cases and any answers', () => {
  fc.assert(
    fc.property(aSurvey, (survey) => {
      expect(passedOver(survey).wrongly).toEqual([]);
    }),
    { numRuns: 500, seed: 21 },
  );
});

test('a clause that speaks because a fact is missing stays, and falls silent when the fact rules it out', () => {
  const index = indexClauses(
    [not(isKnown('labelSeen')), all(isKnown('labelSeen'), yes('labelSeen'))],
    defaultBasis,
  );
  const left = (facts: Survey['facts']) => clausesLeft(index, slotsFrom(facts, defaultBasis))[0];
  expect(left({})).toBe(0b11);
  expect(left({ labelSeen: true })).toBe(0b10);
  expect(left({ labelSeen: false })).toBe(0);
});

test('a value that no clause names leaves only the clauses that do not ask for it', () => {
  const index = indexClauses([is('roomUse', 'office'), yes('fireAlarm')], defaultBasis);
  expect(clausesLeft(index, slotsFrom({ roomUse: 'lobby' }, defaultBasis))[0]).toBe(0b10);
});
