import { text, under as cite } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const noAlarm = no('fireAlarm');
/** A full set may hang on sprinkler flow or detectors where there is no alarm system. */
const nothingTells = all(noAlarm, no('sprinklered'), no('detectionThroughout'));

export const B89 = defineRule({
  id: 'B-89',
  title: 'A release on fire alarm in a building without one',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), cite('sensorRelease')],
  confidence: 'project',

  why: 'A lock that waits for an alarm that cannot come keeps people in.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'existingArrangement',
      severity: 'warn',
      when: any(
        all(is('existingArrangement', 'magnetAlarmOnly'), noAlarm),
        all(is('existingArrangement', 'magnetFullSet'), nothingTells),
      ),
      says: 'The magnet is entered as released by the fire alarm, and the building as having no fire alarm; find out what it is wired to, if to anything.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'wishUnlockOnAlarm',
      severity: 'warn',
      when: all(yes('wishUnlockOnAlarm'), noAlarm),
      says: 'The outside is to unlock on fire alarm, and the building is entered as having no fire alarm; withdraw the request or correct the building facts.',
    },
  ],
});
