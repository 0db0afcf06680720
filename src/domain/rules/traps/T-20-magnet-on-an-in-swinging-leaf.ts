import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T20 = defineRule({
  id: 'T-20',
  title: 'Magnet on an in-swinging leaf',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  note: 'Headroom under a magnet is rule F-12.',
  why: 'The magnet sits on the side people push from; a leaf that swings in cannot meet it there without a bracket.',
  clauses: [
    {
      effect: 'require',
      items: ['magnetBracket'],
      when: all(yes('isSwinging'), is('handing', 'LH', 'RH')),
      of: { device: ['magnet', 'delayedMagnet'] },
      says: 'The leaf swings in, so the armature hangs on a Z-bracket.',
    },
  ],
});
