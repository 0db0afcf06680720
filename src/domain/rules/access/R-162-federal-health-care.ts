import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R162 = defineRule({
  id: 'R-162',
  title: 'Federally paid health care is judged twice',
  family: 'access',
  book: 'nfpa101',
  cites: [text('nfpa101', '2012 edition, as federal payers enforce it', 'Health care')],
  confidence: 'secondary',
  note: 'The edition named is the one federal payers enforce, whatever the building department has adopted.',
  why: 'A hospital answers to the building department and to those who pay for its patients.',
  clauses: [
    {
      effect: 'signOff',
      grade: 'should',
      when: any(
        yes('federalHealthCare'),
        all(is('occupancyGroup', 'I-2'), not(isKnown('federalHealthCare'))),
      ),
      says: 'Hold this opening also against NFPA 101 of 2012, which federal payers enforce beside the adopted code.',
    },
  ],
  cases: cases(
    [
      'federally paid clinic',
      { federalHealthCare: true, occupancyGroup: 'B' },
      'yes',
      { does: 'signOff should' },
    ],
    ['hospital, payer not asked', { occupancyGroup: 'I-2' }, 'yes'],
    ['private hospital', { federalHealthCare: false, occupancyGroup: 'I-2' }, 'no'],
    ['office', { federalHealthCare: false, occupancyGroup: 'B' }, 'no'],
    ['nothing known', {}, 'unknown'],
  ),
});
