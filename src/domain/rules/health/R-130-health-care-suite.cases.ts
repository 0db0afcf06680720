import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { without } from '../without.ts';

const entrance = {
  occupancyGroup: 'I-2',
  suiteDoor: 'perimeter',
  fireRatingMin: 0,
  wallRatingMin: 0,
} as const;

const inner = { ...entrance, suiteDoor: 'inside' } as const;

const none = { ...entrance, suiteDoor: 'none' } as const;

const button = 'magnet/safe/buttonOnly';

export const R130Cases = cases(
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
  ['inside the suite', inner, 'yes', { clause: 'a', on: button, does: 'prohibit' }],
  ['no suite', none, 'no', { clause: 'a', on: button }],
  ['not asked', {}, 'unknown', { clause: 'a', on: button }],
  ...onEach(
    ['magnet/safe/controlled', 'mortiseLock/secure/clinical', 'mortiseLock/secure/free'],
    'suite entrance',
    entrance,
    'no',
    'a',
  ),
  [
    'controlled suite entrance',
    entrance,
    'yes',
    { clause: 'b', on: 'magnet/safe/controlled', does: 'signOff must' },
  ],
  ['controlled inner door', inner, 'yes', { clause: 'b', on: 'magnet/safe/controlled' }],
  ['free lever', entrance, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
  ['no suite', none, 'no', { clause: 'b', on: 'magnet/safe/controlled' }],
  ['not asked', {}, 'unknown', { clause: 'b', on: 'magnet/safe/controlled' }],
  ['inside the suite', inner, 'yes', { clause: 'c', does: 'permit' }],
  ['inside the suite, rated', { ...inner, fireRatingMin: 45 }, 'no', { clause: 'c' }],
  ['suite entrance', entrance, 'no', { clause: 'c' }],
  ['rating not known', { suiteDoor: 'inside' }, 'unknown', { clause: 'c' }],
  ['suite entrance', entrance, 'yes', { clause: 'd', does: 'caution' }],
  ['inside the suite', inner, 'no', { clause: 'd' }],
  ['not asked', {}, 'unknown', { clause: 'd' }],
  ['recorded in ambulatory care', { ...entrance, occupancyGroup: 'B' }, 'yes', { clause: 'a', on: button }],
  ['hospital, not asked', without(entrance, 'suiteDoor'), 'unknown', { clause: 'a', on: button }],
  [
    'office, not asked',
    { ...without(entrance, 'suiteDoor'), occupancyGroup: 'B' },
    'no',
    { clause: 'a', on: button },
  ],
  ['group not known', without(entrance, 'occupancyGroup'), 'yes', { clause: 'a', on: button }],
  [
    'recorded in ambulatory care',
    { ...entrance, occupancyGroup: 'B' },
    'yes',
    { clause: 'b', on: 'magnet/safe/controlled' },
  ],
  [
    'hospital, not asked',
    without(entrance, 'suiteDoor'),
    'unknown',
    { clause: 'b', on: 'magnet/safe/controlled' },
  ],
  [
    'office, not asked',
    { ...without(entrance, 'suiteDoor'), occupancyGroup: 'B' },
    'no',
    { clause: 'b', on: 'magnet/safe/controlled' },
  ],
  [
    'group not known',
    without(entrance, 'occupancyGroup'),
    'yes',
    { clause: 'b', on: 'magnet/safe/controlled' },
  ],
  ['recorded in ambulatory care', { ...inner, occupancyGroup: 'B' }, 'yes', { clause: 'c' }],
  ['hospital, not asked', without(inner, 'suiteDoor'), 'unknown', { clause: 'c' }],
  ['office, not asked', { ...without(inner, 'suiteDoor'), occupancyGroup: 'B' }, 'no', { clause: 'c' }],
  ['group not known', without(inner, 'occupancyGroup'), 'yes', { clause: 'c' }],
  ['recorded in ambulatory care', { ...entrance, occupancyGroup: 'B' }, 'yes', { clause: 'd' }],
  ['hospital, not asked', without(entrance, 'suiteDoor'), 'unknown', { clause: 'd' }],
  ['office, not asked', { ...without(entrance, 'suiteDoor'), occupancyGroup: 'B' }, 'no', { clause: 'd' }],
  ['group not known', without(entrance, 'occupancyGroup'), 'yes', { clause: 'd' }],
  [
    'inside, recorded in ambulatory care',
    { ...inner, occupancyGroup: 'B' },
    'yes',
    { clause: 'a', on: button },
  ],
  [
    'inside, recorded in ambulatory care',
    { ...inner, occupancyGroup: 'B' },
    'yes',
    { clause: 'b', on: 'magnet/safe/controlled' },
  ],
  ['inside, recorded in ambulatory care', { ...inner, occupancyGroup: 'B' }, 'no', { clause: 'd' }],
  ['no suite in ambulatory care', { ...none, occupancyGroup: 'B' }, 'no', { clause: 'a', on: button }],
);
