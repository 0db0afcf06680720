import { cases } from '../rule.ts';

export const T47Cases = cases(
  [
    'remote supply',
    { powerAtDoor: false, cablePath: true },
    'yes',
    { on: 'strikeMortise/secure/free', does: 'caution' },
  ],
  ['power at hand', { powerAtDoor: true, cablePath: true }, 'no', { on: 'strikeMortise/secure/free' }],
  ['no path either', { powerAtDoor: false, cablePath: false }, 'no', { on: 'strikeMortise/secure/free' }],
  ['power not surveyed', { cablePath: true }, 'unknown', { on: 'strikeMortise/secure/free' }],
  [
    'remote supply, battery lock',
    { powerAtDoor: false, cablePath: true },
    'no',
    { on: 'batteryLock/asIs/free' },
  ],
);
