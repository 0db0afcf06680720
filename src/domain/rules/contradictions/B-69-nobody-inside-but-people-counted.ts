import { text, under } from '../../codes/sections.ts';
import { all, is, over } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B69 = defineRule({
  id: 'B-69',
  title: 'Nobody can be inside, yet people are counted',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('freeEgressIbc')],
  confidence: 'project',
  why: 'A door without egress duty may be locked in ways that would shut a person in.',
  clauses: [
    {
      effect: 'finding',
      field: 'egressRole',
      severity: 'refuse',
      when: all(is('egressRole', 'noOccupiedSpace'), over('occupantLoad', 0)),
      says: 'The space is said to hold nobody, yet people are counted there; check what is behind the door.',
    },
  ],
});
