import { text } from '../../codes/sections.ts';
import { any, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const T28 = defineRule({
  id: 'T-28',
  title: 'A battery lock has no wire to the fire alarm',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'Nothing that the alarm does reaches a lock without a wire, unless its radio release is listed.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(yes('wishUnlockOnAlarm'), is('egressRole', 'stairEntry')),
      of: { device: ['batteryLock'] },
      says: 'This door must unlock on a signal, and a battery lock has no wire for it and stays as it was.',
    },
  ],
  cases: cases(
    [
      'owner wants it open on alarm',
      { wishUnlockOnAlarm: true },
      'yes',
      { on: 'batteryLock/asIs/free', does: 'prohibit' },
    ],
    [
      'stair side locked',
      { wishUnlockOnAlarm: false, egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
      'yes',
      { on: 'batteryLock/asIs/free' },
    ],
    [
      'stair door, wish not asked',
      { wishUnlockOnAlarm: false, egressRole: 'stairEntry' },
      'yes',
      { on: 'batteryLock/asIs/free' },
    ],
    [
      'neither',
      { wishUnlockOnAlarm: false, egressRole: 'exitAccess' },
      'no',
      { on: 'batteryLock/asIs/free' },
    ],
    ['not known', {}, 'unknown', { on: 'batteryLock/asIs/free' }],
    ['a wired lock can be released', { wishUnlockOnAlarm: true }, 'no', { on: 'mortiseLock/safe/free' }],
  ),
});
