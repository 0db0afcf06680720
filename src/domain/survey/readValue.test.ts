import { expect, test } from 'vitest';
import { readCell } from './readValue.ts';

test.each([
  ['1,120', 1120],
  ['1,120 sq ft', 1120],
  ['112.5', 112.5],
  ['161.459', 161.459],
  ['0.125', 0.125],
])('an area of %s is read', (text, value) => {
  expect(readCell('roomAreaFt2', text)).toEqual({ ok: true, fact: { is: 'known', value } });
});

test.each(['1.120', '1.125 ft²', '112.500', '1,12', '11,1200'])('an area of %s is asked about', (text) => {
  expect(readCell('roomAreaFt2', text)).toMatchObject({
    ok: false,
    says: expect.stringContaining('Room area'),
  });
});
