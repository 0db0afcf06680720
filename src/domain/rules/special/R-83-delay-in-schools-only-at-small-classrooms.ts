import { under as cite } from '../../codes/sections.ts';
import { all, is, not, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

export const R83 = defineRule({
  id: 'R-83',
  title: 'Delayed egress in schools only at small classrooms',
  family: 'special',
  book: 'ibc',
  cites: [cite('delayedEgress'), cite('delayedEgressNfpa')],
  confidence: 'secondary',
  note: 'What the educational chapter of NFPA 101 leaves open is from general knowledge.',
  why: 'Children leave in groups and cannot be expected to wait at a door that does not open.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(
        not(nfpaAlone),
        yes('groupE'),
        not(all(is('roomUse', 'classroom'), under('occupantLoad', 'delayedClassroomLoadIbc'))),
      ),
      of: { release: ['delayed'] },
      says: 'In a school only a classroom for fewer than 50 people may have delayed egress.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(nfpaAlone, yes('groupE')),
      of: { release: ['delayed'] },
      says: 'Under NFPA 101 the educational chapter decides whether this door may have delayed egress; a reviewer reads it.',
    },
  ],
});
