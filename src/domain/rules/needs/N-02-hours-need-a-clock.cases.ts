import { cases } from '../rule.ts';

export const N02Cases = cases(
  [
    'scheduled unlock wished',
    { wishScheduledUnlock: true },
    'yes',
    { on: 'mechanicalLock/none/free', does: 'prohibit' },
  ],
  ['no lock cannot lock again', { wishScheduledUnlock: true }, 'yes', { on: 'noLock/none/free' }],
  ['no schedule', { wishScheduledUnlock: false }, 'no', { on: 'mechanicalLock/none/free' }],
  [
    'latch retraction follows a clock',
    { wishScheduledUnlock: true },
    'no',
    { on: 'latchRetractionMotor/secure/free' },
  ],
  ['not asked', {}, 'unknown', { on: 'mechanicalLock/none/free' }],
);
