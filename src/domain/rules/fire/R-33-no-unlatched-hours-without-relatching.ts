import { text, under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const heldReleased = { family: ['strike', 'exitDevice'], failMode: ['secure'], keepsLatch: false } as const;
const heldByHours = all(yes('fireRated'), yes('wishScheduledUnlock'));

export const R33 = defineRule({
  id: 'R-33',
  title: 'Unlocked hours on a rated door end when fire is detected',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4', 'Latching hardware'), under('fireDoorLatching')],
  confidence: 'read',
  note: 'Buttons, toggling credentials and sensors that hold the latch released count like a schedule; the survey asks only for the schedule.',
  why: 'A latch that is held retracted for hours does not latch the door, unless detection lets it go again by itself.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: heldByHours,
      of: heldReleased,
      items: ['fireAlarmRelatch'],
      says: 'While it is unlocked nothing latches this fire door, so automatic fire detection must cut its power and let it latch.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(heldByHours, no('fireAlarm'), no('detectionThroughout')),
      of: heldReleased,
      items: ['doorDetector'],
      says: 'The building has no alarm or detection that could cut the power: without its own smoke detector this door may not be held unlatched.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: heldByHours,
      of: heldReleased,
      says: 'A fire door held unlatched on schedule: a reviewer confirms how detection relatches it.',
    },
  ],
});
