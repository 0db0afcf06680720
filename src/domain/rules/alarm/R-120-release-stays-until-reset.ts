import { text, under } from '../../codes/sections.ts';
import { all, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { releaseExcuse } from '../special/conditions.ts';
import { somethingDetects } from './given.ts';

export const R120 = defineRule({
  id: 'R-120',
  title: 'What the alarm unlocked stays unlocked until manually reset',
  family: 'alarm',
  book: 'nfpa72',
  cites: [
    text('nfpa72', '21.9', 'Electrically locked doors'),
    under('sensorRelease'),
    under('delayedEgress'),
  ],
  confidence: 'read',
  note: 'Read in the 2007 text; for sensor release from general knowledge.',
  why: 'A timer that locks again does so while people are still on their way.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects),
      of: { release: ['sensor', 'delayed', 'lobby'] },
      items: ['overrideReset'],
      says: 'After an alarm it relocks only when someone manually resets it; no timer may do so.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects, not(releaseExcuse)),
      of: { release: ['controlled'] },
      items: ['overrideReset'],
      says: 'After an alarm the controlled-egress lock relocks only when staff manually reset it; no timer may do so.',
    },
  ],
});
