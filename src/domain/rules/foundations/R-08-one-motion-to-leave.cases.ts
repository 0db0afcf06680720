import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';

const office = { egressRole: 'exitAccess', roomUse: 'office', occupancyGroup: 'B' } as const;

const nfpaOnly = { ibc: null, nfpa101: 2021 } as const;

/** Every exception, once per clause; `bad` is what makes the door a two-motion door. */
function exceptions(clause: string, bad: Record<string, string>, on?: string): readonly CaseRow[] {
  const at = on === undefined ? { clause } : { clause, on };
  return [
    ['office door', { ...office, ...bad }, 'yes', at],
    ['cabinet', { ...office, ...bad, egressRole: 'noOccupiedSpace' }, 'no', at],
    ['role not known', { roomUse: 'office', occupancyGroup: 'B', ...bad }, 'unknown', at],
    [
      'hotel room entrance',
      { ...office, ...bad, roomUse: 'dwellingEntrance', occupancyGroup: 'R-1' },
      'no',
      at,
    ],
    [
      'apartment entrance',
      { ...office, ...bad, roomUse: 'dwellingEntrance', occupancyGroup: 'R-2' },
      'no',
      at,
    ],
    ['house entrance', { ...office, ...bad, roomUse: 'dwellingEntrance', occupancyGroup: 'R-3' }, 'no', at],
    [
      'board-and-care unit has no exception',
      { ...office, ...bad, roomUse: 'dwellingEntrance', occupancyGroup: 'R-4' },
      'yes',
      at,
    ],
    [
      'unit entrance in assisted living has none',
      { ...office, ...bad, roomUse: 'dwellingEntrance', occupancyGroup: 'I-1.2' },
      'yes',
      at,
    ],
    [
      'storage room of an apartment house has none',
      { ...office, ...bad, roomUse: 'storage', occupancyGroup: 'R-2' },
      'yes',
      at,
    ],
    [
      'bedroom inside a unit',
      { ...office, ...bad, roomUse: 'dwellingBedroom', occupancyGroup: 'R-2' },
      'no',
      at,
    ],
    ['single toilet', { ...office, ...bad, roomUse: 'singleToilet' }, 'yes', at],
    ['detention room', { ...office, ...bad, roomUse: 'detention' }, 'no', at],
    ['office in a prison', { ...office, ...bad, occupancyGroup: 'I-3' }, 'no', at],
    [
      'old classroom under NFPA 101 alone',
      { ...office, ...bad, roomUse: 'classroom', occupancyGroup: 'E', workStatus: 'existing' },
      'no',
      { ...at, basis: nfpaOnly },
    ],
    [
      'new classroom under NFPA 101 alone',
      { ...office, ...bad, roomUse: 'classroom', occupancyGroup: 'E', workStatus: 'new' },
      'yes',
      { ...at, basis: nfpaOnly },
    ],
    [
      'altered classroom under NFPA 101 alone',
      { ...office, ...bad, roomUse: 'classroom', occupancyGroup: 'E', workStatus: 'altered' },
      'yes',
      { ...at, basis: nfpaOnly },
    ],
    [
      'old office under NFPA 101 alone',
      { ...office, ...bad, workStatus: 'existing' },
      'yes',
      { ...at, basis: nfpaOnly },
    ],
    [
      'old classroom under both codes',
      { ...office, ...bad, roomUse: 'classroom', occupancyGroup: 'E', workStatus: 'existing' },
      'yes',
      { ...at, basis: { ibc: 2021, nfpa101: 2021 } },
    ],
    [
      'old classroom under neither code',
      { ...office, ...bad, roomUse: 'classroom', occupancyGroup: 'E', workStatus: 'existing' },
      'yes',
      { ...at, basis: { ibc: null } },
    ],
  ];
}

export const R08Cases = cases(
  ...exceptions('a', { latch: 'boredPlusDeadbolt' }, 'magnet/safe/sensor'),
  ...onEach(
    ['strikeCylindrical/secure/free', 'boltMotor/safe/sensor', 'delayedMagnet/safe/delayed'],
    'two motions stay',
    { ...office, latch: 'boredPlusDeadbolt' },
    'yes',
    { clause: 'a', does: 'prohibit' },
  ),
  ...onEach(
    ['mortiseLock/secure/free', 'mechanicalLock/none/free', 'batteryLock/asIs/free'],
    'the lock itself is replaced',
    { ...office, latch: 'boredPlusDeadbolt' },
    'no',
    'a',
  ),
  [
    'one lever draws both',
    { ...office, latch: 'mortiseDeadbolt' },
    'no',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  ['latch not known', office, 'unknown', { clause: 'a', on: 'magnet/safe/sensor' }],
  ...exceptions('b', { latch: 'boredPlusDeadbolt', existingArrangement: 'freeLever' }),
  ...exceptions('b', { latch: 'bored', existingArrangement: 'deadboltPlusLatch' }),
  ...exceptions('b', { latch: 'bored', existingArrangement: 'slideBolt' }),
  [
    'padlock at the entrance of a unit',
    {
      ...office,
      latch: 'bored',
      roomUse: 'dwellingEntrance',
      occupancyGroup: 'R-2',
      unitOccupantLoad: 4,
      existingArrangement: 'padlock',
    },
    'yes',
    { clause: 'b' },
  ],
  [
    'padlock on a cabinet',
    { ...office, egressRole: 'noOccupiedSpace', latch: 'bored', existingArrangement: 'padlock' },
    'no',
    { clause: 'b' },
  ],
  [
    'chain on the door',
    { ...office, latch: 'bored', existingArrangement: 'padlock' },
    'yes',
    { clause: 'b', does: 'modify locksmith' },
  ],
  ['plain lever', { ...office, latch: 'bored', existingArrangement: 'freeLever' }, 'no', { clause: 'b' }],
  ...onEach(
    [
      'strikeMortise/secure/free',
      'mortiseLock/secure/free',
      'batteryLock/asIs/free',
      'mechanicalLock/none/free',
    ],
    'latch and deadbolt in one case',
    { ...office, latch: 'mortiseDeadbolt' },
    'yes',
    { clause: 'c', does: 'caution' },
  ),
  ...onEach(
    ['magnet/safe/sensor', 'mechanicalLock/none/keyInside', 'exitTrim/secure/free'],
    'latch and deadbolt in one case',
    { ...office, latch: 'mortiseDeadbolt' },
    'no',
    'c',
  ),
  ['plain latch', { ...office, latch: 'mortise' }, 'no', { clause: 'c', on: 'mechanicalLock/none/free' }],
  [
    'cabinet',
    { egressRole: 'noOccupiedSpace', latch: 'mortiseDeadbolt' },
    'no',
    { clause: 'c', on: 'mechanicalLock/none/free' },
  ],
  ['latch not known', office, 'unknown', { clause: 'c', on: 'mechanicalLock/none/free' }],
);
