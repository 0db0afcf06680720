import { doing } from '../doing.ts';
import { cases, type CaseRow } from '../rule.ts';

const special = [
  'magnet/safe/sensor',
  'magnet/safe/doorSwitch',
  'delayedExitDevice/safe/delayed',
  'mortiseLock/safe/controlled',
  'mortiseLock/safe/lobby',
];

const rest = ['mortiseLock/secure/free', 'exitTrim/safe/stairReentry', 'mechanicalLock/none/clinical'];

const room = { egressRole: 'exitAccess' } as const;

const rows = (clause: string, basis: CaseRow[3]): readonly CaseRow[] => [
  ...special.map((on): CaseRow => [on, room, 'yes', { ...basis, clause, on }]),
  ...rest.map((on): CaseRow => [on, room, 'no', { ...basis, clause, on }]),
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { ...basis, clause, on: 'magnet/safe/sensor' }],
  ['role not known', {}, 'unknown', { ...basis, clause, on: 'magnet/safe/sensor' }],
];

export const R30Cases = cases(
  ...doing({ b: ['listedLock'] }, [
    ...rows('a', {}),
    [
      '2018',
      room,
      'yes',
      { clause: 'a', on: 'magnet/safe/sensor', basis: { ibc: 2018 }, does: ['listedLock'] },
    ],
    ['2024 is clause b', room, 'no', { clause: 'a', on: 'magnet/safe/sensor', basis: { ibc: 2024 } }],
    [
      'NFPA 101 alone',
      room,
      'yes',
      { clause: 'a', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: 2024 } },
    ],
    ...rows('b', { basis: { ibc: 2024 } }),
    ['2021 is clause a', room, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
  ]),
);
