import { cases } from '../rule.ts';
import { without } from '../without.ts';

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

export const R82Cases = cases(
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
  ['theater side door', { occupancyGroup: 'A-1', mainDoor: false }, 'no', { clause: 'c', on, basis: alone }],
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
);
