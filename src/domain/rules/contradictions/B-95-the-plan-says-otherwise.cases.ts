import { cases } from '../rule.ts';

export const B95Cases = cases(
  [
    'only door, delay wanted',
    { planOnlyDoor: true, mainDoor: false, wishDelayedEgress: true },
    'yes',
    { clause: 'a', does: 'warn mainDoor' },
  ],
  ['hall', { planOnlyDoor: true, mainDoor: false, occupancyGroup: 'A-3' }, 'yes', { clause: 'a' }],
  [
    'office, no delay',
    { planOnlyDoor: true, mainDoor: false, occupancyGroup: 'B', wishDelayedEgress: false },
    'no',
    { clause: 'a' },
  ],
  ['said so', { planOnlyDoor: true, mainDoor: true, wishDelayedEgress: true }, 'no', { clause: 'a' }],
  ['two doors', { mainDoor: false, wishDelayedEgress: true }, 'no', { clause: 'a' }],
  ['not asked', { planOnlyDoor: true, wishDelayedEgress: true }, 'unknown', { clause: 'a' }],
  ['60 people', { planLoadLarger: true }, 'yes', { clause: 'b', does: 'warn occupantLoad' }],
  ['load agrees', {}, 'no', { clause: 'b' }],
  ['café', { planGroupStricter: true }, 'yes', { clause: 'c', does: 'warn occupancyGroup' }],
  ['group agrees', {}, 'no', { clause: 'c' }],
  ['two areas', { planAreaDiffers: true }, 'yes', { clause: 'd', does: 'warn roomAreaFt2' }],
  ['one area', {}, 'no', { clause: 'd' }],
  ['lobby', { planNoLobbyExit: true }, 'yes', { clause: 'e', does: 'warn lobbyHasOtherExit' }],
  ['lobby with a stair', {}, 'no', { clause: 'e' }],
  ['dock door alone', { planNoOtherDoor: true }, 'yes', { clause: 'f', does: 'refuse egressRole' }],
  ['dock door and a man door', {}, 'no', { clause: 'f' }],
  ['40 given, 56 by area', { planSpaceLoads: true }, 'yes', { clause: 'g', does: 'warn occupantLoad' }],
  ['one load', {}, 'no', { clause: 'g' }],
);
