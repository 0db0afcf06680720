import { cases } from '../rule.ts';

export const B44Cases = cases(
  [
    'high hazard',
    { wishDelayedEgress: true, occupancyGroup: 'H-1' },
    'yes',
    { does: 'warn wishDelayedEgress' },
  ],
  ['high hazard', { wishDelayedEgress: true, occupancyGroup: 'H-5' }, 'yes'],
  ['shop', { wishDelayedEgress: true, occupancyGroup: 'M' }, 'no'],
  ['not wanted', { wishDelayedEgress: false, occupancyGroup: 'H-1' }, 'no'],
  ['group not known', { wishDelayedEgress: true }, 'unknown'],
);
