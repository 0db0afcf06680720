import { text, under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R03 = defineRule({
  id: 'R-03',
  title: 'A wall button alone is not egress',
  family: 'foundations',
  book: 'ibc',
  cites: [
    under('sensorRelease'),
    under('freeEgressIbc'),
    text('osha', '1910.36(d)', 'Letter of 12 March 1981'),
  ],
  confidence: 'secondary',
  why: 'In smoke or panic people push the door, not a button beside it; the button may only back up a sensor.',
  clauses: [
    {
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { release: ['buttonOnly'] },
      says: 'A person would have to find and press a wall button to leave; a sensor, or hardware on the leaf, must open the door first.',
    },
  ],
});
