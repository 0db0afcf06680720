import { text } from '../../codes/sections.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'stair lock at a room door',
      { egressRole: 'exitAccess', stairLockWanted: 'stairSide', selectedReentry: false },
      'yes',
      { does: 'warn egressRole' },
    ],
    [
      'stair lock at a room door',
      { egressRole: 'exitAccess', stairLockWanted: 'floorSide', selectedReentry: false },
      'yes',
    ],
    [
      'stair lock at a room door',
      { egressRole: 'exitAccess', stairLockWanted: 'both', selectedReentry: false },
      'yes',
    ],
    [
      're-entry at a room door',
      { egressRole: 'exitAccess', stairLockWanted: 'none', selectedReentry: true },
      'yes',
    ],
    [
      'at a stair door',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide', selectedReentry: true },
      'no',
    ],
    [
      'at a stair door',
      { egressRole: 'stairDischarge', stairLockWanted: 'stairSide', selectedReentry: true },
      'no',
    ],
    ['no such wish', { egressRole: 'exitAccess', stairLockWanted: 'none', selectedReentry: false }, 'no'],
    ['wishes not known', { egressRole: 'exitAccess' }, 'unknown'],
  ),
});
