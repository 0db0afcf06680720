import { text } from '../../codes/sections.ts';
import { all, any, is, nfpa101, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R167 = defineRule({
  id: 'R-167',
  title: 'One lock per leaf in health care',
  family: 'health',
  book: 'nfpa101',
  cites: [text('nfpa101', '18/19.2.2.2', 'Locks on health-care doors')],
  confidence: 'secondary',
  note: 'Read in the federal form for NFPA 101 of 2012; for later editions from general knowledge.',
  why: 'Staff who open one lock in a fire must not find a second one on the same leaf.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(
        any(nfpa101(), yes('federalHealthCare')),
        is('occupancyGroup', 'I-2'),
        yes('isEgress'),
        is('lockFunction', 'storeroom', 'classroom', 'office'),
      ),
      of: { release: ['delayed', 'controlled', 'clinical', 'sensor', 'doorSwitch'], keepsLatch: false },
      items: ['passageFunction'],
      says: 'Only one lock may hold this leaf. The lockset that stays beside the new lock becomes a passage set, so that it latches and never locks.',
    },
  ],
});
