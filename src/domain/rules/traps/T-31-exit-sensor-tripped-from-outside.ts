import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T31 = defineRule({
  id: 'T-31',
  title: 'Exit sensor where security is high',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'A motion sensor unlocks for paper pushed under the door or for someone just walking by.',
  clauses: [
    {
      effect: 'caution',
      when: is('securityNeed', 'high', 'critical'),
      of: { release: ['sensor'] },
      says: 'The exit sensor unlocks for whatever moves in its field: aim it at the door only, close gaps, and do not make up for it by omitting the sensor.',
    },
  ],
});
