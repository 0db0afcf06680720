import { expect, test } from 'vitest';
import { findWords } from './findWords.ts';

const found = (typed: string) => {
  const { groups, questions } = findWords(typed);
  return [
    ...groups.flatMap((group) => group.terms.map(({ term }) => term)),
    ...questions.map(({ label }) => label),
  ];
};

test.each([
  ['crash bar', 'Exit device'],
  ['maglock', 'Electromagnetic lock'],
  ['double door', 'Pair'],
  ['roll-up', 'Door type'],
  ['storefront', 'Leaf material'],
  ['all-glass entrance', 'Leaf material'],
  ['restroom', 'Room behind the door'],
  ['janitor', 'Room behind the door'],
  ['MDF', 'Room behind the door'],
  ['electric hinge', 'Power transfer'],
])('what the trade calls %s is found under %s', (typed, wanted) => {
  expect(found(typed)).toContain(wanted);
});

test('what nobody calls anything is not found, and an empty search shows all', () => {
  expect(findWords('zebra crossing')).toEqual({ groups: [], questions: [], nothing: true });
  expect(found(' ').length).toBeGreaterThan(200);
});
