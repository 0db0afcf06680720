import { under } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R79 = defineRule({
  id: 'R-79',
  title: 'A strike releases one point, vertical rods latch at two',
  family: 'panic',
  book: 'practice',
  cites: [under('panicHardware')],
  confidence: 'memory',
  why: 'The door stays latched although the strike has released, and the owner pays twice.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: is('latch', 'verticalRods'),
      of: { family: ['strike'] },
      says: 'Vertical rods latch at top and bottom, and a strike releases only one of them; use electric latch retraction or electrified trim.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: is('latch', 'rimPlusRods'),
      of: { family: ['strike'] },
      says: 'The strike releases the leaf with the rim device; the leaf with the rods stays latched from outside.',
    },
  ],
});
