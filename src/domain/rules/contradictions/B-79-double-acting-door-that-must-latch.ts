import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B79 = defineRule({
  id: 'B-79',
  title: 'A double-acting leaf that is rated or has a latch',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('fireDoorLatching')],
  confidence: 'project',
  why: 'A leaf that swings both ways passes through its frame, so no latch can hold it.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'doorType',
      severity: 'refuse',
      when: all(is('doorType', 'doubleActing'), yes('fireRated')),
      says: 'A double-acting leaf cannot latch, and a rated door must; check door type and rating.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'latch',
      severity: 'warn',
      when: all(
        is('doorType', 'doubleActing'),
        is(
          'latch',
          'bored',
          'mortise',
          'mortiseDeadbolt',
          'boredPlusDeadbolt',
          'rimExit',
          'rimPlusRods',
          'deadlatch',
        ),
      ),
      says: 'A double-acting leaf is entered with a latch, {latch}, which cannot hold it; check both.',
    },
  ],
});
