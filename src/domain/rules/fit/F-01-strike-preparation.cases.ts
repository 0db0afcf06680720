import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const cutStrikes = ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'];

export const F01Cases = cases(
  ...onEach(cutStrikes, 'no cutout', { strikePrep: 'none' }, 'yes', {
    clause: 'a',
    does: 'modify locksmith',
  }),
  [
    'a rim strike sits on the face',
    { strikePrep: 'none' },
    'no',
    { clause: 'a', on: 'strikeRim/secure/free' },
  ],
  ['standard cutout', { strikePrep: 'ansi478' }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['cutout not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
  [
    'light cutout, mortise strike',
    { strikePrep: 'light234' },
    'yes',
    { clause: 'b', on: 'strikeMortise/secure/free', does: 'modify locksmith' },
  ],
  [
    'light cutout, cylindrical strike',
    { strikePrep: 'light234' },
    'no',
    { clause: 'b', on: 'strikeCylindrical/secure/free' },
  ],
  [
    'standard cutout, mortise strike',
    { strikePrep: 'ansi478' },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  ['not surveyed, mortise strike', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
  [
    'light cutout takes a small strike',
    { strikePrep: 'light234' },
    'yes',
    { clause: 'c', on: 'strikeCylindrical/secure/free', does: 'caution' },
  ],
  [
    'light cutout, not a mortise strike',
    { strikePrep: 'light234' },
    'no',
    { clause: 'c', on: 'strikeMortise/secure/free' },
  ],
  [
    'standard cutout, cylindrical strike',
    { strikePrep: 'ansi478' },
    'no',
    { clause: 'c', on: 'strikeCylindrical/secure/free' },
  ],
  ['not surveyed, cylindrical strike', {}, 'unknown', { clause: 'c', on: 'strikeCylindrical/secure/free' }],
  ...onEach(cutStrikes, 'residential strike', { strikePrep: 'residential' }, 'yes', {
    clause: 'd',
    does: 'modify locksmith',
  }),
  [
    'residential strike, rim strike on the face',
    { strikePrep: 'residential' },
    'no',
    { clause: 'd', on: 'strikeRim/secure/free' },
  ],
  [
    'standard cutout is no residential one',
    { strikePrep: 'ansi478' },
    'no',
    { clause: 'd', on: 'strikeMortise/secure/free' },
  ],
  ['residential or not: not surveyed', {}, 'unknown', { clause: 'd', on: 'strikeMortise/secure/free' }],
  ...onEach(cutStrikes, 'deadlatch cutout', { strikePrep: 'aluminium458' }, 'yes', {
    clause: 'e',
    does: 'caution',
  }),
  [
    'deadlatch cutout, rim strike',
    { strikePrep: 'aluminium458' },
    'no',
    { clause: 'e', on: 'strikeRim/secure/free' },
  ],
  [
    'standard cutout needs no retrofit face',
    { strikePrep: 'ansi478' },
    'no',
    { clause: 'e', on: 'strikeCylindrical/secure/free' },
  ],
  [
    'deadlatch cutout or not: not surveyed',
    {},
    'unknown',
    { clause: 'e', on: 'strikeCylindrical/secure/free' },
  ],
  [
    'deadlatch cutout in a steel frame',
    { strikePrep: 'aluminium458', frameMaterial: 'hollowMetal' },
    'yes',
    { clause: 'f', does: 'warn strikePrep' },
  ],
  [
    'deadlatch cutout in aluminum',
    { strikePrep: 'aluminium458', frameMaterial: 'aluminium' },
    'no',
    { clause: 'f' },
  ],
  [
    'standard cutout in a steel frame',
    { strikePrep: 'ansi478', frameMaterial: 'hollowMetal' },
    'no',
    { clause: 'f' },
  ],
  ['frame not surveyed', { strikePrep: 'aluminium458' }, 'unknown', { clause: 'f' }],
);
