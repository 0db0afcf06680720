import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T30 = defineRule({
  id: 'T-30',
  title: 'Request to exit left off the lever',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A person who leaves by the lever opens the contact, and without a signal that is a forced door.',
  clauses: [
    {
      effect: 'require',
      items: ['requestToExit'],
      when: yes('wantsReader'),
      of: { wired: true, release: ['free', 'stairReentry'] },
      says: 'A switch in the lever or bar, or a motion detector where no wire reaches the leaf, tells the controller that somebody leaves; without it every exit raises a forced-open alarm.',
    },
  ],
});
