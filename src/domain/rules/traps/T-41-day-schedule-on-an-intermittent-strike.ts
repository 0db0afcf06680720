import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T41 = defineRule({
  id: 'T-41',
  title: 'Day schedule on an intermittent strike',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'Many fail-secure coils are made for short pulses and burn when a schedule holds them open all day.',
  clauses: [
    {
      effect: 'require',
      items: ['continuousDutyStrike'],
      when: yes('wishScheduledUnlock'),
      of: { family: ['strike'], failMode: ['secure'] },
      says: 'The schedule keeps the strike energized for hours: its coil must be rated for continuous duty.',
    },
  ],
  cases: cases(
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
  ),
});
