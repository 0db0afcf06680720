import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R166 = defineRule({
  id: 'R-166',
  title: 'No power and no cable path',
  family: 'access',
  book: 'practice',
  cites: [text('practice', '', 'Power at the opening')],
  confidence: 'practice',
  why: 'A device without power does not work.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(no('powerAtDoor'), no('cablePath')),
      of: { wired: true },
      says: 'The survey found no power and no cable path, so only battery-powered or mechanical hardware can be used here.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'electrician',
      when: all(yes('powerAtDoor'), no('cablePath')),
      of: { wired: true },
      says: 'There is power but no path to the frame: provide surface raceway, or a listed power supply at the door with wireless control.',
    },
  ],
  cases: cases(
    [
      'neither',
      { powerAtDoor: false, cablePath: false },
      'yes',
      { clause: 'a', on: 'strikeMortise/secure/free', does: 'prohibit' },
    ],
    [
      'power there',
      { powerAtDoor: true, cablePath: false },
      'no',
      { clause: 'a', on: 'strikeMortise/secure/free' },
    ],
    [
      'path there',
      { powerAtDoor: false, cablePath: true },
      'no',
      { clause: 'a', on: 'strikeMortise/secure/free' },
    ],
    [
      'battery lock',
      { powerAtDoor: false, cablePath: false },
      'no',
      { clause: 'a', on: 'batteryLock/asIs/free' },
    ],
    [
      'path not surveyed',
      { powerAtDoor: false },
      'unknown',
      { clause: 'a', on: 'strikeMortise/secure/free' },
    ],
    [
      'power, no path',
      { powerAtDoor: true, cablePath: false },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/free', does: 'modify electrician' },
    ],
    [
      'no power',
      { powerAtDoor: false, cablePath: false },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    [
      'path there',
      { powerAtDoor: true, cablePath: true },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    [
      'battery lock',
      { powerAtDoor: true, cablePath: false },
      'no',
      { clause: 'b', on: 'batteryLock/asIs/free' },
    ],
    ['path not surveyed', { powerAtDoor: true }, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
  ),
});
