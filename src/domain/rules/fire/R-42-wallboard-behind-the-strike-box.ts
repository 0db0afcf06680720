import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const throat = { ...rated, frameMaterial: 'hollowMetal', wallConstruction: 'gypsum' } as const;

export const R42 = defineRule({
  id: 'R-42',
  title: 'A strike box needs room behind the wallboard',
  family: 'fire',
  book: 'ul',
  cites: [text('ul', '', 'Listing notes of steel fire frames')],
  confidence: 'secondary',
  note: 'One source only; the audit could not confirm it. Ask the frame manufacturer.',
  why: 'The frame was listed with the wallboard reaching into it; a strike box can push the board back.',
  clauses: [
    {
      effect: 'caution',
      when: all(yes('fireRated'), is('frameMaterial', 'hollowMetal'), is('wallConstruction', 'gypsum')),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'If the strike box shortens how far the wallboard reaches into this fire frame, listed intumescent material is needed behind it.',
    },
  ],
  cases: cases(
    ...onEach(
      ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'],
      'steel fire frame in a stud wall',
      throat,
      'yes',
      { does: 'caution' },
    ),
    ['masonry wall', { ...throat, wallConstruction: 'masonry' }, 'no', { on: 'strikeMortise/secure/free' }],
    ['wood frame', { ...throat, frameMaterial: 'wood' }, 'no', { on: 'strikeMortise/secure/free' }],
    ['unrated frame', { ...throat, ...unrated }, 'no', { on: 'strikeMortise/secure/free' }],
    [
      'wall not surveyed',
      { ...rated, frameMaterial: 'hollowMetal' },
      'unknown',
      { on: 'strikeMortise/secure/free' },
    ],
    ['a rim strike has no box in the frame', throat, 'no', { on: 'strikeRim/secure/free' }],
    ['a lock in the leaf', throat, 'no', { on: 'mortiseLock/secure/free' }],
  ),
});
