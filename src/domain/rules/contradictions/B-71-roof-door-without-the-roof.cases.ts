import { cases } from '../rule.ts';

export const B71Cases = cases(
  ['not asked', { egressRole: 'roofDoor' }, 'yes', { does: 'warn roofUse' }],
  ['asked', { egressRole: 'roofDoor', roofUse: 'unoccupied' }, 'no'],
  ['room door', { egressRole: 'exitAccess' }, 'no'],
  ['role not known', {}, 'unknown'],
);
