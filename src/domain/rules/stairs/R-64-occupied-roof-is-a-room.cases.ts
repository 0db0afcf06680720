import { cases } from '../rule.ts';

const roof = { egressRole: 'roofDoor', roofUse: 'occupied' } as const;

export const R64Cases = cases(
  ['roof terrace', roof, 'yes', { clause: 'a', does: 'signOff must' }],
  ['unoccupied roof', { ...roof, roofUse: 'unoccupied' }, 'no', { clause: 'a' }],
  ['office door', { ...roof, egressRole: 'exitAccess' }, 'no', { clause: 'a' }],
  ['use of the roof not known', { egressRole: 'roofDoor' }, 'unknown', { clause: 'a' }],
  ['roof terrace', roof, 'yes', { clause: 'b', does: 'caution' }],
  ['unoccupied roof', { ...roof, roofUse: 'unoccupied' }, 'no', { clause: 'b' }],
  ['office door', { ...roof, egressRole: 'exitAccess' }, 'no', { clause: 'b' }],
  ['use of the roof not known', { egressRole: 'roofDoor' }, 'unknown', { clause: 'b' }],
);
