import { text } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B90 = defineRule({
  id: 'B-90',
  title: 'A reader or set hours at an opening that is sealed off',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Where people are to pass, the opening is not sealed off, and then it counts as egress.',
  clauses: [
    {
      effect: 'finding',
      field: 'readerSides',
      severity: 'warn',
      when: all(is('egressRole', 'sealedOff'), any(yes('wantsReader'), yes('wishScheduledUnlock'))),
      says: 'The opening is entered as sealed off, with a reader or set hours; nothing is bought for either. Enter “No reader” here, or the part the opening really plays.',
    },
  ],
});
