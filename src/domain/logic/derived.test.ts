import { expect, test } from 'vitest';
import { caseBasis } from '../rules/rule.ts';
import { slotsFrom } from '../rules/runCase.ts';
import { type DerivedCase, derivedCases } from '../testing/derivedCases.ts';
import { slotOf } from './slots.ts';
import { derivedKeys } from './derivedKeys.ts';

test.each(derivedCases.map((one) => [...one.slice(0, 3), one] as const))('%s of %j is %s', (...row) => {
  const [key, facts, expected, patch] = row[row.length - 1] as DerivedCase;
  const value = slotsFrom(facts, caseBasis(patch))[slotOf(key)];
  expect(value === undefined ? 'unknown' : value ? 'yes' : 'no').toBe(expected);
});

test('every derived fact has a case for each answer', () => {
  for (const key of derivedKeys) {
    const answers = derivedCases.filter(([of]) => of === key).map(([, , expected]) => expected);
    expect([...new Set(answers)].toSorted(), key).toEqual(['no', 'unknown', 'yes']);
  }
});
