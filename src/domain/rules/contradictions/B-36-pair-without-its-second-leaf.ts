import { text, under } from '../../codes/sections.ts';
import { all, is, isKnown, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B36 = defineRule({
  id: 'B-36',
  title: 'A pair whose second leaf was not surveyed',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('boltLocks')],
  confidence: 'project',
  why: 'What holds the second leaf decides what the first one may have.',
  clauses: [
    {
      effect: 'finding',
      field: 'inactiveBolts',
      severity: 'warn',
      when: all(is('doorType', 'pair'), not(isKnown('inactiveBolts'))),
      says: 'This is a pair, and what holds the inactive leaf was not recorded; look at its edge, top and bottom.',
    },
  ],
});
