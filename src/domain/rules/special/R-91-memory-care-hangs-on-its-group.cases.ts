import { cases } from '../rule.ts';

const memory = { roomUse: 'memoryCare', occupancyGroup: 'I-1.2' } as const;

export const R91Cases = cases(
  ['memory care in assisted living', memory, 'yes', { clause: 'a', does: 'signOff must' }],
  ['memory care in board and care', { ...memory, occupancyGroup: 'R-4' }, 'yes', { clause: 'a' }],
  ['memory care in a nursing home', { ...memory, occupancyGroup: 'I-2' }, 'no', { clause: 'a' }],
  ['office', { ...memory, roomUse: 'office' }, 'no', { clause: 'a' }],
  ['group not known', { roomUse: 'memoryCare' }, 'unknown', { clause: 'a' }],
  ['condition 1', { ...memory, occupancyGroup: 'I-1.1' }, 'yes', { clause: 'b', does: 'caution' }],
  ['condition 2', memory, 'no', { clause: 'b' }],
  ['lobby in condition 1', { roomUse: 'lobby', occupancyGroup: 'I-1.1' }, 'no', { clause: 'b' }],
  ['group not known', { roomUse: 'memoryCare' }, 'unknown', { clause: 'b' }],
  ['board and care', { ...memory, occupancyGroup: 'R-4' }, 'yes', { clause: 'c', does: 'caution' }],
  ['condition 1', { ...memory, occupancyGroup: 'I-1.1' }, 'no', { clause: 'c' }],
  ['condition 2', memory, 'no', { clause: 'c' }],
  ['nursing home', { ...memory, occupancyGroup: 'I-2' }, 'no', { clause: 'c' }],
  ['board and care, lobby', { roomUse: 'lobby', occupancyGroup: 'R-4' }, 'no', { clause: 'c' }],
  ['group not known', { roomUse: 'memoryCare' }, 'unknown', { clause: 'c' }],
);
