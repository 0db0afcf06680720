import { expect, test } from 'vitest';
import { known } from '../testing/facts.ts';
import { door, gridOf, house } from '../testing/grids.ts';
import { noFilters } from './filters.ts';
import { shownInWords, shownOf } from './shown.ts';

test('search, floor and values of columns narrow together, and each reason is said', () => {
  const project = house(
    door('101', { facts: { latch: known('mortise') } }),
    door('102', { facts: { latch: known('rimExit') } }),
    door('S1', { facts: { latch: known('mortise') } }),
  );
  const { rows, ground } = gridOf(project);
  const marks = (text: string, only: Readonly<Record<string, readonly string[]>>) => {
    const { listed, left } = shownOf(rows, { ...noFilters, text }, only, ground);
    return [listed, left].map((part) => part.map(({ opening }) => opening.mark));
  };
  expect(marks('', {})).toEqual([
    ['101', '102', 'S1'],
    ['101', '102', 'S1'],
  ]);
  expect(marks('10', { latch: ['Mortise latch'] })).toEqual([['101', '102'], ['101']]);
  expect(marks('10', { latch: ['No latch'] })[1]).toEqual([]);
  const says = (text: string, only: Readonly<Record<string, readonly string[]>>, left: number) =>
    shownInWords({ ...noFilters, text, show: 'unsettled' }, only, project, left, 3);
  expect(says(' 10 ', { latch: ['Mortise latch'] }, 1)).toBe(
    'The schedule shows 1 of 3 openings (searched for “10”; not settled; only some values are shown of Latch), so that one is printed.',
  );
  expect(says('', {}, 3)).toBe('The schedule shows all 3 openings, so all are printed.');
});
