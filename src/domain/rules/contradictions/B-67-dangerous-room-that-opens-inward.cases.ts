import { cases } from '../rule.ts';

export const B67Cases = cases(
  [
    'opens inward',
    { doorType: 'single', roomUse: 'transformerVault', swingsWithEgress: false },
    'yes',
    { does: 'refuse swingsWithEgress' },
  ],
  ['opens inward', { doorType: 'single', roomUse: 'batteryRoom', swingsWithEgress: false }, 'yes'],
  ['opens inward', { doorType: 'single', roomUse: 'modularDataCenter', swingsWithEgress: false }, 'yes'],
  [
    'large refrigeration room',
    { doorType: 'single', roomUse: 'refrigerationMachinery', roomAreaFt2: 1001, swingsWithEgress: false },
    'yes',
  ],
  [
    'small refrigeration room',
    { doorType: 'single', roomUse: 'refrigerationMachinery', roomAreaFt2: 1000, swingsWithEgress: false },
    'no',
  ],
  [
    'large office',
    { doorType: 'single', roomUse: 'office', roomAreaFt2: 2000, swingsWithEgress: false },
    'no',
  ],
  ['opens outward', { doorType: 'single', roomUse: 'batteryRoom', swingsWithEgress: true }, 'no'],
  ['sliding door', { doorType: 'slidingManual', roomUse: 'batteryRoom', swingsWithEgress: false }, 'no'],
  ['swing not seen', { doorType: 'single', roomUse: 'batteryRoom' }, 'unknown'],
);
