import { describe, expect, it } from 'vitest';
import { readFireRating } from './fireRating.ts';

const minutes = (text: string) => {
  const read = readFireRating(text);
  return read.ok ? read.minutes : 'refused';
};

describe('fire ratings as schedules write them', () => {
  it.each([
    ['90', 90],
    ['90  MIN', 90],
    ['45 MINUTE', 45],
    ['45 min.', 45],
    ['60M', 60],
    ['1-1/2 HR', 90],
    ['1 1/2 hours', 90],
    ['3/4 HR', 45],
    ['3 HR', 180],
    ['3HR', 180],
    ['10 HR', 600],
    ['1-1/2HR', 90],
    ['1.5 HR', 90],
    ['1.25HR', 75],
    ['10.5 HR', 630],
    ['1/3 HR', 20],
    ['FD30', 30],
    ['NR', 0],
    ['NONRATED', 0],
    ['not rated', 0],
  ])('%s', (text, expected) => {
    expect(minutes(text)).toBe(expected);
  });

  it('reads the letter behind a figure as smoke', () => {
    expect(readFireRating('20S')).toEqual({ ok: true, minutes: 20, smoke: true });
    expect(readFireRating('FD30S')).toEqual({ ok: true, minutes: 30, smoke: true });
  });

  it.each(['20 MIN S', '20-S', 'S-20', 'S20'])('%s is smoke as well', (text) => {
    expect(readFireRating(text)).toEqual({ ok: true, minutes: 20, smoke: true });
  });

  it.each(['FD60', '1.0 HR', '60 mins', '60MINS', '60 minutes', '60 min.', '60 MIN LABEL'])(
    '%s says nothing of smoke',
    (text) => {
      expect(readFireRating(text)).toEqual({ ok: true, minutes: 60, smoke: false });
    },
  );

  it.each(['', '-', '–', 'N/A', 'n/a', 'TBD'])('%s says nothing, never "not rated"', (text) => {
    expect(minutes(text)).toBeNull();
  });

  it.each(['B', 'A', 'C LABEL', '"D"'])('%s is a class', (text) => {
    expect(readFireRating(text)).toMatchObject({ ok: false, says: expect.stringContaining('is a class') });
  });
  it.each([
    '1',
    '1.5',
    ' yes ',
    '-45',
    'NR 90',
    'TYPE B',
    'B LABELS',
    'XFD30',
    'FD30X',
    'HR',
    '1 HRX',
    'X1.5 HR',
    '1.5 HRX',
    'X20S',
    '20SX',
  ])('%s cannot be read', (text) => {
    const says = `“${text.trim()}” is not a fire rating that can be read; write minutes, such as 45 min.`;
    expect(readFireRating(text)).toEqual({ ok: false, says });
  });
});
