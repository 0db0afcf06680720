import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N07 = defineRule({
  id: 'N-07',
  title: 'Lockdown needs a lock that hears the command',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'An offline lock learns of a lockdown only when someone walks to it.',
  clauses: [
    {
      effect: 'caution',
      when: yes('wishLockdown'),
      of: { family: ['battery', 'mechanical'] },
      says: 'Lockdown is asked for, and this lock receives it only by radio or by hand; say which on the schedule.',
    },
  ],
});
