import { text } from '../../codes/sections.ts';
import { no } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const F05 = defineRule({
  id: 'F-05',
  title: 'Header room for a shear magnet',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A shear magnet lies inside the header, which must be about 1-3/4 in deep inside.',
  clauses: [
    {
      effect: 'prohibit',
      when: no('headerRoom'),
      of: { device: ['shearMagnet'] },
      says: 'The header is less than 1-3/4 in deep inside, so a shear magnet will not fit.',
    },
  ],
});
