import { text, under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const retraction = { family: ['exitDevice'], keepsLatch: false } as const;

export const R35 = defineRule({
  id: 'R-35',
  title: 'Latch retraction on a rated door releases on fire',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4', 'Latching hardware'), under('fireDoorLatching')],
  confidence: 'secondary',
  why: 'A latch drawn back by power holds nothing; detection has to cut that power so the latch springs out.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: yes('fireRated'),
      of: retraction,
      items: ['fireAlarmRelatch'],
      says: 'Fire detection cuts the retraction power; without power the latch projects and the door latches as it closes.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('fireRated'), no('fireAlarm'), no('detectionThroughout')),
      of: retraction,
      items: ['doorDetector'],
      says: 'Nothing in the building detects fire, so the retraction needs its own smoke detector at this door.',
    },
  ],
});
