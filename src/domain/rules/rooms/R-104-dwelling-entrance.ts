import { under } from '../../codes/sections.ts';
import { all, any, atMost, ibc, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from '../special/conditions.ts';

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
});
