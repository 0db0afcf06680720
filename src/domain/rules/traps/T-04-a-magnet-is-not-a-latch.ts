import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T04 = defineRule({
  id: 'T-04',
  title: 'A magnet is not a latch',
  family: 'traps',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'secondary',
  why: 'A fire door must be held by a latch, and a magnet lets go when power is cut.',
  clauses: [
    {
      effect: 'require',
      items: ['passiveLatch'],
      when: yes('fireRated'),
      of: { device: ['magnet', 'shearMagnet', 'delayedMagnet'] },
      says: 'On a fire door the magnet is an extra: listed latching hardware stays on the leaf and does the latching.',
    },
  ],
  cases: cases(
    ...onEach(
      ['magnet/safe/sensor', 'shearMagnet/safe/sensor', 'delayedMagnet/safe/delayed'],
      'rated door',
      { fireRatingMin: 45 },
      'yes',
    ),
    ['not rated', { fireRatingMin: 0, wallRatingMin: 0 }, 'no', { on: 'magnet/safe/sensor' }],
    ['rating not known', {}, 'unknown', { on: 'magnet/safe/sensor' }],
    ['a lock latches by itself', { fireRatingMin: 45 }, 'no', { on: 'mortiseLock/safe/free' }],
  ),
});
