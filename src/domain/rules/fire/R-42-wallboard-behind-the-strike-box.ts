import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});
