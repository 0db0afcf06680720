import { cases } from '../rule.ts';

export const B48Cases = cases(
  [
    '30 s without a delay',
    { wishDelayedEgress: false, wishDelay30s: true, wishNoDelaySign: false },
    'yes',
    { does: 'warn wishDelayedEgress' },
  ],
  [
    'no sign without a delay',
    { wishDelayedEgress: false, wishDelay30s: false, wishNoDelaySign: true },
    'yes',
  ],
  ['neither', { wishDelayedEgress: false, wishDelay30s: false, wishNoDelaySign: false }, 'no'],
  ['delay wanted', { wishDelayedEgress: true, wishDelay30s: true, wishNoDelaySign: true }, 'no'],
  ['delay not asked', { wishDelay30s: true }, 'unknown'],
);
