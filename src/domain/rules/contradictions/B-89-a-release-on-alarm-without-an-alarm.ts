import { text, under as cite } from '../../codes/sections.ts';
import { all, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const nothingTells = all(no('fireAlarm'), no('sprinklered'), no('detectionThroughout'));

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
      when: all(is('existingArrangement', 'magnetFullSet', 'magnetAlarmOnly'), nothingTells),
      says: 'The magnet is entered as released by the fire alarm, and the building has no fire alarm, sprinklers or detection that could release it; find out what it is wired to.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'wishUnlockOnAlarm',
      severity: 'warn',
      when: all(yes('wishUnlockOnAlarm'), nothingTells),
      says: 'The outside is to unlock on fire alarm, and the building has no fire alarm, sprinklers or detection; withdraw the request or correct the building facts.',
    },
  ],
});
