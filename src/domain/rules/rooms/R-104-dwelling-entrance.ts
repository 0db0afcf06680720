import { under } from '../../codes/sections.ts';
import { all, any, atMost, ibc, is, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { nfpaAlone } from '../special/conditions.ts';
import { without } from '../without.ts';

const on = 'strikeCylindrical/secure/free';
const alone = { ibc: null, nfpa101: 2021 } as const;
const unit = {
  egressRole: 'exitAccess',
  roomUse: 'dwellingEntrance',
  occupancyGroup: 'R-2',
  latch: 'boredPlusDeadbolt',
  unitOccupantLoad: 4,
} as const;
const large = { ...unit, unitOccupantLoad: 11 } as const;

const unitEntrance = all(is('roomUse', 'dwellingEntrance'), is('occupancyGroup', 'R-1', 'R-2', 'R-3'));
const secondBolt = any(
  is('latch', 'boredPlusDeadbolt'),
  is('existingArrangement', 'deadboltPlusLatch', 'slideBolt'),
);
const boltAccepted = any(
  all(ibc({ to: 2021 }), atMost('unitOccupantLoad', 'unitBoltLoadIbc')),
  all(ibc({ from: 2024, readTo: 2024 }), yes('unitSingleExit')),
  nfpaAlone,
);

/** The condition of each edition, for a clause that speaks when the second bolt is accepted (or when it is not). */
function byEdition(clause: string, whenAccepted: boolean, candidate?: string): readonly CaseRow[] {
  const at = { clause, ...(candidate === undefined ? {} : { on: candidate }) };
  const yesIf = (accepted: boolean) => (accepted === whenAccepted ? 'yes' : 'no');
  return [
    ['unit for 10, IBC 2021', { ...unit, unitOccupantLoad: 10 }, yesIf(true), at],
    ['unit for 11, IBC 2021', large, yesIf(false), at],
    ['unit for 11 with one exit, IBC 2021', { ...large, unitSingleExit: true }, yesIf(false), at],
    [
      'unit for 10, IBC 2018',
      { ...unit, unitOccupantLoad: 10 },
      yesIf(true),
      { ...at, basis: { ibc: 2018 } },
    ],
    ['unit for 11, IBC 2018', large, yesIf(false), { ...at, basis: { ibc: 2018 } }],
    [
      'one-exit unit for 11, IBC 2024',
      { ...large, unitSingleExit: true },
      yesIf(true),
      { ...at, basis: { ibc: 2024 } },
    ],
    [
      'two-exit unit for 4, IBC 2024',
      { ...unit, unitSingleExit: false },
      yesIf(false),
      { ...at, basis: { ibc: 2024 } },
    ],
    ['unit for 11, NFPA 101 alone', large, yesIf(true), { ...at, basis: alone }],
    ['unit for 11, both books', large, yesIf(false), { ...at, basis: { nfpa101: 2021 } }],
    ['unit for 11, no book', large, yesIf(false), { ...at, basis: { ibc: null } }],
    ['load not known', without(unit, 'unitOccupantLoad'), 'unknown', at],
  ];
}
/** Units and doors the clause does and does not speak of; `facts` is an apartment it says yes to. */
function around(clause: string, facts: typeof unit | typeof large, candidate?: string): readonly CaseRow[] {
  const at = { clause, ...(candidate === undefined ? {} : { on: candidate }) };
  return [
    ['hotel room', { ...facts, occupancyGroup: 'R-1' }, 'yes', at],
    ['house', { ...facts, occupancyGroup: 'R-3' }, 'yes', at],
    ['board-and-care unit', { ...facts, occupancyGroup: 'R-4' }, 'no', at],
    ['assisted-living unit', { ...facts, occupancyGroup: 'I-1.1' }, 'no', at],
    ['office of the building', { ...facts, roomUse: 'office' }, 'no', at],
    ['one motion', { ...facts, latch: 'mortiseDeadbolt', existingArrangement: 'freeLever' }, 'no', at],
  ] satisfies readonly CaseRow[];
}

export const R104 = defineRule({
  id: 'R-104',
  title: 'Entrance of a dwelling or sleeping unit',
  family: 'rooms',
  book: 'ibc',
  cites: [under('locksAndLatches'), under('unlatching'), under('residentialLocksNfpa')],
  confidence: 'secondary',
  note: 'The load of 10 is read for 2015 and from general knowledge for 2018 and 2021; the single-exit condition of 2024 was read as quoted. Board and care (R-4) is held to one motion, the safe side.',
  why: 'People at home know their own bolt, but a key or tool from the inside is not allowed.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: is('roomUse', 'dwellingEntrance'),
      of: { release: ['free'] },
      says: 'A lock that always opens from inside needs no special listing and no release here; best retracts latch and deadbolt with one motion.',
    },
    {
      key: 'b',
      effect: 'permit',
      when: all(unitEntrance, secondBolt, boltAccepted),
      says: 'One night latch, deadbolt or chain may stay as a second motion, worked from inside without key or tool.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(unitEntrance, is('latch', 'boredPlusDeadbolt'), not(boltAccepted)),
      of: { family: ['strike', 'magnet', 'bolt', 'delayed'] },
      says: 'This device leaves the separate deadbolt in use, and a unit of this size or with more than one exit may not have a second motion.',
    },
    {
      key: 'd',
      effect: 'modify',
      trade: 'locksmith',
      when: all(unitEntrance, secondBolt, not(boltAccepted)),
      says: 'Remove the second bolt, or install a lock that retracts latch and bolt with one motion.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(is('roomUse', 'dwellingEntrance'), yes('fireRated')),
      says: 'The entrance is in a rated wall: it needs a closer and a latch, whatever lock is chosen.',
    },
  ],
  cases: cases(
    ['apartment entrance', unit, 'yes', { clause: 'a', on, does: 'permit' }],
    ['office', { roomUse: 'office' }, 'no', { clause: 'a', on }],
    ['room not known', {}, 'unknown', { clause: 'a', on }],
    ['a magnet is no such lock', unit, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
    ...byEdition('b', true),
    ...around('b', unit),
    [
      'chain on the door',
      { ...unit, latch: 'bored', existingArrangement: 'slideBolt' },
      'yes',
      { clause: 'b', does: 'permit' },
    ],
    [
      'deadbolt found',
      { ...unit, latch: 'bored', existingArrangement: 'deadboltPlusLatch' },
      'yes',
      { clause: 'b' },
    ],
    [
      'deadbolt surveyed, nothing else found',
      { ...unit, existingArrangement: 'freeLever' },
      'yes',
      { clause: 'b' },
    ],
    ...byEdition('c', false, on),
    ...around('c', large, on),
    ...onEach(
      ['magnet/safe/sensor', 'boltMotor/safe/sensor', 'delayedMagnet/safe/delayed'],
      'large unit',
      large,
      'yes',
      { clause: 'c', does: 'prohibit' },
    ),
    ['a new lock replaces both', large, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
    ...byEdition('d', false),
    ...around('d', large),
    [
      'chain on the door',
      { ...large, latch: 'bored', existingArrangement: 'slideBolt' },
      'yes',
      { clause: 'd', does: 'modify locksmith' },
    ],
    [
      'deadbolt found',
      { ...large, latch: 'bored', existingArrangement: 'deadboltPlusLatch' },
      'yes',
      { clause: 'd' },
    ],
    [
      'deadbolt surveyed, nothing else found',
      { ...large, existingArrangement: 'freeLever' },
      'yes',
      { clause: 'd' },
    ],
    ['rated entrance', { ...unit, fireRatingMin: 20 }, 'yes', { clause: 'e', does: 'caution' }],
    ['unrated entrance', { ...unit, fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause: 'e' }],
    ['rated office', { roomUse: 'office', fireRatingMin: 20 }, 'no', { clause: 'e' }],
    ['rating not known', unit, 'unknown', { clause: 'e' }],
  ),
});
