import { text, under } from '../../codes/sections.ts';
import { all, any, is, over, under as below } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const swingingLeaf = is('doorType', 'single', 'pair', 'doubleEgressPair', 'doubleActing', 'balanced');

export const B61 = defineRule({
  id: 'B-61',
  title: 'A swinging leaf too narrow or too wide to be one',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('doorWidth')],
  confidence: 'project',
  why: 'Swinging leaves measure 24 to 60 in; beyond that the figure is the opening width, both leaves, or a typo.',
  clauses: [
    {
      effect: 'finding',
      field: 'leafWidthIn',
      severity: 'warn',
      when: all(swingingLeaf, any(below('leafWidthIn', 24), over('leafWidthIn', 60))),
      says: 'A swinging leaf of {leafWidthIn} is unlikely; enter the width of one leaf.',
    },
  ],
  cases: cases(
    ['just under 24 in', { doorType: 'single', leafWidthIn: 23.9375 }, 'yes', { does: 'warn leafWidthIn' }],
    ['23 in', { doorType: 'pair', leafWidthIn: 23 }, 'yes'],
    ['23 in', { doorType: 'doubleEgressPair', leafWidthIn: 23 }, 'yes'],
    ['23 in', { doorType: 'doubleActing', leafWidthIn: 23 }, 'yes'],
    ['23 in', { doorType: 'balanced', leafWidthIn: 23 }, 'yes'],
    ['24 in', { doorType: 'single', leafWidthIn: 24 }, 'no'],
    ['60 in', { doorType: 'single', leafWidthIn: 60 }, 'no'],
    ['just over 60 in', { doorType: 'single', leafWidthIn: 60.0625 }, 'yes'],
    ['96 in', { doorType: 'single', leafWidthIn: 96 }, 'yes'],
    ['gate of 120 in', { doorType: 'gateSwing', leafWidthIn: 120 }, 'no'],
    ['narrow lane', { doorType: 'turnstile', leafWidthIn: 20 }, 'no'],
    ['not measured', { doorType: 'single' }, 'unknown'],
  ),
});
