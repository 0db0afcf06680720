import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B77 = defineRule({
  id: 'B-77',
  title: 'Hinges on a sliding door, or a track on a swinging one',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Sliding doors run on a track; swinging doors hang on hinges or pivots.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'hinges',
      severity: 'warn',
      when: all(
        is('doorType', 'slidingManual', 'slidingAutomatic', 'overhead', 'grille', 'gateSlide'),
        is('hinges', 'butt', 'continuous', 'swingClear'),
      ),
      says: 'A door that slides or rolls is entered as hanging on hinges; check door type and hanging.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'hinges',
      severity: 'warn',
      when: all(yes('isSwinging'), is('hinges', 'track')),
      says: 'A swinging door is entered as running on a track; check door type and hanging.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'frameMaterial',
      severity: 'refuse',
      when: all(yes('isSwinging'), is('frameMaterial', 'track')),
      says: 'A track is entered as the frame of a leaf that swings, and nothing is fitted to it; check frame and door type.',
    },
    {
      key: 'd',
      effect: 'finding',
      field: 'frameMaterial',
      severity: 'refuse',
      when: all(
        yes('isSwinging'),
        is('frameMaterial', 'none'),
        is('leafMaterial', 'hollowMetal', 'woodMineralCore', 'woodSolidCore', 'woodHollowCore'),
      ),
      says: 'Only a glass leaf hangs without a frame, and this one is {leafMaterial}; look at the frame again.',
    },
  ],
});
