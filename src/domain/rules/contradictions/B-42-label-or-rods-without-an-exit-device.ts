import { text } from '../../codes/sections.ts';
import { all, any, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B42 = defineRule({
  id: 'B-42',
  title: 'Facts of an exit device where there is none',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Fire exit hardware and rods without a bottom rod are kinds of exit devices.',
  clauses: [
    {
      effect: 'finding',
      field: 'latch',
      severity: 'warn',
      when: all(no('hasExitDevice'), any(yes('exitHardwareFireListed'), yes('lessBottomRod'))),
      says: 'A fire exit label or a rod device is entered and no exit device; check what the label was on.',
    },
  ],
});
