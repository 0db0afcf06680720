import { text } from '../../codes/sections.ts';
import { all, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N03 = defineRule({
  id: 'N-03',
  title: 'No electrified lock without a use for it',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A lock that nothing controls is cost, heat and one more part to fail.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(
        is('readerSides', 'none'),
        no('wishScheduledUnlock'),
        no('wishLockdown'),
        no('wishDelayedEgress'),
        no('wishControlledEgress'),
        no('wishInterlock'),
        not(yes('stairSideToLock')),
        is('operator', 'none'),
      ),
      of: { wired: true, not: { family: ['detention'] } },
      says: 'No reader, schedule, lockdown, operator or special release is asked for, so there is nothing for an electrified lock to do.',
    },
  ],
});
