import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const free = 'mortiseLock/secure/free';

export const N95Cases = cases(
  ['delay asked, free lever', { wishDelayedEgress: true }, 'yes', { clause: 'a', on: free, does: 'caution' }],
  [
    'delay asked and given',
    { wishDelayedEgress: true },
    'no',
    { clause: 'a', on: 'delayedMagnet/safe/delayed' },
  ],
  ['no delay asked', { wishDelayedEgress: false }, 'no', { clause: 'a', on: free }],
  ['wish not recorded', {}, 'unknown', { clause: 'a', on: free }],
  [
    'control asked, free lever',
    { wishControlledEgress: true },
    'yes',
    { clause: 'b', on: free, does: 'caution' },
  ],
  ...onEach(
    ['magnet/safe/controlled', 'mortiseLock/secure/clinical', 'detentionLock/none/attended'],
    'control asked and given',
    { wishControlledEgress: true },
    'no',
    'b',
  ),
  ['no control asked', { wishControlledEgress: false }, 'no', { clause: 'b', on: free }],
  ['wish not recorded', {}, 'unknown', { clause: 'b', on: free }],
);
