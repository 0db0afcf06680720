import { text } from '../../codes/sections.ts';
import { under } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const kept = [
  'strikeMortise/secure/free',
  'exitTrim/secure/free',
  'latchRetractionMotor/secure/free',
  'latchRetractionSolenoid/secure/free',
];

export const F13 = defineRule({
  id: 'F-13',
  title: 'Latch that barely engages the strike',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'With less than 1/4 in of engagement the latch slips out, whatever its grade.',
  clauses: [
    {
      key: 'a',
      effect: 'modify',
      trade: 'locksmith',
      when: under('latchProjectionIn', 'leastEngagementIn'),
      of: {
        device: [
          'strikeMortise',
          'strikeCylindrical',
          'strikeRim',
          'exitTrim',
          'latchRetractionMotor',
          'latchRetractionSolenoid',
        ],
      },
      says: 'The latch engages only {latchProjectionIn} and will not hold: close the gap or replace the latch first.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'latchProjectionIn',
      severity: 'warn',
      when: under('latchProjectionIn', 'leastEngagementIn'),
      says: 'The latch engages only {latchProjectionIn}: the door is barely latched today.',
    },
  ],
  cases: cases(
    ...onEach(
      [...kept, 'strikeCylindrical/secure/free', 'strikeRim/secure/free'],
      'short latch',
      { latchProjectionIn: 0.2 },
      'yes',
      'a',
    ),
    [
      'just under 1/4 in',
      { latchProjectionIn: 0.249 },
      'yes',
      { clause: 'a', on: 'strikeMortise/secure/free', does: 'modify locksmith' },
    ],
    ['1/4 in', { latchProjectionIn: 0.25 }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
    ['not measured', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
    [
      'a new lock brings its own latch',
      { latchProjectionIn: 0.1 },
      'no',
      { clause: 'a', on: 'mortiseLock/secure/free' },
    ],
    [
      'survey: just under 1/4 in',
      { latchProjectionIn: 0.249 },
      'yes',
      { clause: 'b', does: 'warn latchProjectionIn' },
    ],
    ['survey: 1/4 in', { latchProjectionIn: 0.25 }, 'no', { clause: 'b' }],
    ['survey: not measured', {}, 'unknown', { clause: 'b' }],
  ),
});
