import { text } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
