import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'mortiseLock/secure/free';

export const R97 = defineRule({
  id: 'R-97',
  title: 'Tenant entrance: an ordinary lock',
  family: 'rooms',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('monitoredEgress')],
  confidence: 'secondary',
  why: 'A reader outside changes nothing as long as the lever inside always opens.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: is('roomUse', 'suiteEntrance'),
      of: { release: ['free'] },
      says: 'A tenant entrance may be locked fail secure with a reader outside; the inside lever or bar is the entire means of egress, and no sensor, button or fire-alarm release is needed.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(is('roomUse', 'suiteEntrance'), yes('fireRated')),
      says: 'The entrance is in a rated wall, so it is self-closing and stays latched whatever the lock does.',
    },
  ],
  cases: cases(
    ['tenant entrance', { roomUse: 'suiteEntrance' }, 'yes', { clause: 'a', on, does: 'permit' }],
    ['storage room', { roomUse: 'storage' }, 'no', { clause: 'a', on }],
    ['room not known', {}, 'unknown', { clause: 'a', on }],
    ...onEach(
      ['magnet/safe/sensor', 'magnet/safe/none'],
      'no ordinary lock',
      { roomUse: 'suiteEntrance' },
      'no',
      'a',
    ),
    [
      'rated tenant entrance',
      { roomUse: 'suiteEntrance', fireRatingMin: 20 },
      'yes',
      { clause: 'b', does: 'caution' },
    ],
    [
      'unrated tenant entrance',
      { roomUse: 'suiteEntrance', fireRatingMin: 0, wallRatingMin: 0 },
      'no',
      { clause: 'b' },
    ],
    ['rated storage room', { roomUse: 'storage', fireRatingMin: 20 }, 'no', { clause: 'b' }],
    ['rating not known', { roomUse: 'suiteEntrance' }, 'unknown', { clause: 'b' }],
  ),
});
