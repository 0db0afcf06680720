import { text, under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B47 = defineRule({
  id: 'B-47',
  title: 'Delayed egress wanted without sprinklers or detection',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'project',
  why: 'The delay must end by itself when a fire is detected, and nothing here detects one.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishDelayedEgress',
      severity: 'warn',
      when: all(yes('wishDelayedEgress'), no('fullSprinklers'), no('detectionThroughout')),
      says: 'Delayed egress is wanted in a building with neither a full sprinkler system (NFPA 13) nor smoke or heat detection throughout; check the building facts or withdraw the request.',
    },
  ],
});
