import { cases } from '../rule.ts';

export const B65Cases = cases(
  ['nobody', { egressRole: 'exitAccess', occupantLoad: 0 }, 'yes', { does: 'refuse occupantLoad' }],
  ['nobody', { egressRole: 'exteriorExit', occupantLoad: 0 }, 'yes'],
  ['nobody', { egressRole: 'stairEntry', occupantLoad: 0 }, 'yes'],
  ['nobody', { egressRole: 'stairDischarge', occupantLoad: 0 }, 'yes'],
  ['nobody', { egressRole: 'horizontalExit', occupantLoad: 0 }, 'yes'],
  ['one person', { egressRole: 'exitAccess', occupantLoad: 1 }, 'no'],
  ['cabinet', { egressRole: 'noOccupiedSpace', occupantLoad: 0 }, 'no'],
  ['not counted', { egressRole: 'exitAccess' }, 'unknown'],
);
