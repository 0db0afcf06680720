import { cases } from '../rule.ts';
import { locked, loneStairCases, nfpaOnly, open } from './given.ts';

const trim = 'exitTrim/safe/stairReentry';

const ibc2024 = { ibc: 2024 } as const;

export const R56Cases = cases(
  ['IBC 2024', locked, 'yes', { clause: 'a', on: trim, basis: ibc2024, does: ['powerLossRelease'] }],
  ['IBC 2021', locked, 'no', { clause: 'a', on: trim }],
  ['IBC 2018', locked, 'no', { clause: 'a', on: trim, basis: { ibc: 2018 } }],
  ['NFPA 101 alone', locked, 'no', { clause: 'a', on: trim, basis: nfpaOnly }],
  [
    'IBC 2024, put in by hand where both sides are to stay open',
    open,
    'yes',
    { clause: 'a', on: trim, basis: ibc2024 },
  ],
  [
    'IBC 2024, wish not asked',
    { egressRole: 'stairEntry' },
    'yes',
    { clause: 'a', on: trim, basis: ibc2024 },
  ],
  ['IBC 2024, role not known', {}, 'unknown', { clause: 'a', on: trim, basis: ibc2024 }],
  ['IBC 2024, ordinary trim', locked, 'no', { clause: 'a', on: 'exitTrim/safe/free', basis: ibc2024 }],
  ...loneStairCases('no', 'yes', { clause: 'a', on: trim, basis: ibc2024 }),
  [
    'IBC 2024, fire alarm',
    { ...locked, fireAlarm: true },
    'yes',
    { clause: 'c', on: trim, basis: ibc2024, does: ['stairAlarmRelease'] },
  ],
  [
    'IBC 2024, no fire alarm',
    { ...locked, fireAlarm: false },
    'no',
    { clause: 'c', on: trim, basis: ibc2024 },
  ],
  ['IBC 2024, alarm not asked', locked, 'yes', { clause: 'c', on: trim, basis: ibc2024 }],
  ['IBC 2024, alarm and role not known', {}, 'unknown', { clause: 'c', on: trim, basis: ibc2024 }],
  ['IBC 2021, fire alarm', { ...locked, fireAlarm: true }, 'no', { clause: 'c', on: trim }],
  [
    'IBC 2024, fire alarm, put in by hand where both sides are to stay open',
    { ...open, fireAlarm: true },
    'yes',
    { clause: 'c', on: trim, basis: ibc2024 },
  ],
  [
    'IBC 2024, fire alarm, ordinary trim',
    { ...locked, fireAlarm: true },
    'no',
    { clause: 'c', on: 'exitTrim/safe/free', basis: ibc2024 },
  ],
  ...loneStairCases('no', 'yes', { clause: 'c', on: trim, basis: ibc2024 }, { fireAlarm: true }),
  ['high-rise', { ...locked, highRise: true }, 'yes', { clause: 'b', on: trim, does: ['stairPhones'] }],
  [
    'high-rise, IBC 2018',
    { ...locked, highRise: true },
    'yes',
    { clause: 'b', on: trim, basis: { ibc: 2018 } },
  ],
  ['low building', { ...locked, highRise: false }, 'no', { clause: 'b', on: trim }],
  ['high-rise, put in by hand', { ...open, highRise: true }, 'yes', { clause: 'b', on: trim }],
  [
    'high-rise, NFPA 101 alone',
    { ...locked, highRise: true },
    'no',
    { clause: 'b', on: trim, basis: nfpaOnly },
  ],
  ['height not asked', locked, 'unknown', { clause: 'b', on: trim }],
  [
    'high-rise, ordinary trim',
    { ...locked, highRise: true },
    'no',
    { clause: 'b', on: 'exitTrim/safe/free' },
  ],
  ...loneStairCases('no', 'yes', { clause: 'b', on: trim }, { highRise: true }),
);
