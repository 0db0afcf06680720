import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

export const R49Cases = cases(
  ['rated door', rated, 'yes', { does: ['fireLabelledHardware'] }],
  [
    'door said unrated in a rated corridor wall',
    { fireRatingMin: 0, wallRatingMin: 60, wallKind: 'corridor' },
    'yes',
  ],
  ['unrated door in an unrated wall', unrated, 'no'],
  ['rating not known', {}, 'unknown'],
);
