import { text, under as cite } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B87 = defineRule({
  id: 'B-87',
  title: 'A push bar on a leaf without a latch',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), cite('panicHardware')],
  confidence: 'project',

  why: 'Panic hardware is a bar that draws a latch; a bar that only carries a switch counts as none.',
  clauses: [
    {
      effect: 'finding',
      field: 'panicPresent',
      severity: 'refuse',
      when: all(yes('panicPresent'), is('latch', 'pushPull', 'roller')),
      says: 'A push bar was seen and the leaf is entered without a latch ({latch}). If the bar draws a latch, enter that latch; if it only carries a switch or is a grip, it is not panic hardware.',
    },
  ],
});
