import { expect, it } from 'vitest';
import { importRows } from '../testing/tables.ts';
import type { ChosenWords } from './words.ts';

let count = 0;
const read = (words: ChosenWords = {}) =>
  importRows(
    ['Mark', 'Fire Rating'],
    [
      ['1', 'B'],
      ['2', 'b label'],
      ['3', '-'],
      ['4', '45 MIN'],
      ['5', 'B'],
    ],
    { newId: () => `id${(count += 1)}`, words },
  );
const ratings = (words?: ChosenWords) => read(words).openings.map(({ facts }) => facts.fireRatingMin ?? null);

it('a letter and a dash are asked about, each once', () => {
  const { undecided, refused } = read();
  expect(undecided.map(({ word, minutes }) => [word, minutes])).toEqual([
    ['B', [60, 90]],
    ['b label', [60, 90]],
    ['-', [0]],
  ]);
  expect(refused).toEqual([]);
  expect(ratings()).toMatchObject([null, null, null, { is: 'known', value: 45 }, null]);
});

it('what a person chose is assumed of each door with that word, and only of those', () => {
  const chosen = { 'fire rating: B': '90', 'fire rating: -': '0' };
  const assumed = (value: number) => ({ is: 'assumed', value });
  expect(ratings(chosen)).toMatchObject([
    assumed(90),
    null,
    assumed(0),
    { is: 'known', value: 45 },
    assumed(90),
  ]);
});

it('an answer that the word cannot have is no answer', () => {
  expect(ratings({ 'fire rating: B': '20' })[0]).toBeNull();
});
