import { cases } from '../rule.ts';

const door = { egressRole: 'horizontalExit' } as const;

export const R67Cases = cases(
  ['horizontal exit', door, 'yes', { clause: 'a', does: 'signOff must' }],
  ['corridor door', { egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
  ['role not known', {}, 'unknown', { clause: 'a' }],
  [
    'both ways, electrified lock',
    { ...door, exitDirection: 'both' },
    'yes',
    { clause: 'b', on: 'exitTrim/secure/free', does: 'prohibit' },
  ],
  [
    'both ways, key inside',
    { ...door, exitDirection: 'both' },
    'yes',
    { clause: 'b', on: 'mechanicalLock/none/keyInside' },
  ],
  [
    'both ways, passage latch',
    { ...door, exitDirection: 'both' },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/free' },
  ],
  [
    'both ways, detention goes to its own rules',
    { ...door, exitDirection: 'both' },
    'no',
    { clause: 'b', on: 'detentionLock/none/attended' },
  ],
  [
    'one way only',
    { ...door, exitDirection: 'towardSecure' },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
  [
    'office door used both ways',
    { egressRole: 'exitAccess', exitDirection: 'both' },
    'no',
    { clause: 'b', on: 'exitTrim/secure/free' },
  ],
  ['direction not known', door, 'unknown', { clause: 'b', on: 'exitTrim/secure/free' }],
  ['60 min', { ...door, fireRatingMin: 60 }, 'yes', { clause: 'c', does: 'warn fireRatingMin' }],
  ['89 min', { ...door, fireRatingMin: 89 }, 'yes', { clause: 'c' }],
  ['90 min', { ...door, fireRatingMin: 90 }, 'no', { clause: 'c' }],
  ['corridor door of 20 min', { egressRole: 'exitAccess', fireRatingMin: 20 }, 'no', { clause: 'c' }],
  ['rating not known', door, 'unknown', { clause: 'c' }],
  [
    'swings against those who flee',
    { ...door, doorType: 'single', swingsWithEgress: false },
    'yes',
    { clause: 'd', does: 'caution' },
  ],
  ['swings with them', { ...door, doorType: 'single', swingsWithEgress: true }, 'no', { clause: 'd' }],
  [
    'pair of opposite leaves',
    { ...door, doorType: 'doubleEgressPair', swingsWithEgress: false },
    'no',
    { clause: 'd' },
  ],
  [
    'corridor door',
    { egressRole: 'exitAccess', doorType: 'single', swingsWithEgress: false },
    'no',
    { clause: 'd' },
  ],
  ['swing not surveyed', { ...door, doorType: 'single' }, 'unknown', { clause: 'd' }],
  [
    'single leaf, both ways',
    { ...door, doorType: 'single', exitDirection: 'both' },
    'yes',
    { clause: 'e', does: 'signOff must' },
  ],
  [
    'pair that swings one way, both ways',
    { ...door, doorType: 'pair', exitDirection: 'both' },
    'yes',
    { clause: 'e' },
  ],
  [
    'double-egress pair, both ways',
    { ...door, doorType: 'doubleEgressPair', exitDirection: 'both' },
    'no',
    { clause: 'e' },
  ],
  [
    'sliding door, both ways',
    { ...door, doorType: 'slidingAutomatic', exitDirection: 'both' },
    'no',
    { clause: 'e' },
  ],
  [
    'single leaf, one way',
    { ...door, doorType: 'single', exitDirection: 'towardSecure' },
    'no',
    { clause: 'e' },
  ],
  [
    'corridor door, both ways',
    { egressRole: 'exitAccess', doorType: 'single', exitDirection: 'both' },
    'no',
    { clause: 'e' },
  ],
  ['ways not surveyed', { egressRole: 'horizontalExit', doorType: 'single' }, 'unknown', { clause: 'e' }],
);
