import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R43 = defineRule({
  id: 'R-43',
  title: 'An operator on a fire door stops on alarm',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.1', 'Closing devices'), under('powerDoors')],
  confidence: 'secondary',
  why: 'A motor that opens the leaf again, or a latch it holds back, undoes the fire door.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('fireRated'), is('operator', 'lowEnergy', 'fullPower', 'powerAssist')),
      items: ['fireListedOperator'],
      says: 'The operator is listed for fire doors and is cut off by the fire alarm, so that the door closes and stays closed.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('fireRated'), is('operator', 'lowEnergy', 'fullPower')),
      of: { family: ['strike', 'exitDevice'], failMode: ['secure'], keepsLatch: false },
      items: ['fireAlarmRelatch'],
      says: 'What releases the latch for the operator also loses power on fire detection, so the door latches when it closes.',
    },
  ],
});
