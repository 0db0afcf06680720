import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    ['no gate', { poolBarrierGate: true, doorType: 'pair' }, 'yes', { does: 'warn poolBarrierGate' }],
    ['no gate', { poolBarrierGate: true, doorType: 'doubleEgressPair' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'doubleActing' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'balanced' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'slidingAutomatic' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'folding' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'revolving' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'overhead' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'grille' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'turnstile' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'turnstileFull' }, 'yes'],
    ['no gate', { poolBarrierGate: true, doorType: 'turnstileSecurity' }, 'yes'],
    ['gate', { poolBarrierGate: true, doorType: 'gateSwing' }, 'no'],
    ['gate', { poolBarrierGate: true, doorType: 'single' }, 'no'],
    ['pair of a hall', { poolBarrierGate: false, doorType: 'pair' }, 'no'],
    ['door type not known', { poolBarrierGate: true }, 'unknown'],
  ),
});
