import { text } from '../../codes/sections.ts';
import { all, atMost, over } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const F14 = defineRule({
  id: 'F-14',
  title: 'Rated door in a frame without a label',
  family: 'fit',
  book: 'project',
  cites: [text('nfpa80', '', 'Labels on leaf and frame'), text('project', '')],
  confidence: 'project',
  why: 'Leaf and frame are one assembly, and the lower of the two labels counts.',
  clauses: [
    {
      effect: 'finding',
      field: 'frameLabelMin',
      severity: 'warn',
      when: all(over('fireRatingMin', 0), atMost('frameLabelMin', 0)),
      says: 'The door must be rated {fireRatingMin} and the frame carries no label: look again, or count the opening as not labelled.',
    },
  ],
  cases: cases(
    ['rated door, bare frame', { fireRatingMin: 20, frameLabelMin: 0 }, 'yes'],
    ['one minute is a rating', { fireRatingMin: 1, frameLabelMin: 0 }, 'yes'],
    ['rated door, labelled frame', { fireRatingMin: 20, frameLabelMin: 20 }, 'no'],
    ['frame label of one minute is a label', { fireRatingMin: 20, frameLabelMin: 1 }, 'no'],
    ['door not rated', { fireRatingMin: 0, frameLabelMin: 0 }, 'no'],
    ['frame not looked at', { fireRatingMin: 20 }, 'unknown'],
  ),
});
