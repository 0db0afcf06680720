import { under, text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R31 = defineRule({
  id: 'R-31',
  title: 'No fail-safe strike on a fire-rated door',
  family: 'fire',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'secondary',
  why: 'A released keeper gives way, so nothing latches the door when fire cuts the power.',
  clauses: [
    {
      effect: 'prohibit',
      when: yes('fireRated'),
      of: { family: ['strike'], failMode: ['safe'] },
      says: 'A fail-safe strike lets go when power fails, and a fire door must stay latched.',
    },
  ],
  cases: cases(
    [
      '90 min door, fail-safe strike',
      { fireRatingMin: 90 },
      'yes',
      { on: 'strikeMortise/safe/free', does: 'prohibit' },
    ],
    ['20 min door is rated too', { fireRatingMin: 20 }, 'yes', { on: 'strikeCylindrical/safe/free' }],
    [
      'door not rated, wall not rated',
      { fireRatingMin: 0, wallRatingMin: 0 },
      'no',
      { on: 'strikeMortise/safe/free' },
    ],
    [
      'door said unrated in a rated corridor wall',
      { fireRatingMin: 0, wallRatingMin: 60, wallKind: 'corridor' },
      'yes',
      { on: 'strikeMortise/safe/free' },
    ],
    ['fail secure strike is not meant', { fireRatingMin: 90 }, 'no', { on: 'strikeMortise/secure/free' }],
    ['a fail-safe lock keeps its latch', { fireRatingMin: 90 }, 'no', { on: 'mortiseLock/safe/free' }],
    ['rating not known', {}, 'unknown', { on: 'strikeMortise/safe/free' }],
  ),
});
