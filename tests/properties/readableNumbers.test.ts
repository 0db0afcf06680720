// No sentence shows more digits of a number than a person would write down.
import { describe, expect, it } from 'vitest';
import { demoProject } from '../../scripts/demo/demoProject.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import { reportOf } from '../../src/domain/words/report.ts';

const demo = demoProject();
const tooLong = /\d+[.,]\d{4,}/g;

describe('numbers in what is said of an opening', () => {
  it.each([0.3, 0.375, 0.4, 0.5, 0.625])('have few decimals at a latch projection of %s in', (inches) => {
    const found = Object.values(demo.openings).flatMap((opening) => {
      const facts = { ...opening.facts, latchProjectionIn: { is: 'known', value: inches } } as const;
      const words = JSON.stringify(reportOf(decide(demo, { ...opening, facts })));
      return (words.match(tooLong) ?? []).map((number) => `${opening.mark}: ${number}`);
    });
    expect(found).toEqual([]);
  });
});
