import { text, under } from '../../codes/sections.ts';
import { all, any, is, over, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
      when: all(
        is('egressRole', 'noOccupiedSpace'),
        any(over('occupantLoad', 0), yes('exitSign'), yes('hasExitDevice')),
      ),
      says: 'The space is said to hold nobody, yet people are counted there or an exit sign or push bar was seen; check what is behind the door.',
    },
  ],
  cases: cases(
    [
      'one person',
      {
        egressRole: 'noOccupiedSpace',
        occupantLoad: 1,
        exitSign: false,
        latch: 'bored',
        panicPresent: false,
      },
      'yes',
    ],
    [
      'exit sign',
      { egressRole: 'noOccupiedSpace', occupantLoad: 0, exitSign: true, latch: 'bored', panicPresent: false },
      'yes',
    ],
    [
      'push bar',
      {
        egressRole: 'noOccupiedSpace',
        occupantLoad: 0,
        exitSign: false,
        latch: 'rimExit',
        panicPresent: true,
      },
      'yes',
    ],
    [
      'cabinet',
      {
        egressRole: 'noOccupiedSpace',
        occupantLoad: 0,
        exitSign: false,
        latch: 'bored',
        panicPresent: false,
      },
      'no',
    ],
    [
      'office',
      { egressRole: 'exitAccess', occupantLoad: 4, exitSign: true, latch: 'rimExit', panicPresent: true },
      'no',
    ],
    [
      'load not known',
      { egressRole: 'noOccupiedSpace', exitSign: false, latch: 'bored', panicPresent: false },
      'unknown',
    ],
  ),
});
