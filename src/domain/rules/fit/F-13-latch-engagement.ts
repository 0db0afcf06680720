import { text } from '../../codes/sections.ts';
import { under } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
