import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B51 = defineRule({
  id: 'B-51',
  title: 'Controlled egress wanted without a clinical need',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('controlledEgress'), under('controlledEgressNfpa')],
  confidence: 'project',
  why: 'The recorded clinical need is what makes it lawful to keep somebody in.',
  clauses: [
    {
      effect: 'finding',
      field: 'clinicalNeed',
      severity: 'refuse',
      when: all(
        yes('wishControlledEgress'),
        is('clinicalNeed', 'none'),
        is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2'),
      ),
      says: 'Controlled egress is wanted and no clinical need is recorded; get the need in writing or drop the wish.',
    },
  ],
  cases: cases(
    ['no need', { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-1.1' }, 'yes'],
    ['no need', { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-1.2' }, 'yes'],
    ['no need', { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-2' }, 'yes'],
    [
      'need recorded',
      { wishControlledEgress: true, clinicalNeed: 'containment', occupancyGroup: 'I-2' },
      'no',
    ],
    ['not wanted', { wishControlledEgress: false, clinicalNeed: 'none', occupancyGroup: 'I-2' }, 'no'],
    ['detention', { wishControlledEgress: true, clinicalNeed: 'none', occupancyGroup: 'I-3' }, 'no'],
    ['need not known', { wishControlledEgress: true, occupancyGroup: 'I-2' }, 'unknown'],
  ),
});
