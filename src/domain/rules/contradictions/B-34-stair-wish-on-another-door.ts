import { text } from '../../codes/sections.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B34 = defineRule({
  id: 'B-34',
  title: 'Stair locking asked for at a door that is not a stair door',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Stair-side locking and re-entry apply only to stair doors.',
  clauses: [
    {
      effect: 'finding',
      field: 'egressRole',
      severity: 'warn',
      when: all(
        not(is('egressRole', 'stairEntry', 'stairDischarge')),
        any(is('stairLockWanted', 'stairSide', 'floorSide', 'both'), yes('selectedReentry')),
      ),
      says: 'A lock or re-entry for stairs is asked for at a door that is not a stair door; check the egress role of this door.',
    },
  ],
});
