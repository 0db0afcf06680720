import { doing } from '../doing.ts';
import { cases } from '../rule.ts';
import { unlawfulLockCases } from './unlawfulLockCases.ts';

export const R165Cases = cases(
  ...doing(
    {
      a: 'warn existingArrangement',
      b: 'warn existingArrangement',
      c: 'warn existingArrangement',
      d: 'warn existingArrangement',
      e: 'warn existingArrangement',
      f: 'warn existingArrangement',
      g: 'warn existingArrangement',
      h: 'warn existingArrangement',
      i: 'warn existingArrangement',
      j: 'warn existingArrangement',
      k: 'warn existingArrangement',
      l: 'signOff must',
      m: 'warn existingArrangement',
      n: 'warn existingArrangement',
      o: 'signOff note',
      p: 'warn existingArrangement',
    },
    [...unlawfulLockCases],
  ),
);
