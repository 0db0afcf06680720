import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R28 = defineRule({
  id: 'R-28',
  title: 'A sensor that can be tripped from outside',
  family: 'magnets',
  book: 'practice',
  cites: [under('sensorRelease')],
  confidence: 'secondary',
  why: 'A stick or a sheet of paper through the gap opens the door; that is a loss of security, not of safety.',
  clauses: [
    {
      effect: 'caution',
      when: yes('sensorTrippable'),
      of: { release: ['sensor'] },
      says: 'Someone outside could trip the exit sensor through a gap or glass; aim, mask or seal it, and never remove it, because it is the means of egress.',
    },
  ],
});
