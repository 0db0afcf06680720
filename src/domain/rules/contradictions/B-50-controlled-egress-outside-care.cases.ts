import { cases } from '../rule.ts';

export const B50Cases = cases(
  [
    'office or day care',
    { wishControlledEgress: true, occupancyGroup: 'B' },
    'yes',
    { does: 'warn wishControlledEgress' },
  ],
  ['office or day care', { wishControlledEgress: true, occupancyGroup: 'I-4' }, 'yes'],
  ['office or day care', { wishControlledEgress: true, occupancyGroup: 'R-4' }, 'yes'],
  ['care or detention', { wishControlledEgress: true, occupancyGroup: 'I-1.1' }, 'no'],
  ['care or detention', { wishControlledEgress: true, occupancyGroup: 'I-1.2' }, 'no'],
  ['care or detention', { wishControlledEgress: true, occupancyGroup: 'I-2' }, 'no'],
  ['care or detention', { wishControlledEgress: true, occupancyGroup: 'I-3' }, 'no'],
  ['not wanted', { wishControlledEgress: false, occupancyGroup: 'B' }, 'no'],
  [
    'NFPA 101 alone',
    { wishControlledEgress: true, occupancyGroup: 'B' },
    'no',
    { basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['group not known', { wishControlledEgress: true }, 'unknown'],
);
