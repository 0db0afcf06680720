import { under } from '../../codes/sections.ts';
import { all, any, is, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from './conditions.ts';

/** The one door that people leave a room by is its main door, whatever the survey calls it. */
const sideDoor = all(no('mainDoor'), no('planOnlyDoor'));

export const R82 = defineRule({
  id: 'R-82',
  title: 'Delayed egress in assembly use only at courtroom side doors',
  family: 'special',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'secondary',
  note: 'What NFPA 101 leaves open (doors other than the main entrance, airport terminals) is from general knowledge. A courtroom in Group B is held to the same two conditions in every edition, the strict reading for 2018.',
  why: 'A crowd that meets a locked door keeps pushing, and fifteen seconds is enough for people to be crushed.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(
        not(nfpaAlone),
        yes('groupA'),
        not(all(is('occupancyGroup', 'A-3'), is('roomUse', 'courtroom'), sideDoor, yes('fullSprinklers'))),
      ),
      of: { release: ['delayed'] },
      says: 'In assembly use only a courtroom in A-3 may have delayed egress, at a door that is not its main one, in a building sprinklered throughout.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(
        not(nfpaAlone),
        is('occupancyGroup', 'B'),
        is('roomUse', 'courtroom'),
        not(all(sideDoor, yes('fullSprinklers'))),
      ),
      of: { release: ['delayed'] },
      says: 'A courtroom may have delayed egress only at a door that is not its main one, in a building sprinklered throughout.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(nfpa101(), yes('groupA'), any(yes('mainDoor'), yes('planOnlyDoor'))),
      of: { release: ['delayed'] },
      says: 'The main entrance of an assembly space may not have delayed egress.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(nfpaAlone, yes('groupA')),
      of: { release: ['delayed'] },
      says: 'Under NFPA 101 the assembly chapter decides which doors may have delayed egress; a reviewer reads it for this door.',
    },
  ],
});
