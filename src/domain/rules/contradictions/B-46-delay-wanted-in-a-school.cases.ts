import { cases } from '../rule.ts';

export const B46Cases = cases(
  [
    'school corridor',
    { wishDelayedEgress: true, occupancyGroup: 'E', roomUse: 'corridor', occupantLoad: 30 },
    'yes',
    { does: 'warn wishDelayedEgress' },
  ],
  [
    'classroom for 50',
    { wishDelayedEgress: true, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 50 },
    'yes',
  ],
  [
    'classroom for 49',
    { wishDelayedEgress: true, occupancyGroup: 'E', roomUse: 'classroom', occupantLoad: 49 },
    'no',
  ],
  ['office', { wishDelayedEgress: true, occupancyGroup: 'B', roomUse: 'office', occupantLoad: 80 }, 'no'],
  [
    'not wanted',
    { wishDelayedEgress: false, occupancyGroup: 'E', roomUse: 'corridor', occupantLoad: 80 },
    'no',
  ],
  [
    'NFPA 101 alone',
    { wishDelayedEgress: true, occupancyGroup: 'E', roomUse: 'corridor', occupantLoad: 80 },
    'no',
    { basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['load not known', { wishDelayedEgress: true, occupancyGroup: 'E', roomUse: 'classroom' }, 'unknown'],
);
