import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R162 = defineRule({
  id: 'R-162',
  title: 'Federally funded health care is reviewed twice',
  family: 'access',
  book: 'nfpa101',
  cites: [text('nfpa101', '2012 edition, as federal payers enforce it', 'Health care')],
  confidence: 'secondary',
  note: 'The edition named is the one federal payers enforce, whatever the building department has adopted.',
  why: 'A hospital answers to the building department and to the agencies that pay for its patients.',
  clauses: [
    {
      effect: 'signOff',
      grade: 'should',
      when: any(
        yes('federalHealthCare'),
        all(is('occupancyGroup', 'I-2'), not(isKnown('federalHealthCare'))),
      ),
      says: 'Check this opening against NFPA 101-2012 as well; federal payers enforce it in addition to the adopted code.',
    },
  ],
});
