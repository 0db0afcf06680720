import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatInches, parseLength } from './length.ts';

const refuse = { bare: 'refuse' } as const;
const inches = (text: string, bare: 'in' | 'mm' | 'refuse' = 'refuse') => {
  const read = parseLength(text, { bare });
  return read.ok ? read.inches : read.says;
};

describe('lengths as written', () => {
  test.each([
    [`3'-0"`, 36],
    [`3' - 0"`, 36],
    [`3'0"`, 36],
    [`3'`, 36],
    [`3'-0`, 36],
    [`3'-6''`, 42],
    ['3 ft 6 in', 42],
    ['3 FT. 6 IN.', 42],
    ['3 feet 6 inches', 42],
    ['1 foot', 12],
    [`5' - 10 3/4"`, 70.75],
    [`5'-10-3/4"`, 70.75],
    [`5'-10¾"`, 70.75],
    ['5’ – 10 3/4”', 70.75],
    ['5′-10 3⁄4″', 70.75],
    [`1'-1/2"`, 12.5],
    [`3.5'`, 42],
    [`3'-0.5"`, 36.5],
    ['36"', 36],
    ['36 in', 36],
    ['36in.', 36],
    ['36 inches', 36],
    ['35.75 in', 35.75],
    ['1/2"', 0.5],
    ['.5 in', 0.5],
    ['10-3/4 in', 10.75],
    ['1 3/4', 1.75],
    ['1-3/4', 1.75],
    ['1¾', 1.75],
    ['½', 0.5],
    ['36 1/2', 36.5],
    ['13/64', 13 / 64],
    ['5/32"', 5 / 32],
    ['915 mm', 915 / 25.4],
    ['914.4 mm', 36],
    ['91.44 cm', 36],
    ['0.9144 m', 36],
    ['91.5 cm', 915 / 25.4],
    ['0.915 m', 915 / 25.4],
    ['.9144m', 36],
    ['0"', 0],
  ])('%s', (text, wanted) => {
    expect(inches(text)).toBeCloseTo(wanted, 9);
  });
  test('a bare number means what the caller says, or is refused', () => {
    expect(inches('36', 'in')).toBe(36);
    expect(inches('914.4', 'mm')).toBeCloseTo(36, 9);
    expect(inches('914')).toBe('“914” has no unit; write in or mm.');
    expect(inches('240', 'in')).toBe(240);
    expect(inches('241', 'in')).toContain('too long for inches');
    expect(inches('1 3/4', 'mm')).toBe(1.75);
  });
  test('what can be read in two ways is refused', () => {
    expect(inches('3-6')).toBe(`“3-6” may be feet and inches or a date; write it as 3'-6".`);
    expect(inches('3 - 6', 'in')).toContain('or a date');
    expect(inches('1,200 mm')).toContain('comma');
    expect(inches(`3'-14"`)).toContain('12 inches or more');
    expect(inches(`3'-12"`)).toContain('12 inches or more');
    expect(inches(`3.5'-6"`)).toContain('fraction of a foot');
  });
  test.each([
    '',
    '  ',
    'abc',
    '-36 in',
    '36 mm in',
    '1 5/4',
    '1 4/4',
    '1 3/7',
    '1/0',
    '0/4',
    '3 ft 6 mm',
    `3'-0"x`,
    '7-2-24',
    '111/2',
    '36 ft. ft',
    `'6"`,
    '1e3 mm',
    '1.2.3 in',
    'min',
  ])('“%s” is not a length', (text) => {
    expect(parseLength(text, { bare: 'in' }).ok).toBe(false);
  });
});

describe('format, then read again', () => {
  const sixteenths = fc.integer({ min: 0, max: 240 * 16 });
  test('every sixteenth comes back exactly, in both styles', () => {
    fc.assert(
      fc.property(sixteenths, fc.constantFrom('feetInches', 'decimal'), (count, style) => {
        const read = parseLength(formatInches(count / 16, style), refuse);
        expect(read).toEqual({ ok: true, inches: count / 16 });
      }),
    );
  });
  test('any length comes back within half a sixteenth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 240, noNaN: true }), (value) => {
        const read = parseLength(formatInches(value), refuse);
        expect(read.ok && Math.abs(read.inches - value) <= 1 / 32 + 1e-9).toBe(true);
      }),
    );
  });
  test('millimeters and inches agree', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 6000 }), (mm) => {
        const [a, b, c] = [
          parseLength(`${mm} mm`, refuse),
          parseLength(`${mm / 10} cm`, refuse),
          parseLength(String(mm), { bare: 'mm' }),
        ];
        expect(a.ok && b.ok && c.ok && Math.abs(a.inches - b.inches) < 1e-9 && a.inches === c.inches).toBe(
          true,
        );
      }),
    );
  });
  test('whatever is typed, the answer is a value', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom('in', 'mm', 'refuse'), (text, bare) => {
        const read = parseLength(text, { bare });
        expect(read.ok ? Number.isFinite(read.inches) && read.inches >= 0 : read.says.endsWith('.')).toBe(
          true,
        );
      }),
    );
  });
});

test.each([
  [36, `3'-0"`, '36 in'],
  [70.75, `5'-10 3/4"`, '70.75 in'],
  [0.5, `0'-1/2"`, '0.5 in'],
  [11.99, `1'-0"`, '12 in'],
  [35.97, `3'-0"`, '36 in'],
  [35.96, `2'-11 15/16"`, '35.9375 in'],
  [0, `0'-0"`, '0 in'],
  [12.125, `1'-1/8"`, '12.125 in'],
])('%f in is written %s', (value, feet, decimal) => {
  expect([formatInches(value), formatInches(value, 'decimal')]).toEqual([feet, decimal]);
});
