import { cases } from '../rule.ts';

export const B37Cases = cases(
  [
    'bolts on a single door',
    {
      doorType: 'single',
      inactiveBolts: 'manualFlush',
      inactiveNeededForCapacity: false,
      inactiveHasHardware: false,
    },
    'yes',
    { does: 'warn doorType' },
  ],
  [
    'bolts on a single door',
    {
      doorType: 'single',
      inactiveBolts: 'automaticFlush',
      inactiveNeededForCapacity: false,
      inactiveHasHardware: false,
    },
    'yes',
  ],
  [
    'bolts on a single door',
    {
      doorType: 'single',
      inactiveBolts: 'constantLatching',
      inactiveNeededForCapacity: false,
      inactiveHasHardware: false,
    },
    'yes',
  ],
  [
    'bolts on a single door',
    {
      doorType: 'single',
      inactiveBolts: 'rods',
      inactiveNeededForCapacity: false,
      inactiveHasHardware: false,
    },
    'yes',
  ],
  [
    'bolts on a single door',
    {
      doorType: 'single',
      inactiveBolts: 'rim',
      inactiveNeededForCapacity: false,
      inactiveHasHardware: false,
    },
    'yes',
  ],
  [
    'second leaf counted for width',
    {
      doorType: 'single',
      inactiveBolts: 'none',
      inactiveNeededForCapacity: true,
      inactiveHasHardware: false,
    },
    'yes',
  ],
  [
    'hardware on a second leaf',
    {
      doorType: 'single',
      inactiveBolts: 'none',
      inactiveNeededForCapacity: false,
      inactiveHasHardware: true,
    },
    'yes',
  ],
  [
    'nothing of the kind',
    {
      doorType: 'single',
      inactiveBolts: 'none',
      inactiveNeededForCapacity: false,
      inactiveHasHardware: false,
    },
    'no',
  ],
  [
    'pair',
    {
      doorType: 'pair',
      inactiveBolts: 'manualFlush',
      inactiveNeededForCapacity: true,
      inactiveHasHardware: true,
    },
    'no',
  ],
  ['door type not known', { inactiveBolts: 'manualFlush' }, 'unknown'],
);
