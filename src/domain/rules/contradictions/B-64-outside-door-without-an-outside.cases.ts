import { cases } from '../rule.ts';

export const B64Cases = cases(
  ['no side outdoors', { egressRole: 'exteriorExit', exterior: false }, 'yes', { does: 'warn exterior' }],
  ['no side outdoors', { egressRole: 'dischargeGate', exterior: false }, 'yes'],
  ['no side outdoors', { egressRole: 'egressCourt', exterior: false }, 'yes'],
  ['no side outdoors', { egressRole: 'roofDoor', exterior: false }, 'yes'],
  ['no side outdoors', { egressRole: 'exteriorSpace', exterior: false }, 'yes'],
  ['outdoors', { egressRole: 'exteriorExit', exterior: true }, 'no'],
  ['room door', { egressRole: 'exitAccess', exterior: false }, 'no'],
  ['place not known', { egressRole: 'exteriorExit' }, 'unknown'],
);
