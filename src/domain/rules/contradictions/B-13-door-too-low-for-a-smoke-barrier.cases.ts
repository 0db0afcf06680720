import { cases } from '../rule.ts';

export const B13Cases = cases(
  [
    'single door of 19 min',
    { wallKind: 'smokeBarrier', wallRatingMin: 1, fireRatingMin: 19, doorType: 'single' },
    'yes',
    { does: 'refuse fireRatingMin' },
  ],
  [
    'single door of 20 min',
    { wallKind: 'smokeBarrier', wallRatingMin: 60, fireRatingMin: 20, doorType: 'single' },
    'no',
  ],
  [
    'opposite-swinging pair',
    { wallKind: 'smokeBarrier', wallRatingMin: 60, fireRatingMin: 0, doorType: 'doubleEgressPair' },
    'no',
  ],
  [
    'barrier without a rating',
    { wallKind: 'smokeBarrier', wallRatingMin: 0, fireRatingMin: 0, doorType: 'single' },
    'no',
  ],
  [
    'smoke partition',
    { wallKind: 'smokePartition', wallRatingMin: 60, fireRatingMin: 0, doorType: 'single' },
    'no',
  ],
  ['door not known', { wallKind: 'smokeBarrier', wallRatingMin: 60, doorType: 'single' }, 'unknown'],
);
