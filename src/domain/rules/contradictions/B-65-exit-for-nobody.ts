import { text, under } from '../../codes/sections.ts';
import { all, atMost, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B65 = defineRule({
  id: 'B-65',
  title: 'An exit that serves nobody',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('occupantLoads')],
  confidence: 'project',
  why: 'The number of people decides panic hardware, swing and width, and an exit serves at least one.',
  clauses: [
    {
      effect: 'finding',
      field: 'occupantLoad',
      severity: 'refuse',
      when: all(
        is('egressRole', 'exitAccess', 'exteriorExit', 'stairEntry', 'stairDischarge', 'horizontalExit'),
        atMost('occupantLoad', 0),
      ),
      says: 'The door is in a means of egress and serves 0 people; enter the calculated load, or check its egress role.',
    },
  ],
});
