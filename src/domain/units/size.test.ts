import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatInches } from './length.ts';
import { parseSize } from './size.ts';

const tidy = (value: number) => Math.round(value * 1e6) / 1e6;
const read = (text: string, bare: 'in' | 'mm' | 'refuse' = 'refuse') => {
  const size = parseSize(text, { bare });
  return size.ok
    ? [
        tidy(size.widthIn),
        tidy(size.heightIn),
        size.pair,
        ...(size.thicknessIn === undefined ? [] : [tidy(size.thicknessIn)]),
      ]
    : size.says;
};

test.each([
  [`3'-0" x 7'-0"`, [36, 84, false]],
  [`3'-0" X 7'-0" X 1 3/4"`, [36, 84, false, 1.75]],
  ['3-0 x 7-0', [36, 84, false]],
  [`3' - 6" × 7'-2"`, [42, 86, false]],
  ['3070', [36, 84, false]],
  ['2868', [32, 80, false]],
  ['PR 6070', [72, 84, true]],
  ['pr. 6070', [72, 84, true]],
  ['Pair 5068', [60, 80, true]],
  [`PR 6'-0" x 7'-0"`, [72, 84, true]],
  ['36 in x 84 in', [36, 84, false]],
  ['36" by 84"', [36, 84, false]],
  ['914.4 mm x 2133.6 mm', [36, 84, false]],
  [`PR 4'-0" x 7'-0"`, [48, 84, true]],
])('%s', (text, wanted) => {
  expect(read(text)).toEqual(wanted);
});
test('a pair says that the whole width is meant', () => {
  const size = parseSize('PR 6070', { bare: 'refuse' });
  expect(size.ok && size.says).toBe('A pair: the width given is that of both leaves together.');
  expect(parseSize('3070', { bare: 'refuse' })).not.toHaveProperty('says');
});
test('bare figures of meters or inches', () => {
  expect(read('915 x 2135')).toEqual([expect.closeTo(36.024, 3), expect.closeTo(84.055, 3), false]);
  expect(read('915 x 2135', 'mm')).toEqual([expect.closeTo(36.024, 3), expect.closeTo(84.055, 3), false]);
  expect(read('36 x 84', 'in')).toEqual([36, 84, false]);
  expect(read('36 x 84')).toContain('no unit');
  expect(read('36 x 84', 'mm')).toContain('too small for a door');
  expect(read('915 x 2135', 'in')).toContain('too long for inches');
  expect(read('299 x 2135')).toContain('no unit');
  expect(read('300 x 2135')).toEqual([expect.closeTo(11.811, 3), expect.closeTo(84.055, 3), false]);
});
test.each([
  '',
  '3070 x',
  'x',
  '0970',
  '3050',
  '36 in',
  'PR 3070',
  `PR 3'-0" x 7'-0"`,
  '1 x 2 x 3 x 4',
  `3'-14" x 7'-0"`,
  '30700',
  '3-0',
  `3'-0" x door`,
  `3'-0" x 7'-0" x thick`,
  `0'-6" x 7'-0"`,
  `3'-0" x 0'-8"`,
])('“%s” is not a size', (text) => {
  expect(parseSize(text, { bare: 'in' }).ok).toBe(false);
});
test('a size written out comes back', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 12 * 16, max: 240 * 16 }),
      fc.integer({ min: 12 * 16, max: 240 * 16 }),
      (w, h) => {
        expect(read(`${formatInches(w / 16)} x ${formatInches(h / 16)}`)).toEqual([w / 16, h / 16, false]);
      },
    ),
  );
});
