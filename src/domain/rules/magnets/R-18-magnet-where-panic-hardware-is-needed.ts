import { text, under } from '../../codes/sections.ts';
import { all, ibc, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R18 = defineRule({
  id: 'R-18',
  title: 'Where panic hardware is needed, the bar itself releases the magnet',
  family: 'magnets',
  book: 'ibc',
  cites: [
    under('hardwareRelease'),
    under('sensorRelease'),
    under('panicHardware'),
    text('osha', '1910.36(d)', 'Letter of 12 March 1981'),
  ],
  confidence: 'secondary',
  note: 'The 2018 text was read; that 2024 closes the sensor set stands in R-124. In 2018 and 2021 the text opens both sets for Groups A and E only where the door has panic hardware.',
  why: 'A crowd presses on the bar; if the bar does not release the magnet, the door stays shut under it.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['panicHardware', 'doorSwitchHardware'],
      when: yes('panicWithLock'),
      of: { release: ['doorSwitch'] },
      says: 'The switch that cuts lock power must sit in the panic hardware itself, so that one push does everything.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(not(ibc({ from: 2024, readTo: 2024 })), yes('panicWithLock')),
      of: { release: ['sensor'] },
      says: 'A sensor would have to release a door that needs panic hardware; the bar with its own switch is the safer choice, and a reviewer must accept anything else.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: yes('panicWithLock'),
      of: { release: ['doorSwitch'] },
      says: 'One switch in the bar is all that lets a crowd out; a reviewer signs that it interrupts lock power directly.',
    },
  ],
});
