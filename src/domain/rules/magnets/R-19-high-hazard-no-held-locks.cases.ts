import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';

const room = { egressRole: 'exitAccess', occupancyGroup: 'H-2' } as const;

const on = 'magnet/safe/sensor';

export const R19Cases = cases(
  ...(['H-1', 'H-2', 'H-3', 'H-4', 'H-5'] as const).map(
    (occupancyGroup): CaseRow => [
      `group ${occupancyGroup}`,
      { ...room, occupancyGroup },
      'yes',
      { on, does: 'prohibit' },
    ],
  ),
  ['ordinary factory', { ...room, occupancyGroup: 'F-1' }, 'no', { on }],
  ['group not known', { egressRole: 'exitAccess' }, 'unknown', { on }],
  ['cabinet', { ...room, egressRole: 'noOccupiedSpace' }, 'no', { on }],
  ['NFPA 101 alone', room, 'yes', { on, basis: { ibc: null, nfpa101: 2021 } }],
  ...onEach(
    ['magnet/safe/doorSwitch', 'boltMotor/safe/doorSwitch', 'glassPatchLock/safe/sensor'],
    'high hazard',
    room,
    'yes',
  ),
  ...onEach(['exitTrim/secure/free', 'magnet/safe/none'], 'another release', room, 'no'),
);
