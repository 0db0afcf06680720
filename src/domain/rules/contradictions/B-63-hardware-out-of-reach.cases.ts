import { cases } from '../rule.ts';

export const B63Cases = cases(
  [
    'just under 34 in',
    { egressRole: 'exitAccess', egressHardwareHeightIn: 33.9375 },
    'yes',
    { does: 'warn egressHardwareHeightIn' },
  ],
  ['34 in', { egressRole: 'exitAccess', egressHardwareHeightIn: 34 }, 'no'],
  ['48 in', { egressRole: 'exitAccess', egressHardwareHeightIn: 48 }, 'no'],
  ['just over 48 in', { egressRole: 'exitAccess', egressHardwareHeightIn: 48.0625 }, 'yes'],
  [
    '49 in, said to be no pool gate',
    { egressRole: 'exitAccess', egressHardwareHeightIn: 49, poolBarrierGate: false },
    'yes',
  ],
  [
    'pool gate at 54 in',
    { egressRole: 'exteriorExit', egressHardwareHeightIn: 54, poolBarrierGate: true },
    'no',
  ],
  [
    'pool gate just over 54 in',
    { egressRole: 'exteriorExit', egressHardwareHeightIn: 54.0625, poolBarrierGate: true },
    'yes',
  ],
  [
    'pool gate at 48 in',
    { egressRole: 'exteriorExit', egressHardwareHeightIn: 48, poolBarrierGate: true },
    'no',
  ],
  ['cabinet', { egressRole: 'noOccupiedSpace', egressHardwareHeightIn: 60 }, 'no'],
  ['not measured', { egressRole: 'exitAccess' }, 'unknown'],
);
