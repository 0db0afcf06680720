import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N13 = defineRule({
  id: 'N-13',
  title: 'Nothing electric is bought for an opening that is sealed off',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'Nobody passes a sealed opening, so there is nobody to read a credential or to let through.',
  clauses: [
    {
      effect: 'prohibit',
      when: is('egressRole', 'sealedOff'),
      of: { not: { family: ['mechanical', 'none', 'detention'] } },
      says: 'The opening is sealed off, so no electrified lock is bought for it.',
    },
  ],
});
