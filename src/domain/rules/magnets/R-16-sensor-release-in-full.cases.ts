import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';

const room = { egressRole: 'exitAccess' } as const;

const on = 'magnet/safe/sensor';

const bare = { ...room, fireAlarm: false, sprinklered: false, detectionThroughout: false } as const;

const meant = (clause: string, facts: CaseRow[1], basis = {}): readonly CaseRow[] => [
  ...['magnet/safe/sensor', 'boltMotor/safe/sensor'].map(
    (which): CaseRow => [`${which} is meant`, facts, 'yes', { clause, on: which, basis }],
  ),
  ...['magnet/safe/doorSwitch', 'mortiseLock/secure/free'].map(
    (which): CaseRow => [`${which} is not meant`, facts, 'no', { clause, on: which, basis }],
  ),
];

export const R16Cases = cases(
  [
    'office door, magnet with sensor',
    room,
    'yes',
    {
      clause: 'a',
      on,
      does: ['exitSensor', 'pushToExit', 'signPushToExit', 'powerLossRelease', 'listedLock'],
    },
  ],
  ['neither code adopted: still the full set', room, 'yes', { clause: 'a', on, basis: { ibc: null } }],
  ['cabinet that nobody can enter', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on }],
  ['egress role not known', {}, 'unknown', { clause: 'a', on }],
  ...meant('a', room),
  [
    'building with a fire alarm',
    { ...room, fireAlarm: true },
    'yes',
    { clause: 'b', on, does: ['fireAlarmRelease', 'overrideReset'] },
  ],
  ['sprinklers only', { ...bare, sprinklered: true }, 'no', { clause: 'b', on }],
  ['fire alarm, cabinet', { egressRole: 'noOccupiedSpace', fireAlarm: true }, 'no', { clause: 'b', on }],
  ['fire alarm not surveyed', room, 'unknown', { clause: 'b', on }],
  ...meant('b', { ...room, fireAlarm: true }),
  [
    'building with sprinklers only',
    { ...bare, sprinklered: true },
    'yes',
    { clause: 'c', on, does: ['detectionRelease', 'overrideReset'] },
  ],
  ['building with detection only', { ...bare, detectionThroughout: true }, 'yes', { clause: 'c', on }],
  ['no fire protection at all', bare, 'no', { clause: 'c', on }],
  [
    'sprinklers, cabinet',
    { ...bare, sprinklered: true, egressRole: 'noOccupiedSpace' },
    'no',
    { clause: 'c', on },
  ],
  ['fire protection not surveyed', room, 'unknown', { clause: 'c', on }],
  ...meant('c', { ...room, sprinklered: true }),
  ['no fire protection at all: still usable', bare, 'yes', { clause: 'd', on, does: 'permit' }],
  ['fire alarm there', { ...bare, fireAlarm: true }, 'no', { clause: 'd', on }],
  ['sprinklers there', { ...bare, sprinklered: true }, 'no', { clause: 'd', on }],
  ['detection there', { ...bare, detectionThroughout: true }, 'no', { clause: 'd', on }],
  ['cabinet', { ...bare, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'd', on }],
  ['not surveyed', {}, 'unknown', { clause: 'd', on }],
  ...meant('d', bare),
  [
    'NFPA 101 adopted beside the IBC',
    room,
    'yes',
    { clause: 'e', on, basis: { nfpa101: 2021 }, does: 'signOff must' },
  ],
  ['IBC alone', room, 'no', { clause: 'e', on }],
  [
    'NFPA 101, cabinet',
    { egressRole: 'noOccupiedSpace' },
    'no',
    { clause: 'e', on, basis: { nfpa101: 2021 } },
  ],
  ['NFPA 101, role not known', {}, 'unknown', { clause: 'e', on, basis: { nfpa101: 2021 } }],
  ...meant('e', room, { nfpa101: 2021 }),
  ...onEach(['magnet/safe/none', 'magnet/safe/buttonOnly'], 'no sensor', room, 'no', 'a'),
  ['IBC 2021', room, 'yes', { clause: 'f', on, does: ['emergencyLighting'] }],
  ['IBC 2024', room, 'yes', { clause: 'f', on, basis: { ibc: 2024 } }],
  ['IBC 2018 alone', room, 'no', { clause: 'f', on, basis: { ibc: 2018 } }],
  ['IBC 2018 and NFPA 101', room, 'yes', { clause: 'f', on, basis: { ibc: 2018, nfpa101: 2018 } }],
  ['neither code adopted', room, 'yes', { clause: 'f', on, basis: { ibc: null } }],
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'f', on }],
  ['role not known', {}, 'unknown', { clause: 'f', on }],
  ...meant('f', room),
);
