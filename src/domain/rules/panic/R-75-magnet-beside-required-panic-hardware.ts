import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { magnetDevices } from '../magnets/magnets.ts';
import { defineRule } from '../rule.ts';

export const R75 = defineRule({
  id: 'R-75',
  title: 'A magnet beside required panic hardware goes to the reviewer',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('hardwareRelease')],
  confidence: 'secondary',
  why: 'With a magnet, one electric switch is all that stands between a crowd and a locked door.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: yes('panicWithLock'),
      of: { device: magnetDevices },
      says: 'A magnet holds a door that needs panic hardware; a reviewer must accept how the bar releases it.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('panicWithLock'),
      of: { device: magnetDevices },
      says: 'Electrified trim, latch retraction or a strike behind the bar do the same job, and the bar opens the door by itself.',
    },
  ],
});
