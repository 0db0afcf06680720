import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B45 = defineRule({
  id: 'B-45',
  title: 'Delayed egress wanted in an assembly',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('delayedEgress')],
  confidence: 'project',
  note: 'NFPA 101 on its own leaves some assembly doors open to a reviewer, so this speaks where the IBC is adopted.',
  why: 'A crowd held at a door piles up against it.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishDelayedEgress',
      severity: 'warn',
      when: all(
        ibc(),
        yes('wishDelayedEgress'),
        yes('groupA'),
        not(
          all(is('roomUse', 'courtroom'), is('occupancyGroup', 'A-3'), no('mainDoor'), yes('fullSprinklers')),
        ),
      ),
      says: 'Delayed egress is wanted in {occupancyGroup}; among assemblies only the side doors of a courtroom in a sprinklered building may have it. Check the group or withdraw the request.',
    },
  ],
});
