import { describe, expect, it } from 'vitest';
import { readFireRating } from './fireRating.ts';

const minutes = (text: string) => {
  const read = readFireRating(text);
  return read.ok ? read.minutes : 'refused';
};

describe('fire ratings as schedules write them', () => {
  it.each([
    ['90', 90],
    ['90 MIN', 90],
    ['45 min.', 45],
    ['60M', 60],
    ['1-1/2 HR', 90],
    ['1 1/2 hours', 90],
    ['3/4 HR', 45],
    ['3 HR', 180],
    ['1.5 HR', 90],
    ['1/3 HR', 20],
    ['FD30', 30],
    ['NR', 0],
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

  it.each(['60 mins', '60MINS', '60 minutes', '60 min.', '60 MIN LABEL'])(
    '%s says nothing of smoke',
    (text) => {
      expect(readFireRating(text)).toEqual({ ok: true, minutes: 60, smoke: false });
    },
  );

  it.each(['', '-', '–', 'N/A', 'n/a', 'TBD'])('%s says nothing, never "not rated"', (text) => {
    expect(minutes(text)).toBeNull();
  });

  it.each(['B', 'A', 'C LABEL', '1', '1.5', 'yes', '-45'])('%s is refused', (text) => {
    expect(minutes(text)).toBe('refused');
  });
});
