import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T21Cases = cases(
  [
    'battery lock, no deadlatch',
    { leafMaterial: 'aluminiumNarrow', latch: 'pushPull' },
    'yes',
    { clause: 'b', on: 'batteryLock/asIs/free', does: 'prohibit' },
  ],
  [
    'battery trim on a deadlatch',
    { leafMaterial: 'aluminiumNarrow', latch: 'deadlatch' },
    'no',
    { clause: 'b', on: 'batteryLock/asIs/free' },
  ],
  [
    'battery trim on a hookbolt',
    { leafMaterial: 'aluminiumNarrow', latch: 'hookbolt' },
    'no',
    { clause: 'b', on: 'batteryLock/asIs/free' },
  ],
  [
    'battery lock in wood',
    { leafMaterial: 'woodSolidCore', latch: 'bored' },
    'no',
    { clause: 'b', on: 'batteryLock/asIs/free' },
  ],
  [
    'latch not known',
    { leafMaterial: 'aluminiumNarrow' },
    'unknown',
    { clause: 'b', on: 'batteryLock/asIs/free' },
  ],
  [
    'a strike is another matter',
    { leafMaterial: 'aluminiumNarrow', latch: 'pushPull' },
    'no',
    { clause: 'b', on: 'strikeRim/secure/free' },
  ],
  ...onEach(
    ['mortiseLock/secure/free', 'cylindricalLock/safe/free'],
    'narrow stile',
    { leafMaterial: 'aluminiumNarrow' },
    'yes',
    { clause: 'a', does: 'prohibit' },
  ),
  ['wide stile', { leafMaterial: 'aluminiumWide' }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  ['leaf not surveyed', {}, 'unknown', { clause: 'a', on: 'mortiseLock/secure/free' }],
  [
    'a narrow-stile latch is made for it',
    { leafMaterial: 'aluminiumNarrow' },
    'no',
    { clause: 'a', on: 'narrowStileLatch/secure/free' },
  ],
);
