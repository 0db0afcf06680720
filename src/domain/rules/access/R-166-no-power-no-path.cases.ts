import { cases } from '../rule.ts';

export const R166Cases = cases(
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
  ['path not surveyed', { powerAtDoor: false }, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
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
);
