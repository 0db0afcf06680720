import { text, under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R49 = defineRule({
  id: 'R-49',
  title: 'Every item on a fire door carries its own label',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4.1', 'Components'), under('openingProtectives')],
  confidence: 'read',
  note: 'That only labeled latching hardware is allowed was read; labeling item by item is secondary.',
  why: 'One part never tested in fire decides how long the whole assembly lasts.',
  clauses: [
    {
      effect: 'require',
      when: yes('fireRated'),
      items: ['fireLabelledHardware'],
      says: 'Products of different manufacturers may be combined here only if each is listed for fire doors of this rating.',
    },
  ],
});
