import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { notKeyInside } from './panicCases.ts';

export const found = ['deadboltPlusLatch', 'doubleCylinder', 'padlock', 'slideBolt', 'barricade'] as const;
export const bolts = ['boredPlusDeadbolt', 'mortiseDeadbolt', 'deadboltOnly', 'hookbolt'] as const;

export const R73 = defineRule({
  id: 'R-73',
  title: 'Nothing else locks a door that needs panic hardware',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('panicHardwareNfpa')],
  confidence: 'secondary',
  why: 'A bolt or chain beside the bar holds the door against the crowd the bar is there for.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'existingArrangement',
      severity: 'warn',
      when: all(yes('panicWithLock'), is('existingArrangement', ...found)),
      says: 'This door needs panic hardware, and today something else also locks it; have it removed at once.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(yes('panicWithLock'), any(is('existingArrangement', ...found), is('latch', ...bolts))),
      of: notKeyInside,
      says: 'Remove every deadbolt, surface bolt, chain and padlock; only panic hardware may hold this door.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(yes('panicWithLock'), is('latch', ...bolts)),
      of: { family: ['strike', 'magnet'] },
      says: 'This device leaves the deadbolt on a door that needs panic hardware; the bolt must go first.',
    },
  ],
});
