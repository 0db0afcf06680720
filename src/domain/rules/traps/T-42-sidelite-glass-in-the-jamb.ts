import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T42 = defineRule({
  id: 'T-42',
  title: 'Sidelite glass inside the jamb',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  why: 'Glass that stands in the aluminium tube takes the depth a strike body needs.',
  clauses: [
    {
      effect: 'caution',
      when: all(is('frameMaterial', 'aluminium'), is('wallConstruction', 'glass')),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'Sidelite glass may stand inside the jamb tube: with less than about 1-1/16 in left no strike body goes in.',
    },
  ],
  cases: cases(
    ...onEach(
      ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'],
      'aluminium jamb beside glass',
      { frameMaterial: 'aluminium', wallConstruction: 'glass' },
      'yes',
    ),
    [
      'aluminium jamb beside masonry',
      { frameMaterial: 'aluminium', wallConstruction: 'masonry' },
      'no',
      { on: 'strikeCylindrical/secure/free' },
    ],
    [
      'steel jamb beside glass',
      { frameMaterial: 'hollowMetal', wallConstruction: 'glass' },
      'no',
      { on: 'strikeCylindrical/secure/free' },
    ],
    ['wall not surveyed', { frameMaterial: 'aluminium' }, 'unknown', { on: 'strikeCylindrical/secure/free' }],
    [
      'a rim strike sits on the face',
      { frameMaterial: 'aluminium', wallConstruction: 'glass' },
      'no',
      { on: 'strikeRim/secure/free' },
    ],
  ),
});
