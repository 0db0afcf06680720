import { text } from '../../codes/sections.ts';
import { all, is, no, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    ...onEach(
      ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'],
      'light cutout in a fire frame',
      { fireRatingMin: 45, workStatus: 'altered', strikePrep: 'light234', framePrepared: false },
      'yes',
    ),
    [
      'no cutout, existing door',
      { fireRatingMin: 45, workStatus: 'existing', strikePrep: 'none', framePrepared: false },
      'yes',
      { on: 'strikeMortise/secure/free', does: ['laboratoryApproval'] },
    ],
    [
      'residential strike',
      { fireRatingMin: 20, workStatus: 'altered', strikePrep: 'residential', framePrepared: false },
      'yes',
      { on: 'strikeMortise/secure/free' },
    ],
    [
      'aluminum deadlatch cutout',
      { fireRatingMin: 20, workStatus: 'altered', strikePrep: 'aluminium458', framePrepared: false },
      'yes',
      { on: 'strikeMortise/secure/free' },
    ],
    [
      'standard cutout fits as it is',
      { fireRatingMin: 45, workStatus: 'altered', strikePrep: 'ansi478', framePrepared: false },
      'no',
      { on: 'strikeMortise/secure/free' },
    ],
    [
      'made with the preparation',
      { fireRatingMin: 45, workStatus: 'altered', strikePrep: 'light234', framePrepared: true },
      'no',
      { on: 'strikeMortise/secure/free' },
    ],
    [
      'new frame is ordered with it',
      { fireRatingMin: 45, workStatus: 'new', strikePrep: 'none', framePrepared: false },
      'no',
      { on: 'strikeMortise/secure/free' },
    ],
    [
      'not rated',
      {
        fireRatingMin: 0,
        wallRatingMin: 0,
        workStatus: 'altered',
        strikePrep: 'none',
        framePrepared: false,
      },
      'no',
      { on: 'strikeMortise/secure/free' },
    ],
    [
      'preparation not known',
      { fireRatingMin: 45, workStatus: 'altered', strikePrep: 'light234' },
      'unknown',
      { on: 'strikeMortise/secure/free' },
    ],
    [
      'a rim strike needs no pocket',
      { fireRatingMin: 45, workStatus: 'altered', strikePrep: 'none', framePrepared: false },
      'no',
      { on: 'strikeRim/secure/free' },
    ],
  ),
});
