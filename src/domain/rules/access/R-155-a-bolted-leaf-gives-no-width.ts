import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R155 = defineRule({
  id: 'R-155',
  title: 'A bolted leaf gives no exit width',
  family: 'access',
  book: 'ibc',
  cites: [under('egressCapacity'), under('doorWidth')],
  confidence: 'memory',
  note: 'The clear width that one leaf must give is checked by F-10.',
  why: 'People who leave in a hurry do not look for the bolts of the second leaf.',
  clauses: [
    {
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
      'bolted leaf counted for the width',
      { doorType: 'pair', inactiveBolts: 'manualFlush', inactiveNeededForCapacity: true },
      'yes',
      { does: 'caution' },
    ],
    [
      'bolted leaf counted for the width',
      { doorType: 'pair', inactiveBolts: 'constantLatching', inactiveNeededForCapacity: true },
      'yes',
    ],
    [
      'automatic bolts',
      { doorType: 'pair', inactiveBolts: 'automaticFlush', inactiveNeededForCapacity: true },
      'no',
    ],
    [
      'not counted',
      { doorType: 'pair', inactiveBolts: 'manualFlush', inactiveNeededForCapacity: false },
      'no',
    ],
    [
      'single leaf',
      { doorType: 'single', inactiveBolts: 'manualFlush', inactiveNeededForCapacity: true },
      'no',
    ],
    ['need not known', { doorType: 'pair', inactiveBolts: 'manualFlush' }, 'unknown'],
  ),
});
