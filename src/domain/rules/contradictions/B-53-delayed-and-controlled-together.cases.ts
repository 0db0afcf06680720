import { cases } from '../rule.ts';

export const B53Cases = cases(
  [
    'both',
    { wishDelayedEgress: true, wishControlledEgress: true },
    'yes',
    { does: 'refuse wishControlledEgress' },
  ],
  ['delayed only', { wishDelayedEgress: true, wishControlledEgress: false }, 'no'],
  ['controlled only', { wishDelayedEgress: false, wishControlledEgress: true }, 'no'],
  ['one not asked', { wishDelayedEgress: true }, 'unknown'],
);
