import { text } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T21 = defineRule({
  id: 'T-21',
  title: 'A narrow stile takes no bored or mortise lock',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A stile of 2 to 2-1/8 in has no room for a 2-3/4 in backset or a standard mortise case.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('leafMaterial', 'aluminiumNarrow'),
      of: { device: ['mortiseLock', 'cylindricalLock'] },
      says: 'The narrow stile has no room for a bored or a standard mortise lock: use a lock made for narrow stiles.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(is('leafMaterial', 'aluminiumNarrow'), not(is('latch', 'deadlatch', 'hookbolt'))),
      of: { device: ['batteryLock'] },
      says: 'Battery trims for narrow stiles work on a deadlatch, and this stile has none.',
    },
  ],
  cases: cases(
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
  ),
});
