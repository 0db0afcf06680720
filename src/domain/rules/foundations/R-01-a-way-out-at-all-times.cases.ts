import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';

const noRelease = [
  'magnet/safe/none',
  'strikeMortise/secure/none',
  'strikeRim/safe/none',
  'boltSolenoid/secure/none',
  'glassPatchLock/safe/none',
];

const across = { egressRole: 'crossCorridor', exitDirection: 'both', doorType: 'single' } as const;

/** One of each device beside which, or as which, a lock stays on the leaf. */
const staysBeside = [
  'mechanicalLock/none/free',
  'delayedExitDevice/safe/delayed',
  'delayedMagnet/safe/delayed',
  'magnet/safe/controlled',
  'shearMagnet/safe/sensor',
  'boltSolenoid/safe/doorSwitch',
  'boltMotor/safe/lobby',
];

export const R01Cases = cases(
  ...onEach(staysBeside, 'both ways, function not surveyed', across, 'yes', {
    clause: 'c',
    does: ['passageFunction'],
  }),
  ...onEach(staysBeside, 'both ways, storeroom lock', { ...across, lockFunction: 'storeroom' }, 'yes', {
    clause: 'f',
    does: 'signOff must',
  }),
  [
    'nothing on the leaf that could lock, whatever was once entered',
    { ...across, lockFunction: 'storeroom', latch: 'pushPull' },
    'no',
    { clause: 'f', on: 'magnet/safe/sensor' },
  ],
  [
    'keyed inside, judged as a key lock',
    { ...across, lockFunction: 'storeroom' },
    'no',
    { clause: 'f', on: 'mechanicalLock/none/keyInside' },
  ],
  ...onEach(
    ['mechanicalLock/none/keyInside', 'mortiseLock/safe/controlled', 'noLock/none/free'],
    'both ways, not meant',
    across,
    'no',
    'c',
  ),
  [
    'both ways, passage',
    { ...across, lockFunction: 'passage' },
    'no',
    { clause: 'c', on: 'mechanicalLock/none/free' },
  ],
  [
    'both ways, storeroom lock',
    { ...across, lockFunction: 'storeroom' },
    'yes',
    { clause: 'c', on: 'mechanicalLock/none/free' },
  ],
  [
    'lobby with no other way out',
    { egressRole: 'elevatorLobby', lobbyHasOtherExit: false },
    'yes',
    { clause: 'c', on: 'mechanicalLock/none/free' },
  ],
  [
    'one way',
    { ...across, exitDirection: 'towardSecure' },
    'no',
    { clause: 'c', on: 'mechanicalLock/none/free' },
  ],
  [
    'direction not known',
    { egressRole: 'crossCorridor', doorType: 'single' },
    'unknown',
    { clause: 'c', on: 'mechanicalLock/none/free' },
  ],
  [
    'delayed magnet, both ways',
    across,
    'yes',
    { clause: 'd', on: 'delayedMagnet/safe/delayed', does: ['delayBothSides'] },
  ],
  ['delayed bar, both ways', across, 'no', { clause: 'd', on: 'delayedExitDevice/safe/delayed' }],
  [
    'delayed magnet, one way',
    { ...across, exitDirection: 'towardSecure' },
    'no',
    { clause: 'd', on: 'delayedMagnet/safe/delayed' },
  ],
  [
    'delayed magnet, direction not known',
    { egressRole: 'crossCorridor', doorType: 'single' },
    'unknown',
    { clause: 'd', on: 'delayedMagnet/safe/delayed' },
  ],
  ...(['e', 'f'] as const).flatMap((clause): readonly CaseRow[] => {
    const at = clause === 'e' ? { clause } : { clause, on: 'mechanicalLock/none/free' };
    return [
      ...(['storeroom', 'classroom', 'office', 'none'] as const).map(
        (lockFunction): CaseRow => [
          `both ways, ${lockFunction} lock`,
          { ...across, lockFunction },
          'yes',
          { ...at, does: clause === 'e' ? 'warn lockFunction' : 'signOff must' },
        ],
      ),
      ['both ways, passage', { ...across, lockFunction: 'passage' }, 'no', at],
      ['both ways, function not surveyed', across, 'unknown', at],
      [
        'one way, storeroom lock',
        { ...across, exitDirection: 'towardSecure', lockFunction: 'storeroom' },
        'no',
        at,
      ],
    ];
  }),
  [
    'a lock that takes the place of it',
    { ...across, lockFunction: 'storeroom' },
    'no',
    { clause: 'f', on: 'mortiseLock/safe/controlled' },
  ],
  ...onEach(
    ['mortiseLock/safe/stairReentry', 'magnet/safe/lobby'],
    'corridor, both ways',
    across,
    'yes',
    'b',
  ),
  ...onEach(noRelease, 'room door, nothing inside', { egressRole: 'exitAccess' }, 'yes', 'a'),
  ...onEach(
    noRelease.slice(0, 2),
    'cabinet that nobody can enter',
    { egressRole: 'noOccupiedSpace' },
    'no',
    'a',
  ),
  ['opening sealed off', { egressRole: 'sealedOff' }, 'no', { clause: 'a', on: 'magnet/safe/none' }],
  [
    'surplus door people can use',
    { egressRole: 'convenience' },
    'yes',
    { clause: 'a', on: 'magnet/safe/none', does: 'prohibit' },
  ],
  ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/none' }],
  ...onEach(
    ['magnet/safe/sensor', 'magnet/safe/alarmOnly', 'strikeRim/secure/free', 'detentionLock/none/attended'],
    'some release is there',
    { egressRole: 'exitAccess' },
    'no',
    'a',
  ),
  [
    'no code chosen: the federal workplace rule still holds',
    { egressRole: 'exitAccess' },
    'yes',
    { clause: 'a', on: 'magnet/safe/none', basis: { ibc: null } },
  ],
  ...(
    ['crossCorridor', 'exitAccess', 'exteriorExit', 'exteriorSpace', 'egressCourt', 'dischargeGate'] as const
  ).flatMap((egressRole): readonly CaseRow[] => [
    [
      `both ways, ${egressRole}`,
      { ...across, egressRole },
      'yes',
      { clause: 'b', on: 'mortiseLock/secure/free', does: 'prohibit' },
    ],
    [
      `one way, ${egressRole}`,
      { ...across, egressRole, exitDirection: 'towardSecure' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
  ]),
  [
    'across a corridor, direction not known',
    { egressRole: 'crossCorridor', doorType: 'single' },
    'unknown',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'room door, direction not known',
    { egressRole: 'exitAccess', roomUse: 'office', doorType: 'single' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'corridor left through a door, direction not known',
    { egressRole: 'exitAccess', roomUse: 'corridor', doorType: 'single' },
    'unknown',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  ...(['horizontalExit', 'elevatorLobby'] as const).map(
    (egressRole): CaseRow => [
      `both ways, ${egressRole} is judged by its own rule`,
      { ...across, egressRole, lobbyHasOtherExit: false },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
  ),
  [
    'a leaf for each way',
    { ...across, doorType: 'doubleEgressPair' },
    'no',
    { clause: 'b', on: 'mortiseLock/secure/free' },
  ],
  [
    'stair door',
    { ...across, egressRole: 'stairEntry' },
    'no',
    { clause: 'b', on: 'mortiseLock/safe/stairReentry' },
  ],
  ...onEach(
    [
      'strikeMortise/secure/free',
      'magnet/safe/sensor',
      'magnet/safe/doorSwitch',
      'mechanicalLock/none/keyInside',
    ],
    'across a corridor, both ways',
    across,
    'yes',
    'b',
  ),
  ...onEach(
    ['mechanicalLock/none/free', 'delayedExitDevice/safe/delayed', 'mortiseLock/safe/controlled'],
    'across a corridor, both ways',
    across,
    'no',
    'b',
  ),
);
