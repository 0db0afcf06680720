import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const held = { wishInterlock: true, interlockHoldsEgress: true, occupancyGroup: 'B' } as const;

const entry = { ...held, interlockHoldsEgress: false } as const;

export const R100Cases = cases(
  ...onEach(
    ['magnet/safe/sensor', 'boltMotor/safe/doorSwitch', 'magnet/safe/none'],
    'mantrap that holds',
    held,
    'yes',
    { clause: 'a', does: 'prohibit' },
  ),
  ...onEach(['mortiseLock/secure/free', 'exitTrim/safe/stairReentry'], 'mantrap that holds', held, 'no', 'a'),
  ['entry-only interlock', entry, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['no interlock', { ...held, wishInterlock: false }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['prison sallyport', { ...held, occupancyGroup: 'I-3' }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  [
    'not asked whether it holds',
    { wishInterlock: true, occupancyGroup: 'B' },
    'unknown',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  ['interlock', entry, 'yes', { clause: 'b', does: 'signOff must' }],
  ['no interlock', { wishInterlock: false }, 'no', { clause: 'b' }],
  ['not asked', {}, 'unknown', { clause: 'b' }],
  ['entry-only interlock', entry, 'yes', { clause: 'c', on: 'mortiseLock/secure/free', does: 'permit' }],
  ['it holds', held, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
  ['no interlock', { ...entry, wishInterlock: false }, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
  [
    'not asked whether it holds',
    { wishInterlock: true },
    'unknown',
    { clause: 'c', on: 'mortiseLock/secure/free' },
  ],
  ['a magnet is no ordinary lock', entry, 'no', { clause: 'c', on: 'magnet/safe/sensor' }],
  [
    'interlock wanted',
    entry,
    'yes',
    {
      clause: 'd',
      on: 'strikeMortise/secure/free',
      does: ['interlockLogic', 'interlockCable', 'interlockOverride'],
    },
  ],
  [
    'no interlock',
    { ...entry, wishInterlock: false },
    'no',
    { clause: 'd', on: 'strikeMortise/secure/free' },
  ],
  ['not asked', {}, 'unknown', { clause: 'd', on: 'strikeMortise/secure/free' }],
  ['nothing wired', entry, 'no', { clause: 'd', on: 'mechanicalLock/none/free' }],
);
