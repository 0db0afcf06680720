import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const F03 = defineRule({
  id: 'F-03',
  title: 'A wood jamb limits strength',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'The jamb splits long before a strike or a latch gives way.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: is('frameMaterial', 'wood'),
      of: { family: ['strike'] },
      says: 'The wood jamb sets the strength: use a long face plate and screws of 3 in into the stud.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(is('frameMaterial', 'wood'), is('securityNeed', 'high', 'critical')),
      says: 'High security is asked of a wood jamb, which holds about 300 to 800 lbf whatever device is chosen: change the frame or lower the security need.',
    },
  ],
});
