import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
