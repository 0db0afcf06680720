import { text, under as section } from '../../codes/sections.ts';
import { all, any, no, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const tooNarrow = all(any(yes('isEgress'), yes('accessibleRoute')), under('clearWidthIn', 'clearWidthMinIn'));

export const F10 = defineRule({
  id: 'F-10',
  title: 'Less than 32 in clear',
  family: 'fit',
  book: 'ada',
  cites: [text('ada', '404.2.3', 'Clear width'), section('doorWidth')],
  confidence: 'read',
  note: 'The ADA figure was read; the same figure of the building code, and that one leaf of a pair must give it, are from general knowledge.',
  why: 'One leaf open 90 degrees must leave 32 in clear for a wheelchair and for egress.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'clearWidthIn',
      severity: 'warn',
      when: all(tooNarrow, yes('isSwinging')),
      says: 'Only {clearWidthIn} clear: 32 in is the minimum, from one leaf alone on a pair; swing-clear hinges or a wider leaf would provide it.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'clearWidthIn',
      severity: 'warn',
      when: all(tooNarrow, no('isSwinging')),
      says: 'Only {clearWidthIn} clear: 32 in is the minimum in a means of egress or on an accessible route; a wider opening, or a door beside it, would provide it.',
    },
  ],
});
