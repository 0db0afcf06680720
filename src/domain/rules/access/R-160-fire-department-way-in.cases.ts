import { cases } from '../rule.ts';

export const R160Cases = cases(
  [
    'outside door',
    { fireDepartmentAccess: true, exterior: true, doorType: 'single', egressRole: 'exteriorExit' },
    'yes',
    { does: 'caution' },
  ],
  [
    'gate',
    { fireDepartmentAccess: true, exterior: false, doorType: 'gateSwing', egressRole: 'sealedOff' },
    'yes',
  ],
  [
    'gate',
    { fireDepartmentAccess: true, exterior: false, doorType: 'gateSlide', egressRole: 'sealedOff' },
    'yes',
  ],
  [
    'gate by its role',
    { fireDepartmentAccess: true, exterior: false, doorType: 'single', egressRole: 'dischargeGate' },
    'yes',
  ],
  [
    'inside door',
    { fireDepartmentAccess: true, exterior: false, doorType: 'single', egressRole: 'exitAccess' },
    'no',
  ],
  [
    'not their way in',
    { fireDepartmentAccess: false, exterior: true, doorType: 'gateSwing', egressRole: 'dischargeGate' },
    'no',
  ],
  ['way in not known', { exterior: true }, 'unknown'],
);
