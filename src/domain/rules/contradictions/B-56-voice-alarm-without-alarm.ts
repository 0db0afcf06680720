import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B56 = defineRule({
  id: 'B-56',
  title: 'A voice alarm without a fire alarm',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'The voice is part of the fire alarm system, and locks are released by that system.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireAlarm',
      severity: 'refuse',
      when: all(yes('voiceAlarm'), no('fireAlarm')),
      says: 'A voice alarm is entered and no fire alarm; one of the two is wrong, and the release of locks depends on it.',
    },
  ],
});
