import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N94 = defineRule({
  id: 'N-94',
  title: 'Detention release only in detention',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Place of the arrangement')],
  confidence: 'project',
  why: 'Only a place of custody may lock people in and leave their release to a guard.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(
        not(
          any(
            all(isKnown('roomUse'), is('roomUse', 'detention')),
            all(isKnown('occupancyGroup'), is('occupancyGroup', 'I-3')),
          ),
        ),
        no('isEgress'),
      ),
      of: { release: ['attended'] },
      says: 'This is not a place of detention, or no one leaves this way, so a lock that guards release is not offered.',
    },
  ],
});
