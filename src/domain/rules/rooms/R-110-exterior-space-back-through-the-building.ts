import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, not, over } from '../../logic/condition.ts';
import { exteriorSpace as court } from '../foundations/keyLocks.ts';
import { defineRule } from '../rule.ts';

const ownBalcony = is('roomUse', 'unitBalcony', 'officeTerrace');

export const R110 = defineRule({
  id: 'R-110',
  title: 'Court, terrace or occupied roof whose egress leads back inside',
  family: 'rooms',
  book: 'ibc',
  cites: [under('exteriorSpaces'), under('freeEgressIbc')],
  confidence: 'secondary',
  note: 'Window and sign wording are from general knowledge. That the case reaches roof terraces was read second-hand. NFPA 101 lets a key hold only the main entrance that its chapters name: for 2018 from general knowledge, for 2021 and 2024 no such case was seen; where it is adopted the lock is refused, the safe side.',
  why: 'People locked out on a terrace have nowhere to go when the fire is below them.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      // With both books the stricter governs: what NFPA 101 alone does not know, it does not know beside the IBC.
      when: all(court, any(not(ibc({ from: 2021, readTo: 2024 })), nfpa101())),
      of: { release: ['keyInside'] },
      says: 'An adopted code has no provision for a key lock against people coming back inside; this door opens freely from the outdoor side.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(
        ibc({ from: 2021, readTo: 2024 }),
        court,
        not(ownBalcony),
        over('occupantLoad', 'exteriorSpaceLoadIbc'),
      ),
      of: { release: ['keyInside'] },
      says: 'More than 300 people may be out there, too many for a key lock on the way back inside.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(ibc({ from: 2021, readTo: 2024 }), court, not(ownBalcony)),
      of: { release: ['keyInside'] },
      items: ['keyLockMainDoor', 'twoWayCommunication', 'glazedOpening', 'signOutdoor', 'postedLoad'],
      says: 'The key lock comes with a posted load, a weatherproof phone or intercom at one door, clear glass of 5 ft² at every such door, a lock readily seen as locked and the sign inside.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: court,
      of: { not: { release: ['free'] } },
      says: 'A reviewer signs for any lock that can keep people out on the terrace, and where NFPA 101 is adopted for whether it accepts one.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(court, nfpa101()),
      of: { release: ['keyInside'] },
      says: 'No key lock for outdoor spaces was seen in NFPA 101.',
    },
  ],
});
