import { text, under as section } from '../../codes/sections.ts';
import { all, is, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R168 = defineRule({
  id: 'R-168',
  title: 'Doors for bed movement need 41-1/2 in',
  family: 'health',
  book: 'ibc',
  cites: [section('doorWidth'), text('nfpa101', '18.2.3', 'Width of health-care doors')],
  confidence: 'read',
  note: 'Read for 2018; the same figure in later editions and in NFPA 101 for new work is from general knowledge. Existing health care may be allowed less.',
  why: 'In a fire patients are rolled out in their beds, and a bed stuck in a door blocks it for everyone.',
  clauses: [
    {
      effect: 'finding',
      field: 'clearWidthIn',
      severity: 'warn',
      when: all(
        is('occupancyGroup', 'I-2'),
        yes('isEgress'),
        yes('bedsMoved'),
        under('clearWidthIn', 'bedDoorWidthIn'),
      ),
      says: 'Beds are moved through this door and its clear width is {clearWidthIn}: 41-1/2 in is the minimum for new work; hardware that projects into the opening counts against it.',
    },
  ],
});
