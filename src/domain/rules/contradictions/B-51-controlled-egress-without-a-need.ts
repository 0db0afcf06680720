import { text, under } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

/** A listed child-abduction system of a hospital nursery stands in for the need. */
const abductionExcused = all(
  is('clinicalArea', 'nurseryObstetric'),
  yes('abductionSystem'),
  is('occupancyGroup', 'I-2'),
);

const ward = { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-2' } as const;

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
  cases: cases(
    [
      'no need',
      { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-1.1' },
      'yes',
      { does: 'refuse clinicalNeed' },
    ],
    ['no need', { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-1.2' }, 'yes'],
    ['no need', { ...ward, clinicalArea: 'other' }, 'yes'],
    ['need recorded', { ...ward, clinicalArea: 'other', clinicalNeed: 'containment' }, 'no'],
    ['not wanted', { ...ward, clinicalArea: 'other', wishControlledEgress: false }, 'no'],
    ['detention', { ...ward, clinicalArea: 'other', occupancyGroup: 'I-3' }, 'no'],
    [
      'need not known',
      { wishControlledEgress: true, clinicalArea: 'other', occupancyGroup: 'I-2' },
      'unknown',
    ],
    [
      'nursery with a listed system',
      { ...ward, clinicalArea: 'nurseryObstetric', abductionSystem: true },
      'no',
    ],
    ['nursery without one', { ...ward, clinicalArea: 'nurseryObstetric', abductionSystem: false }, 'yes'],
    ['pediatric ward with a system', { ...ward, clinicalArea: 'pediatric', abductionSystem: true }, 'yes'],
    [
      'such a system outside a hospital',
      { ...ward, occupancyGroup: 'I-1.2', clinicalArea: 'nurseryObstetric', abductionSystem: true },
      'yes',
    ],
  ),
});
