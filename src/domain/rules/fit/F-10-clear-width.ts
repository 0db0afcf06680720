import { text, under as section } from '../../codes/sections.ts';
import { all, any, under, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const F10 = defineRule({
  id: 'F-10',
  title: 'Less than 32 in clear',
  family: 'fit',
  book: 'ada',
  cites: [text('ada', '404.2.3', 'Clear width'), section('doorWidth')],
  confidence: 'read',
  note: 'The ADA figure was read; the same figure of the building code, and that one leaf of a pair must give it, are from general knowledge.',
  why: 'One leaf open 90 degrees must leave 32 in for a person in a wheelchair and for people leaving.',
  clauses: [
    {
      effect: 'finding',
      field: 'clearWidthIn',
      severity: 'warn',
      when: all(any(yes('isEgress'), yes('accessibleRoute')), under('clearWidthIn', 'clearWidthMinIn')),
      says: 'Only {clearWidthIn} clear: 32 in is the least, on a pair from one leaf alone; swing-clear hinges or a wider leaf would give it.',
    },
  ],
  cases: cases(
    [
      'egress door, just under',
      { egressRole: 'exitAccess', clearWidthIn: 31.99 },
      'yes',
      { does: 'warn clearWidthIn' },
    ],
    ['egress door, exactly 32 in', { egressRole: 'exitAccess', clearWidthIn: 32 }, 'no'],
    [
      'accessible route without egress',
      { egressRole: 'noOccupiedSpace', accessibleRoute: true, clearWidthIn: 30 },
      'yes',
    ],
    ['neither', { egressRole: 'noOccupiedSpace', accessibleRoute: false, clearWidthIn: 30 }, 'no'],
    [
      'pair, 31 in from the active leaf',
      { egressRole: 'exitAccess', doorType: 'pair', inactiveBolts: 'manualFlush', clearWidthIn: 31 },
      'yes',
    ],
    ['not measured', { egressRole: 'exitAccess' }, 'unknown'],
  ),
});
