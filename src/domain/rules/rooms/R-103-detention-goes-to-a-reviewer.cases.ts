import { cases } from '../rule.ts';

export const R103Cases = cases(
  ['holding room', { roomUse: 'detention' }, 'yes', { clause: 'a', does: 'refer' }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'a' }],
  ['room not known', {}, 'unknown', { clause: 'a' }],
  ['holding room', { roomUse: 'detention' }, 'yes', { clause: 'b', does: 'signOff must' }],
  ['office', { roomUse: 'office' }, 'no', { clause: 'b' }],
  ['room not known', {}, 'unknown', { clause: 'b' }],
);
