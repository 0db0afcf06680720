import { text, under } from '../../codes/sections.ts';
import { all, any, is, over, under as below } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
