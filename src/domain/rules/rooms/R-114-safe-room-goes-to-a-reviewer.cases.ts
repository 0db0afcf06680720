import { cases } from '../rule.ts';

export const R114Cases = cases(
  ['vault', { roomUse: 'safeRoom' }, 'yes', { clause: 'a', does: 'refer' }],
  ['cash room', { roomUse: 'cashRoom' }, 'no', { clause: 'a' }],
  ['room not known', {}, 'unknown', { clause: 'a' }],
  ['vault', { roomUse: 'safeRoom' }, 'yes', { clause: 'b', does: 'signOff must' }],
  ['cash room', { roomUse: 'cashRoom' }, 'no', { clause: 'b' }],
  ['room not known', {}, 'unknown', { clause: 'b' }],
);
