import { text, under } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** A listed child-abduction system of a hospital nursery stands in for the need. */
const abductionExcused = all(
  is('clinicalArea', 'nurseryObstetric'),
  yes('abductionSystem'),
  is('occupancyGroup', 'I-2'),
);

export const B51 = defineRule({
  id: 'B-51',
  title: 'Controlled egress wanted without a clinical need',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('controlledEgress'), under('controlledEgressNfpa')],
  confidence: 'project',
  why: 'A documented clinical need is what allows a person to be kept in.',
  clauses: [
    {
      effect: 'finding',
      field: 'clinicalNeed',
      severity: 'refuse',
      when: all(
        yes('wishControlledEgress'),
        is('clinicalNeed', 'none'),
        is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2'),
        not(abductionExcused),
      ),
      says: 'Controlled egress is wanted and no clinical need is recorded; get the need in writing or withdraw the request.',
    },
  ],
});
