import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R163 = defineRule({
  id: 'R-163',
  title: 'An existing opening that is not altered',
  family: 'access',
  book: 'project',
  cites: [text('ifc', '11', 'Existing buildings'), text('nfpa101', '', 'Chapters on existing uses')],
  confidence: 'secondary',
  note: 'Which code rules an old opening is settled by each place; new work is taken as the measure here.',
  why: 'Old doors are judged by the fire code and by the chapters for existing buildings, not by the code for new work.',
  clauses: [
    {
      effect: 'signOff',
      grade: 'note',
      when: is('workStatus', 'existing'),
      says: 'The opening is not altered: rules for new work stand here as advice, and a relief for existing buildings needs a reviewer.',
    },
  ],
  cases: cases(
    ['untouched', { workStatus: 'existing' }, 'yes'],
    ['new or altered', { workStatus: 'new' }, 'no'],
    ['new or altered', { workStatus: 'altered' }, 'no'],
    ['not asked', {}, 'unknown'],
  ),
});
