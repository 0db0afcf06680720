import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'rated',
      { doorType: 'doubleActing', fireRatingMin: 20 },
      'yes',
      { clause: 'a', does: 'refuse doorType' },
    ],
    ['not rated', { doorType: 'doubleActing', fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause: 'a' }],
    ['single leaf', { doorType: 'single', fireRatingMin: 20 }, 'no', { clause: 'a' }],
    ['rating not known', { doorType: 'doubleActing' }, 'unknown', { clause: 'a' }],
    ['latch', { doorType: 'doubleActing', latch: 'bored' }, 'yes', { clause: 'b', does: 'warn latch' }],
    ['latch', { doorType: 'doubleActing', latch: 'mortise' }, 'yes', { clause: 'b' }],
    ['latch', { doorType: 'doubleActing', latch: 'mortiseDeadbolt' }, 'yes', { clause: 'b' }],
    ['latch', { doorType: 'doubleActing', latch: 'boredPlusDeadbolt' }, 'yes', { clause: 'b' }],
    ['latch', { doorType: 'doubleActing', latch: 'rimExit' }, 'yes', { clause: 'b' }],
    ['latch', { doorType: 'doubleActing', latch: 'rimPlusRods' }, 'yes', { clause: 'b' }],
    ['latch', { doorType: 'doubleActing', latch: 'deadlatch' }, 'yes', { clause: 'b' }],
    ['push and pull', { doorType: 'doubleActing', latch: 'pushPull' }, 'no', { clause: 'b' }],
    ['single leaf', { doorType: 'single', latch: 'mortise' }, 'no', { clause: 'b' }],
    ['latch not seen', { doorType: 'doubleActing' }, 'unknown', { clause: 'b' }],
  ),
});
