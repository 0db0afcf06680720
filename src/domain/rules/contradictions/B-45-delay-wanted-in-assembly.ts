import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, no, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B45 = defineRule({
  id: 'B-45',
  title: 'Delayed egress wanted in an assembly',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('delayedEgress')],
  confidence: 'project',
  note: 'NFPA 101 on its own leaves some assembly doors open to a reviewer, so this speaks where the IBC is adopted.',
  why: 'A crowd held at a door piles up against it.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishDelayedEgress',
      severity: 'warn',
      when: all(
        ibc(),
        yes('wishDelayedEgress'),
        yes('groupA'),
        not(
          all(is('roomUse', 'courtroom'), is('occupancyGroup', 'A-3'), no('mainDoor'), yes('fullSprinklers')),
        ),
      ),
      says: 'Delayed egress is wanted in {occupancyGroup}; among assemblies only the side doors of a courtroom in a sprinklered building may have it. Check the group or withdraw the request.',
    },
  ],
  cases: cases(
    [
      'theater or restaurant',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-1',
        roomUse: 'conference',
        mainDoor: false,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'yes',
      { does: 'warn wishDelayedEgress' },
    ],
    [
      'theater or restaurant',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-2',
        roomUse: 'conference',
        mainDoor: false,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'yes',
    ],
    [
      'theater or restaurant',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-5',
        roomUse: 'conference',
        mainDoor: false,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'yes',
    ],
    [
      'side door of a courtroom',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-3',
        roomUse: 'courtroom',
        mainDoor: false,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'no',
    ],
    [
      'main door of a courtroom',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-3',
        roomUse: 'courtroom',
        mainDoor: true,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'yes',
    ],
    [
      'courtroom without sprinklers',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-3',
        roomUse: 'courtroom',
        mainDoor: false,
        sprinklered: false,
        sprinklerKind: 'nfpa13',
      },
      'yes',
    ],
    [
      'courtroom in the wrong group',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-2',
        roomUse: 'courtroom',
        mainDoor: false,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'yes',
    ],
    [
      'library',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-3',
        roomUse: 'other',
        mainDoor: false,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'yes',
    ],
    [
      'courtroom of Group B',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'B',
        roomUse: 'courtroom',
        mainDoor: true,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'no',
    ],
    [
      'not wanted',
      {
        wishDelayedEgress: false,
        occupancyGroup: 'A-1',
        roomUse: 'conference',
        mainDoor: false,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'no',
    ],
    [
      'NFPA 101 alone',
      {
        wishDelayedEgress: true,
        occupancyGroup: 'A-1',
        roomUse: 'conference',
        mainDoor: false,
        sprinklered: true,
        sprinklerKind: 'nfpa13',
      },
      'no',
      { basis: { ibc: null, nfpa101: 2021 } },
    ],
    ['group not known', { wishDelayedEgress: true, roomUse: 'conference' }, 'unknown'],
  ),
});
