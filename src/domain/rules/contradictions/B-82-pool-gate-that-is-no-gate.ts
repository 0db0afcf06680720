import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B82 = defineRule({
  id: 'B-82',
  title: 'A pool gate that is not a gate',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('hardwareHeightIbc')],
  confidence: 'project',
  why: 'Only a gate in the pool barrier may have its latch above 48 in.',
  clauses: [
    {
      effect: 'finding',
      field: 'poolBarrierGate',
      severity: 'warn',
      when: all(
        yes('poolBarrierGate'),
        is(
          'doorType',
          'pair',
          'doubleEgressPair',
          'doubleActing',
          'balanced',
          'slidingAutomatic',
          'folding',
          'revolving',
          'overhead',
          'grille',
          'turnstile',
          'turnstileFull',
          'turnstileSecurity',
        ),
      ),
      says: 'The door is entered as a gate in a pool barrier and its type is {doorType}; check both, because the height of its latch depends on it.',
    },
  ],
});
