import { cases } from '../rule.ts';

export const B69Cases = cases(
  ['one person', { egressRole: 'noOccupiedSpace', occupantLoad: 1 }, 'yes', { does: 'refuse egressRole' }],
  ['cabinet', { egressRole: 'noOccupiedSpace', occupantLoad: 0 }, 'no'],
  ['office', { egressRole: 'exitAccess', occupantLoad: 4 }, 'no'],
  ['load not known', { egressRole: 'noOccupiedSpace' }, 'unknown'],
);
