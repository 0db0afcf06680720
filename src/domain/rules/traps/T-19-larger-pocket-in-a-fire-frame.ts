import { text } from '../../codes/sections.ts';
import { all, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T19 = defineRule({
  id: 'T-19',
  title: 'A larger strike pocket in a fire frame',
  family: 'traps',
  book: 'nfpa80',
  cites: [text('nfpa80', '', 'Job-site preparation and field modification')],
  confidence: 'secondary',
  why: 'Enlarging a pocket in a labeled frame is a field modification, which the laboratory must allow before the work.',
  clauses: [
    {
      effect: 'require',
      items: ['laboratoryApproval'],
      when: all(
        yes('fireRated'),
        is('workStatus', 'altered', 'existing'),
        is('strikePrep', 'none', 'light234', 'residential', 'aluminium458'),
        no('framePrepared'),
      ),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'Ask the listing laboratory before the strike pocket of the rated frame is cut or enlarged.',
    },
  ],
});
