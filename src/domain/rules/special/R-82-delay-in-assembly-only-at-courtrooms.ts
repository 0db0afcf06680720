import { under } from '../../codes/sections.ts';
import { all, any, is, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';
import { nfpaAlone } from './conditions.ts';

/** The one door that people leave a room by is its main door, whatever the survey calls it. */
const sideDoor = all(no('mainDoor'), no('planOnlyDoor'));
const on = 'delayedExitDevice/safe/delayed';
const courtroom = {
  occupancyGroup: 'A-3',
  roomUse: 'courtroom',
  mainDoor: false,
  sprinklered: true,
  sprinklerKind: 'nfpa13',
} as const;
const businessCourtroom = { ...courtroom, occupancyGroup: 'B' } as const;
const alone = { ibc: null, nfpa101: 2021 } as const;

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
  cases: cases(
    [
      'restaurant, A-2',
      { occupancyGroup: 'A-2', roomUse: 'conference' },
      'yes',
      { clause: 'a', on, does: 'prohibit' },
    ],
    ['courtroom side door, A-3, sprinklered', courtroom, 'no', { clause: 'a', on }],
    ['courtroom classed A-1', { ...courtroom, occupancyGroup: 'A-1' }, 'yes', { clause: 'a', on }],
    ['church hall, A-3', { ...courtroom, roomUse: 'conference' }, 'yes', { clause: 'a', on }],
    ['main door of the courtroom', { ...courtroom, mainDoor: true }, 'yes', { clause: 'a', on }],
    ['its only door', { ...courtroom, planOnlyDoor: true }, 'yes', { clause: 'a', on }],
    ['its only door, B', { ...businessCourtroom, planOnlyDoor: true }, 'yes', { clause: 'b', on }],
    [
      'hall with one door, NFPA 101',
      { occupancyGroup: 'A-3', mainDoor: false, planOnlyDoor: true },
      'yes',
      { clause: 'c', on, basis: alone },
    ],
    [
      'courtroom without sprinklers',
      { ...courtroom, sprinklered: false, sprinklerKind: 'nfpa13' },
      'yes',
      { clause: 'a', on },
    ],
    ['sprinklers not known', without(courtroom, 'sprinklered'), 'unknown', { clause: 'a', on }],
    ['office, B', { occupancyGroup: 'B' }, 'no', { clause: 'a', on }],
    [
      'restaurant, NFPA 101 alone',
      { occupancyGroup: 'A-2', roomUse: 'conference' },
      'no',
      { clause: 'a', on, basis: alone },
    ],
    [
      'restaurant, both books',
      { occupancyGroup: 'A-2', roomUse: 'conference' },
      'yes',
      { clause: 'a', on, basis: { nfpa101: 2021 } },
    ],
    [
      'restaurant, no book chosen',
      { occupancyGroup: 'A-2', roomUse: 'conference' },
      'yes',
      { clause: 'a', on, basis: { ibc: null } },
    ],
    [
      'restaurant, IBC 2018',
      { occupancyGroup: 'A-2', roomUse: 'conference' },
      'yes',
      { clause: 'a', on, basis: { ibc: 2018 } },
    ],
    [
      'a free bar is not meant',
      { occupancyGroup: 'A-2', roomUse: 'conference' },
      'no',
      { clause: 'a', on: 'exitTrim/secure/free' },
    ],
    ['small courtroom in B, side door', businessCourtroom, 'no', { clause: 'b', on }],
    [
      'small courtroom in B, main door',
      { ...businessCourtroom, mainDoor: true },
      'yes',
      { clause: 'b', on, does: 'prohibit' },
    ],
    [
      'small courtroom in B, no sprinklers',
      { ...businessCourtroom, sprinklered: false, sprinklerKind: 'nfpa13' },
      'yes',
      { clause: 'b', on },
    ],
    ['main door or not unknown', without(businessCourtroom, 'mainDoor'), 'unknown', { clause: 'b', on }],
    [
      'office main door',
      { ...businessCourtroom, roomUse: 'office', mainDoor: true },
      'no',
      { clause: 'b', on },
    ],
    ['A-3 courtroom is clause a', { ...courtroom, mainDoor: true }, 'no', { clause: 'b', on }],
    [
      'B courtroom main door, NFPA 101 alone',
      { ...businessCourtroom, mainDoor: true },
      'no',
      { clause: 'b', on, basis: alone },
    ],
    [
      'B courtroom main door, both books',
      { ...businessCourtroom, mainDoor: true },
      'yes',
      { clause: 'b', on, basis: { nfpa101: 2021 } },
    ],
    [
      'B courtroom main door, no book',
      { ...businessCourtroom, mainDoor: true },
      'yes',
      { clause: 'b', on, basis: { ibc: null } },
    ],
    [
      'a free lever at the courtroom',
      { ...businessCourtroom, mainDoor: true },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'theater main entrance',
      { occupancyGroup: 'A-1', mainDoor: true },
      'yes',
      { clause: 'c', on, basis: alone, does: 'prohibit' },
    ],
    [
      'theater side door',
      { occupancyGroup: 'A-1', mainDoor: false },
      'no',
      { clause: 'c', on, basis: alone },
    ],
    ['shop main entrance', { occupancyGroup: 'M', mainDoor: true }, 'no', { clause: 'c', on, basis: alone }],
    [
      'theater main entrance, NFPA 101 not adopted',
      { occupancyGroup: 'A-1', mainDoor: true },
      'no',
      { clause: 'c', on },
    ],
    ['theater, main door not known', { occupancyGroup: 'A-1' }, 'unknown', { clause: 'c', on, basis: alone }],
    [
      'theater main entrance, free bar',
      { occupancyGroup: 'A-1', mainDoor: true },
      'no',
      { clause: 'c', on: 'exitTrim/secure/free', basis: alone },
    ],
    [
      'airport terminal, NFPA 101 alone',
      { occupancyGroup: 'A-3' },
      'yes',
      { clause: 'd', on, basis: alone, does: 'signOff must' },
    ],
    [
      'airport terminal, both books',
      { occupancyGroup: 'A-3' },
      'no',
      { clause: 'd', on, basis: { nfpa101: 2021 } },
    ],
    ['airport terminal, no book', { occupancyGroup: 'A-3' }, 'no', { clause: 'd', on, basis: { ibc: null } }],
    ['office, NFPA 101 alone', { occupancyGroup: 'B' }, 'no', { clause: 'd', on, basis: alone }],
    ['group not known', {}, 'unknown', { clause: 'd', on, basis: alone }],
    [
      'a free bar in the terminal',
      { occupancyGroup: 'A-3' },
      'no',
      { clause: 'd', on: 'exitTrim/secure/free', basis: alone },
    ],
  ),
});
