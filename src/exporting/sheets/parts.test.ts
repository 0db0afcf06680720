import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cutLines, cutLists, pagesOf, partInWords, partsOf } from './parts.ts';
import { sheetIds } from './sheetKinds.ts';

const someSheets = fc
  .record(Object.fromEntries(sheetIds.map((id) => [id, fc.integer({ min: 0, max: 1500 })])))
  .map((counts) => sheetIds.map((id) => ({ id, items: counts[id] ?? 0 })));

test('every item goes to the printer once, in the order in which it is bound, and no part is too large', () => {
  fc.assert(
    fc.property(someSheets, (sheets) => {
      const parts = partsOf(sheets);
      const printed = parts.flat();
      expect(printed.map(({ id }) => sheetIds.indexOf(id))).toEqual(
        printed.map(({ id }) => sheetIds.indexOf(id)).toSorted((a, b) => a - b),
      );
      for (const { id, items } of sheets) {
        const pieces = printed.filter((piece) => piece.id === id);
        const ends = pieces.flatMap(({ from, to }) => [from, to]);
        expect(ends).toEqual(ends.toSorted((a, b) => a - b));
        expect(pieces.reduce((sum, { from, to }) => sum + to - from, 0)).toBe(items);
        expect(pieces[0]?.from ?? 0).toBe(0);
      }
      // Pages are divided between whole items: one of each sheet may be too many. A single print may be larger.
      const largest = Math.max(0, ...parts.map(pagesOf));
      expect(largest).toBeLessThanOrEqual(parts.length > 1 ? 45 : 150);
      expect(parts.every((part) => part.length > 0)).toBe(true);
    }),
    { numRuns: 25 },
  );
});

test('a building of a hundred openings is one print, a thousand opening sheets are many', () => {
  const few = [
    { id: 'cover', items: 1 },
    { id: 'schedule', items: 108 },
    { id: 'sets', items: 56 },
  ] as const;
  expect(partsOf(few)).toHaveLength(1);
  const parts = partsOf([...few, { id: 'openings', items: 1000 }]);
  expect(parts.length).toBeGreaterThan(20);
  expect(partInWords(parts.at(-1) ?? [])).toBe('Opening sheets 968 to 1000 of 1000');
});

test('lists are cut where they follow one another, and a head stays with its lines', () => {
  const lists = [['a', 'b'], ['c'], ['d', 'e']] as const;
  expect(cutLists(lists, { from: 1, to: 4 })).toEqual([['b'], ['c'], ['d']]);
  const groups = lists.map((lines, at) => ({ head: at, lines }));
  expect(cutLines(groups, { from: 2, to: 4 })).toEqual([
    { head: 1, lines: ['c'] },
    { head: 2, lines: ['d'] },
  ]);
});
