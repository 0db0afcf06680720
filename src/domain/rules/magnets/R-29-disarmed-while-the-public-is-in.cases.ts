import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow } from '../rule.ts';

const on = 'magnet/safe/sensor';

const door = {
  egressRole: 'exteriorExit',
  publicEntrance: true,
  cityKeepsPublicDisarm: true,
  occupancyGroup: 'B',
} as const;

const groups = ['A-1', 'A-2', 'A-3', 'A-4', 'A-5', 'B', 'E', 'M'] as const;

const nfpa = { nfpa101: 2021 } as const;

const rows = (clause: string): readonly CaseRow[] => [
  ...groups.map(
    (occupancyGroup): CaseRow => [
      `group ${occupancyGroup}`,
      { ...door, occupancyGroup },
      'yes',
      { clause, on },
    ],
  ),
  ['hotel', { ...door, occupancyGroup: 'R-1' }, 'no', { clause, on }],
  ['city has no such clause', { ...door, cityKeepsPublicDisarm: false }, 'no', { clause, on }],
  ['staff entrance', { ...door, publicEntrance: false }, 'no', { clause, on }],
  ['sealed off', { ...door, egressRole: 'sealedOff' }, 'no', { clause, on }],
  [
    'city not asked',
    { egressRole: 'exteriorExit', publicEntrance: true, occupancyGroup: 'B' },
    'unknown',
    { clause, on },
  ],
  [
    'theater under NFPA 101',
    { ...door, cityKeepsPublicDisarm: false, occupancyGroup: 'A-1' },
    'yes',
    { clause, on, basis: nfpa },
  ],
  [
    'theater under the IBC alone',
    { ...door, cityKeepsPublicDisarm: false, occupancyGroup: 'A-1' },
    'no',
    { clause, on },
  ],
  [
    'side door of a theater under NFPA 101',
    { ...door, publicEntrance: false, occupancyGroup: 'A-1' },
    'yes',
    { clause, on, basis: nfpa },
  ],
  ['office under NFPA 101', { ...door, cityKeepsPublicDisarm: false }, 'no', { clause, on, basis: nfpa }],
  ...onEach(['magnet/safe/doorSwitch', 'mortiseLock/secure/free'], 'no sensor', door, 'no', clause),
  ...onEach(['boltMotor/safe/sensor'], 'bolt with sensor', door, 'yes', clause),
];

export const R29Cases = cases(
  ...doing({ a: ['publicHoursDisarm'], b: 'signOff must' }, [...rows('a'), ...rows('b')]),
);
