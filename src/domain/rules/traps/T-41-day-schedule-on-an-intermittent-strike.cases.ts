import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T41Cases = cases(
  ...onEach(
    ['strikeMortise/secure/free', 'strikeRim/secure/free'],
    'unlocked by day',
    { wishScheduledUnlock: true },
    'yes',
    { does: ['continuousDutyStrike'] },
  ),
  ['no schedule', { wishScheduledUnlock: false }, 'no', { on: 'strikeMortise/secure/free' }],
  ['not known', {}, 'unknown', { on: 'strikeMortise/secure/free' }],
  [
    'a fail-safe strike is energized all day anyway',
    { wishScheduledUnlock: true },
    'no',
    { on: 'strikeMortise/safe/free' },
  ],
  [
    'an electrified lock has a continuous coil',
    { wishScheduledUnlock: true },
    'no',
    { on: 'mortiseLock/secure/free' },
  ],
);
