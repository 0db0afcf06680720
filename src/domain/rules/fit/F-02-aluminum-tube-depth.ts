import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const F02 = defineRule({
  id: 'F-02',
  title: 'Depth of an aluminum jamb',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '', 'Aluminum jamb tubes')],
  confidence: 'secondary',
  why: 'Aluminum jamb tubes are usually 1-3/4 to 2 in deep, and a full-size strike body takes about 1-11/16 in of that; glass set into the tube takes more.',
  clauses: [
    {
      effect: 'caution',
      when: is('frameMaterial', 'aluminium'),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'Measure the depth inside the aluminum jamb before ordering: a low-profile strike body needs about 1-1/16 in, and sidelite glass that stands in the tube may leave less.',
    },
  ],
});
