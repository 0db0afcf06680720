import { text, under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { magnetDevices } from './magnets.ts';

export const R21 = defineRule({
  id: 'R-21',
  title: 'A magnet on a fire door also needs a latch',
  family: 'magnets',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.4.1', 'Components')],
  confidence: 'secondary',
  note: 'That every item carries its own label was read. Some guides reject any magnet on a fire door; the standard’s commentary accepts a labeled one with a latch.',
  why: 'A magnet lets go when power fails, so in a fire only a latch keeps the leaf in its frame.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['passiveLatch', 'closer', 'fireLabelledHardware'],
      when: yes('fireRated'),
      of: { device: magnetDevices },
      says: 'The leaf keeps listed latching hardware and closes by itself, and the magnet itself is labeled for fire doors.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: yes('fireRated'),
      of: { device: magnetDevices },
      says: 'A magnet on a fire door is accepted by some authorities only; a reviewer decides.',
    },
  ],
});
