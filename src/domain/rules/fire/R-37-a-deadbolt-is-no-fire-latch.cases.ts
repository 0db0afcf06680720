import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

export const R37Cases = cases(
  ['rated, deadbolt only', { ...rated, latch: 'deadboltOnly' }, 'yes', { clause: 'a', does: 'warn latch' }],
  ['rated, hookbolt', { ...rated, latch: 'hookbolt' }, 'yes', { clause: 'a' }],
  [
    'rated dwelling entrance, latch and deadbolt',
    { ...rated, latch: 'boredPlusDeadbolt', roomUse: 'dwellingEntrance' },
    'no',
    { clause: 'a' },
  ],
  ['rated, mortise lock with deadbolt', { ...rated, latch: 'mortiseDeadbolt' }, 'no', { clause: 'a' }],
  ['unrated, deadbolt only', { ...unrated, latch: 'deadboltOnly' }, 'no', { clause: 'a' }],
  ['latch not surveyed', rated, 'unknown', { clause: 'a' }],
  [
    'rated, deadbolt only',
    { ...rated, latch: 'deadboltOnly' },
    'yes',
    { clause: 'b', does: ['latchingHardware'] },
  ],
  ['rated, hookbolt', { ...rated, latch: 'hookbolt' }, 'yes', { clause: 'b' }],
  ['rated, bored latch', { ...rated, latch: 'bored' }, 'no', { clause: 'b' }],
  ['unrated, deadbolt only', { ...unrated, latch: 'deadboltOnly' }, 'no', { clause: 'b' }],
  ['rating not known', { latch: 'deadboltOnly' }, 'unknown', { clause: 'b' }],
);
