import { cases } from '../rule.ts';

export const B62Cases = cases(
  [
    '77 in',
    { egressRole: 'exitAccess', doorType: 'single', leafHeightIn: 77 },
    'yes',
    { does: 'warn leafHeightIn' },
  ],
  ['just under 78 in', { egressRole: 'exitAccess', doorType: 'pair', leafHeightIn: 77.9375 }, 'yes'],
  ['77 in', { egressRole: 'exitAccess', doorType: 'doubleEgressPair', leafHeightIn: 77 }, 'yes'],
  ['77 in', { egressRole: 'exitAccess', doorType: 'doubleActing', leafHeightIn: 77 }, 'yes'],
  ['77 in', { egressRole: 'exitAccess', doorType: 'balanced', leafHeightIn: 77 }, 'yes'],
  ['78 in', { egressRole: 'exitAccess', doorType: 'single', leafHeightIn: 78 }, 'no'],
  ['cabinet', { egressRole: 'noOccupiedSpace', doorType: 'single', leafHeightIn: 60 }, 'no'],
  ['gate', { egressRole: 'exitAccess', doorType: 'gateSwing', leafHeightIn: 60 }, 'no'],
  ['not measured', { egressRole: 'exitAccess', doorType: 'single' }, 'unknown'],
);
