import { cases } from '../rule.ts';

const door = { egressRole: 'stairEntry', reentryFloorTraps: true } as const;

export const R128Cases = cases(
  ['tenant doors close the floor', door, 'yes', { clause: 'a', does: 'caution' }],
  ['another exit is open', { ...door, reentryFloorTraps: false }, 'no', { clause: 'a' }],
  ['corridor door', { ...door, egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
  ['not asked', { egressRole: 'stairEntry' }, 'unknown', { clause: 'a' }],
  ['tenant doors close the floor', door, 'yes', { clause: 'b', does: 'signOff should' }],
  ['another exit is open', { ...door, reentryFloorTraps: false }, 'no', { clause: 'b' }],
  ['corridor door', { ...door, egressRole: 'exitAccess' }, 'no', { clause: 'b' }],
  ['not asked', { egressRole: 'stairEntry' }, 'unknown', { clause: 'b' }],
);
