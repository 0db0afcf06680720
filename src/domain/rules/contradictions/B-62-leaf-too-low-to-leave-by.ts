import { text, under } from '../../codes/sections.ts';
import { all, is, under as below, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B62 = defineRule({
  id: 'B-62',
  title: 'A leaf too low for egress',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('doorWidth')],
  confidence: 'project',
  why: 'Egress headroom is 80 in, and nothing may project below 78.',
  clauses: [
    {
      effect: 'finding',
      field: 'leafHeightIn',
      severity: 'warn',
      when: all(
        yes('isEgress'),
        is('doorType', 'single', 'pair', 'doubleEgressPair', 'doubleActing', 'balanced'),
        below('leafHeightIn', 78),
      ),
      says: 'The leaf is {leafHeightIn} high, too low for egress; measure again, or check whether people leave by this door.',
    },
  ],
  cases: cases(
    [
      '77 in',
      { egressRole: 'exitAccess', doorType: 'single', leafHeightIn: 77 },
      'yes',
      { does: 'warn leafHeightIn' },
    ],
    ['just under 78 in', { egressRole: 'exitAccess', doorType: 'pair', leafHeightIn: 77.9375 }, 'yes'],
    ['77 in', { egressRole: 'exitAccess', doorType: 'doubleEgressPair', leafHeightIn: 77 }, 'yes'],
    ['77 in', { egressRole: 'exitAccess', doorType: 'doubleActing', leafHeightIn: 77 }, 'yes'],
    ['77 in', { egressRole: 'exitAccess', doorType: 'balanced', leafHeightIn: 77 }, 'yes'],
    ['78 in', { egressRole: 'exitAccess', doorType: 'single', leafHeightIn: 78 }, 'no'],
    ['cabinet', { egressRole: 'noOccupiedSpace', doorType: 'single', leafHeightIn: 60 }, 'no'],
    ['gate', { egressRole: 'exitAccess', doorType: 'gateSwing', leafHeightIn: 60 }, 'no'],
    ['not measured', { egressRole: 'exitAccess', doorType: 'single' }, 'unknown'],
  ),
});
