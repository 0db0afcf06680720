import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const T47 = defineRule({
  id: 'T-47',
  title: 'Wired device without power or path',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'A wired device needs power at the door or a way to bring it.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(no('powerAtDoor'), no('cablePath')),
      of: { wired: true },
      says: 'There is no power at the door and no way for a cable: only a battery or a mechanical lock, or power is brought first.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(no('powerAtDoor'), yes('cablePath')),
      of: { wired: true },
      says: 'The power comes from a supply elsewhere: reckon the voltage drop.',
    },
    {
      key: 'c',
      effect: 'modify',
      trade: 'electrician',
      when: all(yes('powerAtDoor'), no('cablePath')),
      of: { wired: true },
      says: 'There is power but no way to the frame: a surface raceway, or a listed local supply with radio control.',
    },
  ],
  cases: cases(
    [
      'neither',
      { powerAtDoor: false, cablePath: false },
      'yes',
      { clause: 'a', on: 'strikeMortise/secure/free' },
    ],
    [
      'path without power',
      { powerAtDoor: false, cablePath: true },
      'no',
      { clause: 'a', on: 'strikeMortise/secure/free' },
    ],
    [
      'power without path',
      { powerAtDoor: true, cablePath: false },
      'no',
      { clause: 'a', on: 'strikeMortise/secure/free' },
    ],
    [
      'path not surveyed',
      { powerAtDoor: false },
      'unknown',
      { clause: 'a', on: 'strikeMortise/secure/free' },
    ],
    [
      'battery lock',
      { powerAtDoor: false, cablePath: false },
      'no',
      { clause: 'a', on: 'batteryLock/asIs/free' },
    ],
    [
      'remote supply',
      { powerAtDoor: false, cablePath: true },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    [
      'power at hand',
      { powerAtDoor: true, cablePath: true },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    [
      'no path either',
      { powerAtDoor: false, cablePath: false },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    ['power not surveyed', { cablePath: true }, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
    [
      'remote supply, battery lock',
      { powerAtDoor: false, cablePath: true },
      'no',
      { clause: 'b', on: 'batteryLock/asIs/free' },
    ],
    [
      'power, no path',
      { powerAtDoor: true, cablePath: false },
      'yes',
      { clause: 'c', on: 'strikeMortise/secure/free' },
    ],
    [
      'power and path',
      { powerAtDoor: true, cablePath: true },
      'no',
      { clause: 'c', on: 'strikeMortise/secure/free' },
    ],
    [
      'no power, no path',
      { powerAtDoor: false, cablePath: false },
      'no',
      { clause: 'c', on: 'strikeMortise/secure/free' },
    ],
    ['path unknown', { powerAtDoor: true }, 'unknown', { clause: 'c', on: 'strikeMortise/secure/free' }],
    [
      'power, no path, battery lock',
      { powerAtDoor: true, cablePath: false },
      'no',
      { clause: 'c', on: 'batteryLock/asIs/free' },
    ],
  ),
});
