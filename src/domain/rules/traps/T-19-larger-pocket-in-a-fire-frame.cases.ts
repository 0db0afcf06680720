import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

export const T19Cases = cases(
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
);
