import { under } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const entrance = { suiteDoor: 'perimeter', fireRatingMin: 0, wallRatingMin: 0 } as const;
const inner = { ...entrance, suiteDoor: 'inside' } as const;
const none = { ...entrance, suiteDoor: 'none' } as const;
const suite = is('suiteDoor', 'perimeter', 'inside');
const button = 'magnet/safe/buttonOnly';

export const R130 = defineRule({
  id: 'R-130',
  title: 'Health-care suite: entrance and inner doors',
  family: 'health',
  book: 'ibc',
  cites: [under('hospitalCorridorDoors'), under('careSuites'), under('careSuitesNfpa')],
  confidence: 'secondary',
  why: 'A suite counts as one room: its entrance is a corridor door, its inner doors are not.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: suite,
      of: { release: ['keyInside', 'credentialOut', 'buttonOnly', 'alarmOnly', 'none', 'attended'] },
      says: 'People leave a suite by this door; only controlled egress or a clinical lock may hold them, and this is neither.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: suite,
      of: { not: { release: ['free'] } },
      says: 'A reviewer signs for any lock that holds people in the suite.',
    },
    {
      key: 'c',
      effect: 'permit',
      when: all(is('suiteDoor', 'inside'), no('fireRated')),
      says: 'Inside a suite the corridor rule asks no latch of this door.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: is('suiteDoor', 'perimeter'),
      says: 'This is the suite’s corridor door: it latches positively like any patient corridor door.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'mechanicalLock/none/keyInside',
        'mortiseLock/secure/credentialOut',
        button,
        'magnet/safe/alarmOnly',
        'strikeMortise/secure/none',
        'detentionLock/none/attended',
      ],
      'suite entrance',
      entrance,
      'yes',
      'a',
    ),
    ['inside the suite', inner, 'yes', { clause: 'a', on: button }],
    ['no suite', none, 'no', { clause: 'a', on: button }],
    ['not asked', {}, 'unknown', { clause: 'a', on: button }],
    ...onEach(
      ['magnet/safe/controlled', 'mortiseLock/secure/clinical', 'mortiseLock/secure/free'],
      'suite entrance',
      entrance,
      'no',
      'a',
    ),
    ['controlled suite entrance', entrance, 'yes', { clause: 'b', on: 'magnet/safe/controlled' }],
    ['controlled inner door', inner, 'yes', { clause: 'b', on: 'magnet/safe/controlled' }],
    ['free lever', entrance, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
    ['no suite', none, 'no', { clause: 'b', on: 'magnet/safe/controlled' }],
    ['not asked', {}, 'unknown', { clause: 'b', on: 'magnet/safe/controlled' }],
    ['inside the suite', inner, 'yes', { clause: 'c' }],
    ['inside the suite, rated', { ...inner, fireRatingMin: 45 }, 'no', { clause: 'c' }],
    ['suite entrance', entrance, 'no', { clause: 'c' }],
    ['rating not known', { suiteDoor: 'inside' }, 'unknown', { clause: 'c' }],
    ['suite entrance', entrance, 'yes', { clause: 'd' }],
    ['inside the suite', inner, 'no', { clause: 'd' }],
    ['not asked', {}, 'unknown', { clause: 'd' }],
  ),
});
