import { text } from '../../codes/sections.ts';
import { always, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'mortiseLock/secure/free';

export const R117 = defineRule({
  id: 'R-117',
  title: 'A free-egress door need not unlock on fire alarm',
  family: 'alarm',
  book: 'nfpa72',
  cites: [text('nfpa72', '21.9 (2010 and later)', 'Electrically locked doors')],
  confidence: 'read',
  note: 'The 2007 text spoke of all exits; the 2010 text says in the direction of egress.',
  why: 'Unlocking the outside on every alarm helps no one leave and lets in anyone who pulls a station.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: always,
      of: { wired: true, release: ['free'] },
      says: 'The rules here ask for no fire-alarm connection to unlock it: the lever or bar lets people out. A local fire department may ask for one. A connection that makes a fire door latch is a separate matter.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('wishUnlockOnAlarm'),
      of: { wired: true, release: ['free'] },
      says: 'The owner wants the outside unlocked on fire alarm: that adds no safety, opens the building at each false alarm, and must never unlatch a fire door.',
    },
  ],
  cases: cases(
    ['any door with a free lever', {}, 'yes', { clause: 'a', on, does: 'permit' }],
    ['a magnet holds people', {}, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
    ['a battery lock cannot be connected', {}, 'no', { clause: 'a', on: 'batteryLock/asIs/free' }],
    ['unlock on alarm wanted', { wishUnlockOnAlarm: true }, 'yes', { clause: 'b', on, does: 'caution' }],
    ['not wanted', { wishUnlockOnAlarm: false }, 'no', { clause: 'b', on }],
    ['not asked', {}, 'unknown', { clause: 'b', on }],
    ['a magnet has to unlock', { wishUnlockOnAlarm: true }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    [
      'a battery lock cannot be connected',
      { wishUnlockOnAlarm: true },
      'no',
      { clause: 'b', on: 'batteryLock/asIs/free' },
    ],
  ),
});
