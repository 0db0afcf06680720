import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaAlso, parseArea, parseFeet } from './area.ts';

const area = (text: string) => {
  const read = parseArea(text);
  return read.ok ? read.ft2 : read.says;
};
const feet = (text: string) => {
  const read = parseFeet(text);
  return read.ok ? read.feet : read.says;
};

describe('floor areas as written', () => {
  test.each([
    ['1120', 1120],
    [' 1120.5 ft² ', 1120.5],
    ['1120 ft2', 1120],
    ['1120 sq ft', 1120],
    ['1120SF', 1120],
    ['.5', 0.5],
    ['0', 0],
    // ISO 80000: 1 ft = 0.3048 m exactly.
    ['104.05 m²', 1119.98],
    ['100 m2', 1076.39],
    ['100 sq m', 1076.39],
  ])('%s', (text, ft2) => expect(area(text)).toBe(ft2));
  test.each([
    ['1,120', /comma/],
    ['-4', /not an area/],
    ['', /not an area/],
    ['large', /not an area/],
    ['40 ft', /not an area/],
    ['1 acre', /not an area/],
  ])('%j is refused', (text, words) => expect(area(text)).toMatch(words));
  test.each([
    ['1120', '104.05 m²'],
    ['1120 sq ft', '104.05 m²'],
    ['104 m²', '1,119.45 ft²'],
    ['large', ''],
  ])('%s is also %j', (text, also) => expect(areaAlso(text)).toBe(also));
  test('metres come back within a hundredth of a square foot', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 50_000 }), (m2) => {
        expect(Number(area(`${m2} m²`)) * 0.09290304).toBeCloseTo(m2, 2);
      }),
    );
  });
});

describe('lengths of a way', () => {
  test.each([
    ['75', 75],
    ['75 ft', 75],
    [`40'-6"`, 40.5],
    ['30 m', 98.43],
    ['long', expect.stringContaining('not a length')],
    ['-3', expect.stringContaining('not a length')],
  ])('%s', (text, wanted) => expect(feet(text)).toEqual(wanted));
});
