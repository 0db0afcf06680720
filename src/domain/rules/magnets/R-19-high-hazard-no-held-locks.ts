import { under } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R19 = defineRule({
  id: 'R-19',
  title: 'No sensor or hardware-switch release in high hazard',
  family: 'magnets',
  book: 'ibc',
  cites: [under('sensorRelease'), under('hardwareRelease')],
  confidence: 'read',
  note: 'Read for door-hardware release; for sensor release from general knowledge. Applied also where NFPA 101 stands alone, because refusing is the safe side.',
  why: 'Where a room can burst into flame, people have seconds, and no electric part may stand between them and the outside.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(yes('isEgress'), yes('groupH')),
      of: { release: ['sensor', 'doorSwitch'] },
      says: 'This is a high-hazard space; locks that must be released by a sensor or a switch are not allowed there.',
    },
  ],
});
