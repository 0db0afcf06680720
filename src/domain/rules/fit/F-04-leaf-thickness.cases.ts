import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const heavy = [
  'mortiseLock/secure/free',
  'cylindricalLock/secure/free',
  'exitTrim/secure/free',
  'latchRetractionMotor/secure/free',
  'latchRetractionSolenoid/secure/free',
  'delayedExitDevice/safe/delayed',
];

const boredOrMortise = [
  'mortiseLock/safe/free',
  'cylindricalLock/safe/free',
  'batteryLock/asIs/free',
  'mechanicalLock/none/free',
];

export const F04Cases = cases(
  ...onEach(heavy, '1-3/8 in leaf', { leafMaterial: 'woodSolidCore', leafThicknessIn: 1.375 }, 'yes', 'a'),
  [
    'just under 1-3/4 in',
    { leafMaterial: 'woodSolidCore', leafThicknessIn: 1.74 },
    'yes',
    { clause: 'a', on: heavy[0] as string, does: 'caution' },
  ],
  [
    '1-3/4 in leaf',
    { leafMaterial: 'woodSolidCore', leafThicknessIn: 1.75 },
    'no',
    { clause: 'a', on: heavy[0] as string },
  ],
  [
    'thinner than any bored lock takes',
    { leafMaterial: 'woodSolidCore', leafThicknessIn: 1.37 },
    'no',
    { clause: 'a', on: heavy[0] as string },
  ],
  [
    'battery locks take thin leaves',
    { leafMaterial: 'woodSolidCore', leafThicknessIn: 1.375 },
    'no',
    { clause: 'a', on: 'batteryLock/asIs/free' },
  ],
  [
    'thickness not measured',
    { leafMaterial: 'woodSolidCore' },
    'unknown',
    { clause: 'a', on: heavy[0] as string },
  ],
  [
    'glass carries no such lock',
    { leafMaterial: 'glassFrameless', leafThicknessIn: 1.5 },
    'no',
    { clause: 'a', on: heavy[0] as string },
  ],
  ...onEach(
    boredOrMortise,
    'leaf under 1-3/8 in',
    { leafMaterial: 'woodHollowCore', leafThicknessIn: 1.37 },
    'yes',
    { clause: 'b', does: 'prohibit' },
  ),
  [
    '1-3/8 in is enough',
    { leafMaterial: 'woodHollowCore', leafThicknessIn: 1.375 },
    'no',
    { clause: 'b', on: 'cylindricalLock/secure/free' },
  ],
  [
    'a magnet asks no thickness',
    { leafMaterial: 'woodHollowCore', leafThicknessIn: 1 },
    'no',
    { clause: 'b', on: 'magnet/safe/sensor' },
  ],
  [
    'half-inch glass',
    { leafMaterial: 'glassFrameless', leafThicknessIn: 0.5 },
    'no',
    { clause: 'b', on: 'batteryLock/asIs/free' },
  ],
  [
    'chain-link gate',
    { leafMaterial: 'chainLink', leafThicknessIn: 0.5 },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/free' },
  ],
  [
    'rolling curtain',
    { leafMaterial: 'rollingSteel', leafThicknessIn: 0.5 },
    'no',
    { clause: 'b', on: 'mechanicalLock/none/free' },
  ],
  [
    'not measured, wood',
    { leafMaterial: 'woodHollowCore' },
    'unknown',
    { clause: 'b', on: 'cylindricalLock/secure/free' },
  ],
  [
    'thin leaf of unknown material',
    { leafThicknessIn: 1.37 },
    'unknown',
    { clause: 'b', on: 'cylindricalLock/secure/free' },
  ],
  ...onEach(
    boredOrMortise,
    'leaf over 1-3/4 in',
    { leafMaterial: 'hollowMetal', leafThicknessIn: 1.76 },
    'yes',
    { clause: 'c', does: 'caution' },
  ),
  [
    '1-3/4 in needs nothing',
    { leafMaterial: 'hollowMetal', leafThicknessIn: 1.75 },
    'no',
    { clause: 'c', on: 'cylindricalLock/secure/free' },
  ],
  [
    'exit trim is ordered with its bar',
    { leafMaterial: 'hollowMetal', leafThicknessIn: 2 },
    'no',
    { clause: 'c', on: 'exitTrim/secure/free' },
  ],
  [
    'glass block, not a lock leaf',
    { leafMaterial: 'glassFrameless', leafThicknessIn: 2 },
    'no',
    { clause: 'c', on: 'batteryLock/asIs/free' },
  ],
  [
    'not measured, steel',
    { leafMaterial: 'hollowMetal' },
    'unknown',
    { clause: 'c', on: 'cylindricalLock/secure/free' },
  ],
  ...onEach(
    ['cylindricalLock/secure/free', 'batteryLock/asIs/free'],
    'leaf over 2-1/4 in',
    { leafMaterial: 'hollowMetal', leafThicknessIn: 2.26 },
    'yes',
    { clause: 'd', does: 'prohibit' },
  ),
  [
    '2-1/4 in is still reached',
    { leafMaterial: 'hollowMetal', leafThicknessIn: 2.25 },
    'no',
    { clause: 'd', on: 'cylindricalLock/secure/free' },
  ],
  [
    'mortise locks are made to order',
    { leafMaterial: 'hollowMetal', leafThicknessIn: 3 },
    'no',
    { clause: 'd', on: 'mortiseLock/secure/free' },
  ],
  [
    'thick glass, not a lock leaf',
    { leafMaterial: 'glassFrameless', leafThicknessIn: 3 },
    'no',
    { clause: 'd', on: 'batteryLock/asIs/free' },
  ],
  [
    'not measured, thick steel',
    { leafMaterial: 'hollowMetal' },
    'unknown',
    { clause: 'd', on: 'cylindricalLock/secure/free' },
  ],
  [
    'thick leaf of unknown material',
    { leafThicknessIn: 2.26 },
    'unknown',
    { clause: 'd', on: 'cylindricalLock/secure/free' },
  ],
  ...(['chainLink', 'rollingSteel'] as const).flatMap((leafMaterial) => [
    [
      `no lock leaf: ${leafMaterial}`,
      { leafMaterial, leafThicknessIn: 1.5 },
      'no',
      { clause: 'a', on: 'mortiseLock/secure/free' },
    ] as const,
    [
      `thick, no lock leaf: ${leafMaterial}`,
      { leafMaterial, leafThicknessIn: 2 },
      'no',
      { clause: 'c', on: 'batteryLock/asIs/free' },
    ] as const,
    [
      `very thick, no lock leaf: ${leafMaterial}`,
      { leafMaterial, leafThicknessIn: 3 },
      'no',
      { clause: 'd', on: 'batteryLock/asIs/free' },
    ] as const,
  ]),
);
