import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const door = { egressRole: 'stairEntry', reentryFloorTraps: true } as const;
const trap = all(is('egressRole', 'stairEntry'), yes('reentryFloorTraps'));

export const R128 = defineRule({
  id: 'R-128',
  title: 'A re-entry floor that leads nowhere',
  family: 'health',
  book: 'ibc',
  cites: [under('stairDoors'), under('stairDoorsNfpa'), text('practice', '', 'Purpose of stair re-entry')],
  confidence: 'secondary',
  why: 'Re-entry from a smoky stair helps only if another exit can be reached from the floor.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: trap,
      says: 'Tenant doors on this floor keep people who re-enter from every other exit; have those doors unlock together with the stair doors.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'should',
      when: trap,
      says: 'Codes speak only of the stair door; have a reviewer look at where a person goes from it on this floor.',
    },
  ],
  cases: cases(
    ['tenant doors close the floor', door, 'yes', { clause: 'a', does: 'caution' }],
    ['another exit is open', { ...door, reentryFloorTraps: false }, 'no', { clause: 'a' }],
    ['corridor door', { ...door, egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
    ['not asked', { egressRole: 'stairEntry' }, 'unknown', { clause: 'a' }],
    ['tenant doors close the floor', door, 'yes', { clause: 'b', does: 'signOff should' }],
    ['another exit is open', { ...door, reentryFloorTraps: false }, 'no', { clause: 'b' }],
    ['corridor door', { ...door, egressRole: 'exitAccess' }, 'no', { clause: 'b' }],
    ['not asked', { egressRole: 'stairEntry' }, 'unknown', { clause: 'b' }],
  ),
});
