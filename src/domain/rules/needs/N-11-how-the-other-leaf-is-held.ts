import { text } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const pair = { doorType: 'pair', latch: 'mortise', inactiveBolts: 'none' } as const;
const on = 'mortiseLock/secure/free';

export const N11 = defineRule({
  id: 'N-11',
  title: 'A lock on one leaf depends on how the other is held',
  family: 'needs',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'The lock of one leaf engages the other: where that one swings free, nothing is locked and nothing latches.',
  clauses: [
    {
      effect: 'prohibit',
      // Rods on each leaf hold both by themselves.
      when: all(yes('isPair'), is('inactiveBolts', 'none'), not(is('latch', 'verticalRods', 'rimPlusRods'))),
      of: { family: ['strike', 'lock', 'battery', 'mechanical', 'bolt'] },
      says: 'Nothing holds the other leaf, so a lock on this one secures nothing and latches into nothing; add bolts or rods first.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'strikeMortise/secure/free',
        'mortiseLock/secure/free',
        'batteryLock/asIs/free',
        'mechanicalLock/none/free',
        'boltMotor/safe/sensor',
      ],
      'pair, other leaf loose',
      pair,
      'yes',
      { does: 'prohibit' },
    ),
    ...onEach(
      ['magnet/safe/sensor', 'exitTrim/secure/free', 'noLock/none/free'],
      'pair, other leaf loose, not meant',
      pair,
      'no',
    ),
    ['double-egress pair', { ...pair, doorType: 'doubleEgressPair' }, 'yes', { on }],
    ['hand bolts', { ...pair, inactiveBolts: 'manualFlush' }, 'no', { on }],
    ['automatic bolts', { ...pair, inactiveBolts: 'automaticFlush' }, 'no', { on }],
    ['rods on both leaves', { ...pair, latch: 'verticalRods' }, 'no', { on }],
    ['rods on the other leaf', { ...pair, latch: 'rimPlusRods' }, 'no', { on }],
    ['single leaf', { ...pair, doorType: 'single' }, 'no', { on }],
    ['not surveyed', { doorType: 'pair', latch: 'mortise' }, 'unknown', { on }],
  ),
});
