import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N06 = defineRule({
  id: 'N-06',
  title: 'A secure room that unlocks when power fails',
  family: 'needs',
  book: 'practice',
  cites: [text('practice', '', 'Choice of fail mode')],
  confidence: 'practice',
  why: 'Fail safe belongs where people’s safety needs it; elsewhere it opens the room to anyone who waits for the battery to run out.',
  clauses: [
    {
      effect: 'caution',
      when: is('securityNeed', 'high', 'critical'),
      of: { failMode: ['safe'] },
      says: 'The security need is {securityNeed}, and this opening unlocks once lock power and battery are gone.',
    },
  ],
});
