import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T01 = defineRule({
  id: 'T-01',
  title: 'A strike never unlocks a thrown deadbolt',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'The keeper of a strike lets a latch pass; a thrown bolt stays where it is.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('latch', 'deadboltOnly', 'hookbolt'),
      of: { family: ['strike'] },
      says: 'There is only a bolt here, and a strike frees nothing but a latch.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: is('latch', 'mortiseDeadbolt'),
      of: { device: ['strikeMortise'] },
      says: 'Use a strike made for latch and bolt, or take the deadbolt out of use: a plain strike cannot free a thrown bolt.',
    },
  ],
  cases: cases(
    ...onEach(
      ['strikeMortise/secure/free', 'strikeCylindrical/safe/free'],
      'deadbolt only',
      { latch: 'deadboltOnly' },
      'yes',
      'a',
    ),
    [
      'hookbolt',
      { latch: 'hookbolt' },
      'yes',
      { clause: 'a', on: 'strikeCylindrical/secure/free', does: 'prohibit' },
    ],
    ['a latch', { latch: 'mortise' }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
    ['not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
    [
      'an electrified lock draws its own bolt',
      { latch: 'deadboltOnly' },
      'no',
      { clause: 'a', on: 'mortiseLock/secure/free' },
    ],
    [
      'mortise lock with deadbolt',
      { latch: 'mortiseDeadbolt' },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/free', does: 'modify locksmith' },
    ],
    ['mortise latch alone', { latch: 'mortise' }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
    ['mortise lock, deadbolt not surveyed', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
    [
      'an electrified mortise lock replaces both',
      { latch: 'mortiseDeadbolt' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
  ),
});
