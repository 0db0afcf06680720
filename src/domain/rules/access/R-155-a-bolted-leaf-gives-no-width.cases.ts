import { cases } from '../rule.ts';

export const R155Cases = cases(
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
  ['not counted', { doorType: 'pair', inactiveBolts: 'manualFlush', inactiveNeededForCapacity: false }, 'no'],
  [
    'single leaf',
    { doorType: 'single', inactiveBolts: 'manualFlush', inactiveNeededForCapacity: true },
    'no',
  ],
  ['need not known', { doorType: 'pair', inactiveBolts: 'manualFlush' }, 'unknown'],
);
