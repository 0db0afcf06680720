import { text, under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';
import { placeOfDetention } from './keyLocks.ts';

/** Second motions that other rules judge: unit entrances, bedrooms, old classrooms, detention. */
const judgedElsewhere = any(
  all(is('roomUse', 'dwellingEntrance'), is('occupancyGroup', 'R-1', 'R-2', 'R-3')),
  is('roomUse', 'dwellingBedroom'),
  all(nfpa101(), not(ibc()), is('roomUse', 'classroom'), is('workStatus', 'existing')),
  placeOfDetention,
);

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

export const R08 = defineRule({
  id: 'R-08',
  title: 'One motion opens the door',
  family: 'foundations',
  book: 'ibc',
  cites: [under('unlatching'), under('unlatchingNfpa'), text('osha', '1910.36(d)', 'Exit doors')],
  confidence: 'secondary',
  note: 'Second motions at unit entrances, bedrooms in units and existing classrooms are left to R-104, R-164 and R-102.',
  why: 'A frightened person, or one in smoke, tries one thing; a second bolt turns the door into a wall.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('latch', 'boredPlusDeadbolt'), not(judgedElsewhere)),
      of: { family: ['strike', 'magnet', 'bolt', 'delayed'] },
      says: 'This device leaves the latch and a separate deadbolt on the leaf, so leaving takes two operations; it must take one.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(
        yes('isEgress'),
        any(
          is('existingArrangement', 'padlock'),
          all(
            any(
              is('latch', 'boredPlusDeadbolt'),
              is('existingArrangement', 'deadboltPlusLatch', 'slideBolt'),
            ),
            not(judgedElsewhere),
          ),
        ),
      ),
      says: 'Remove the second bolt, chain or padlock, or install a lock that retracts latch and bolt together with one turn of the lever.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(yes('isEgress'), is('latch', 'mortiseDeadbolt')),
      of: { family: ['strike', 'lock', 'battery', 'mechanical'], release: ['free'] },
      says: 'One motion: the inside lever must retract latch and deadbolt together. Throw the bolt and try it, and remove any thumbturn that has to be operated first.',
    },
  ],
  cases: cases(
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
  ),
});
