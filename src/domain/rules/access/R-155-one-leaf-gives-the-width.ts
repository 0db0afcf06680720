import { text, under } from '../../codes/sections.ts';
import { all, any, is, under as below, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R155 = defineRule({
  id: 'R-155',
  title: 'One leaf of a pair gives the clear width',
  family: 'access',
  book: 'ada',
  cites: [text('ada', '404.2.3', 'Clear width'), under('doorWidth')],
  confidence: 'memory',
  why: 'Nobody in a wheelchair can draw the bolts of the second leaf.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'clearWidthIn',
      severity: 'warn',
      when: all(
        yes('isPair'),
        is('inactiveBolts', 'manualFlush', 'automaticFlush', 'constantLatching'),
        any(yes('isEgress'), yes('accessibleRoute')),
        below('clearWidthIn', 'clearWidthMinIn'),
      ),
      says: 'The active leaf alone leaves {clearWidthIn}, and 32 in are needed without touching the bolted leaf; measure again or widen the active leaf.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(
        yes('isPair'),
        is('inactiveBolts', 'manualFlush', 'constantLatching'),
        yes('inactiveNeededForCapacity'),
      ),
      says: 'The second leaf is counted for the exit width though a person must first draw its bolts; both leaves count only if both are free to open.',
    },
  ],
  cases: cases(
    [
      'pair, 31 in from the active leaf',
      {
        doorType: 'pair',
        inactiveBolts: 'manualFlush',
        egressRole: 'exitAccess',
        accessibleRoute: false,
        clearWidthIn: 31,
      },
      'yes',
      { clause: 'a' },
    ],
    [
      'pair, 31 in from the active leaf',
      {
        doorType: 'pair',
        inactiveBolts: 'automaticFlush',
        egressRole: 'exitAccess',
        accessibleRoute: false,
        clearWidthIn: 31,
      },
      'yes',
      { clause: 'a' },
    ],
    [
      'pair, 31 in from the active leaf',
      {
        doorType: 'pair',
        inactiveBolts: 'constantLatching',
        egressRole: 'exitAccess',
        accessibleRoute: false,
        clearWidthIn: 31,
      },
      'yes',
      { clause: 'a' },
    ],
    [
      'pair, 32 in from the active leaf',
      {
        doorType: 'pair',
        inactiveBolts: 'manualFlush',
        egressRole: 'exitAccess',
        accessibleRoute: true,
        clearWidthIn: 32,
      },
      'no',
      { clause: 'a' },
    ],
    [
      'accessible pair nobody must leave by',
      {
        doorType: 'pair',
        inactiveBolts: 'manualFlush',
        egressRole: 'sealedOff',
        accessibleRoute: true,
        clearWidthIn: 31,
      },
      'yes',
      { clause: 'a' },
    ],
    [
      'pair of a cabinet',
      {
        doorType: 'pair',
        inactiveBolts: 'manualFlush',
        egressRole: 'noOccupiedSpace',
        accessibleRoute: false,
        clearWidthIn: 31,
      },
      'no',
      { clause: 'a' },
    ],
    [
      'rods on both leaves',
      {
        doorType: 'pair',
        inactiveBolts: 'rods',
        egressRole: 'exitAccess',
        accessibleRoute: true,
        clearWidthIn: 31,
      },
      'no',
      { clause: 'a' },
    ],
    [
      'single leaf',
      {
        doorType: 'single',
        inactiveBolts: 'manualFlush',
        egressRole: 'exitAccess',
        accessibleRoute: true,
        clearWidthIn: 31,
      },
      'no',
      { clause: 'a' },
    ],
    [
      'not measured',
      { doorType: 'pair', inactiveBolts: 'manualFlush', egressRole: 'exitAccess' },
      'unknown',
      { clause: 'a' },
    ],
    [
      'bolted leaf counted for the width',
      { doorType: 'pair', inactiveBolts: 'manualFlush', inactiveNeededForCapacity: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'bolted leaf counted for the width',
      { doorType: 'pair', inactiveBolts: 'constantLatching', inactiveNeededForCapacity: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'automatic bolts',
      { doorType: 'pair', inactiveBolts: 'automaticFlush', inactiveNeededForCapacity: true },
      'no',
      { clause: 'b' },
    ],
    [
      'not counted',
      { doorType: 'pair', inactiveBolts: 'manualFlush', inactiveNeededForCapacity: false },
      'no',
      { clause: 'b' },
    ],
    [
      'single leaf',
      { doorType: 'single', inactiveBolts: 'manualFlush', inactiveNeededForCapacity: true },
      'no',
      { clause: 'b' },
    ],
    ['need not known', { doorType: 'pair', inactiveBolts: 'manualFlush' }, 'unknown', { clause: 'b' }],
  ),
});
