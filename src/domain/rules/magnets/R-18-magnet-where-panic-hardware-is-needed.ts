import { text, under } from '../../codes/sections.ts';
import { all, ibc, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  latch: 'rimExit',
  occupancyGroup: 'A-3',
  occupantLoad: 50,
} as const;
const hallOf49 = { ...hall, occupantLoad: 49, roomUse: 'conference' } as const;
const open = {
  egressRole: 'exitAccess',
  doorType: 'single',
  latch: 'rimExit',
  occupancyGroup: 'A-3',
} as const;
const sensors = ['magnet/safe/sensor', 'shearMagnet/safe/sensor', 'boltMotor/safe/sensor'];
const switches = ['magnet/safe/doorSwitch', 'shearMagnet/safe/doorSwitch', 'glassPatchLock/safe/doorSwitch'];

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
  cases: cases(
    ...onEach(switches, 'hall for 50', hall, 'yes', {
      clause: 'a',
      does: ['panicHardware', 'doorSwitchHardware'],
    }),
    ['hall for 49', hallOf49, 'no', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
    ['load not known', open, 'unknown', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
    ...onEach(['magnet/safe/sensor', 'exitTrim/secure/free'], 'another release', hall, 'no', 'a'),
    ...onEach(sensors, 'hall for 50, IBC 2021', hall, 'yes', 'b'),
    [
      'hall for 50, IBC 2018',
      hall,
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { ibc: 2018 }, does: 'signOff must' },
    ],
    ['hall for 50, IBC 2024', hall, 'no', { clause: 'b', on: 'magnet/safe/sensor', basis: { ibc: 2024 } }],
    [
      'hall for 100, NFPA 101 alone',
      { ...hall, occupantLoad: 100 },
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: 2021 } },
    ],
    [
      'push/pull leaf that gets a lock',
      { ...hall, latch: 'pushPull', readerSides: 'secure' },
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    ['hall for 49', hallOf49, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['load not known', open, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
    ...onEach(['magnet/safe/doorSwitch', 'exitTrim/secure/free'], 'another release', hall, 'no', 'b'),
    ...onEach(switches, 'hall for 50', hall, 'yes', { clause: 'd', does: 'signOff must' }),
    ['hall for 49', hallOf49, 'no', { clause: 'd', on: 'magnet/safe/doorSwitch' }],
    ['load not known', open, 'unknown', { clause: 'd', on: 'magnet/safe/doorSwitch' }],
    ['another release', hall, 'no', { clause: 'd', on: 'magnet/safe/sensor' }],
  ),
});
