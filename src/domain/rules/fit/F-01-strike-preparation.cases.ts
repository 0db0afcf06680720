import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const inPlace = { workStatus: 'altered' } as const;
const ordered = { workStatus: 'new' } as const;

const cutStrikes = ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'];

export const F01Cases = cases(
  ...onEach(cutStrikes, 'no cutout', { strikePrep: 'none', ...inPlace }, 'yes', {
    clause: 'a',
    does: 'modify locksmith',
  }),
  [
    'a rim strike sits on the face',
    { strikePrep: 'none', ...inPlace },
    'no',
    { clause: 'a', on: 'strikeRim/secure/free' },
  ],
  ['standard cutout', { strikePrep: 'ansi478' }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['cutout not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
  [
    'light cutout, mortise strike',
    { strikePrep: 'light234', ...inPlace },
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
  ...onEach(cutStrikes, 'residential strike', { strikePrep: 'residential', ...inPlace }, 'yes', {
    clause: 'd',
    does: 'modify locksmith',
  }),
  [
    'residential strike, rim strike on the face',
    { strikePrep: 'residential', ...inPlace },
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
  ...onEach(cutStrikes, 'new frame without a cutout', { ...ordered, strikePrep: 'none' }, 'yes', {
    clause: 'g',
    does: 'modify doorSupplier',
  }),
  ...onEach(cutStrikes, 'new frame, residential', { ...ordered, strikePrep: 'residential' }, 'yes', 'g'),
  [
    'new frame, a rim strike sits on the face',
    { ...ordered, strikePrep: 'none' },
    'no',
    { clause: 'g', on: 'strikeRim/secure/free' },
  ],
  ...onEach(cutStrikes, 'new frame made for it', { ...ordered, strikePrep: 'ansi478' }, 'no', 'g'),
  ...onEach(cutStrikes, 'frame in place', { ...inPlace, strikePrep: 'none' }, 'no', 'g'),
  ...onEach(cutStrikes, 'new or not: not known', { strikePrep: 'none' }, 'unknown', 'g'),
  ...(['a', 'd'] as const).flatMap((clause) =>
    onEach(
      cutStrikes,
      'nobody cuts a new frame',
      { ...ordered, strikePrep: clause === 'a' ? 'none' : 'residential' },
      'no',
      clause,
    ),
  ),
  [
    'nobody cuts a new frame',
    { ...ordered, strikePrep: 'light234' },
    'no',
    { clause: 'b', on: 'strikeMortise/secure/free' },
  ],
  [
    'new frame, light cutout, mortise strike',
    { ...ordered, strikePrep: 'light234' },
    'yes',
    { clause: 'h', on: 'strikeMortise/secure/free', does: 'modify doorSupplier' },
  ],
  [
    'new frame, light cutout, cylindrical strike',
    { ...ordered, strikePrep: 'light234' },
    'no',
    { clause: 'h', on: 'strikeCylindrical/secure/free' },
  ],
  [
    'new frame, standard cutout',
    { ...ordered, strikePrep: 'ansi478' },
    'no',
    { clause: 'h', on: 'strikeMortise/secure/free' },
  ],
  [
    'frame in place, light cutout',
    { ...inPlace, strikePrep: 'light234' },
    'no',
    { clause: 'h', on: 'strikeMortise/secure/free' },
  ],
  [
    'light cutout, new or not: not known',
    { strikePrep: 'light234' },
    'unknown',
    { clause: 'h', on: 'strikeMortise/secure/free' },
  ],
);
