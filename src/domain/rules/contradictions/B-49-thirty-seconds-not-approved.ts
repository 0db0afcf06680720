import { text, under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B49 = defineRule({
  id: 'B-49',
  title: 'Thirty seconds wanted and refused',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('delayedEgress')],
  confidence: 'project',
  why: 'More than fifteen seconds needs the authority’s approval in writing.',
  clauses: [
    {
      effect: 'finding',
      field: 'delay30sApproved',
      severity: 'warn',
      when: all(yes('wishDelayedEgress'), yes('wishDelay30s'), no('delay30sApproved')),
      says: 'A delay of 30 seconds is wanted and the authority has not approved it; plan for 15, or get the letter.',
    },
  ],
  cases: cases(
    ['no approval', { wishDelayedEgress: true, wishDelay30s: true, delay30sApproved: false }, 'yes'],
    ['approved', { wishDelayedEgress: true, wishDelay30s: true, delay30sApproved: true }, 'no'],
    ['15 s', { wishDelayedEgress: true, wishDelay30s: false, delay30sApproved: false }, 'no'],
    ['no delay', { wishDelayedEgress: false, wishDelay30s: true, delay30sApproved: false }, 'no'],
    ['approval not known', { wishDelayedEgress: true, wishDelay30s: true }, 'unknown'],
  ),
});
