import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, not, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B46 = defineRule({
  id: 'B-46',
  title: 'Delayed egress wanted in a school',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('delayedEgress')],
  confidence: 'project',
  note: 'NFPA 101 on its own is more open here, so this speaks where the IBC is adopted.',
  why: 'Children must leave at once; only small classrooms are excepted.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishDelayedEgress',
      severity: 'warn',
      when: all(
        ibc(),
        yes('wishDelayedEgress'),
        yes('groupE'),
        not(all(is('roomUse', 'classroom'), below('occupantLoad', 'delayedClassroomLoadIbc'))),
      ),
      says: 'Delayed egress is wanted in a school at a door that is not a classroom for fewer than 50; check room and load or withdraw the request.',
    },
  ],
});
