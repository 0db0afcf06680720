import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
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
      effect: 'prohibit',
      when: is('leafMaterial', 'aluminiumNarrow'),
      of: { device: ['mortiseLock', 'cylindricalLock'] },
      says: 'The narrow stile has no room for a bored or a standard mortise lock: use a lock made for narrow stiles.',
    },
  ],
  cases: cases(
    ...onEach(
      ['mortiseLock/secure/free', 'cylindricalLock/safe/free'],
      'narrow stile',
      { leafMaterial: 'aluminiumNarrow' },
      'yes',
    ),
    ['wide stile', { leafMaterial: 'aluminiumWide' }, 'no', { on: 'mortiseLock/secure/free' }],
    ['leaf not surveyed', {}, 'unknown', { on: 'mortiseLock/secure/free' }],
    [
      'a narrow-stile latch is made for it',
      { leafMaterial: 'aluminiumNarrow' },
      'no',
      { on: 'narrowStileLatch/secure/free' },
    ],
  ),
});
