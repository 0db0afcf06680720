import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { cabinet, exit } from './given.ts';

const special = [
  'magnet/safe/doorSwitch',
  'magnet/safe/sensor',
  'delayedMagnet/safe/delayed',
  'magnet/safe/controlled',
  'magnet/safe/lobby',
  'exitTrim/safe/stairReentry',
];

export const R121Cases = cases(
  ...onEach(special, 'egress door', exit, 'yes', { does: ['acceptanceTest'] }),
  ['cabinet nobody can enter', cabinet, 'no', { on: 'magnet/safe/sensor' }],
  ['free lever', exit, 'no', { on: 'mortiseLock/secure/free' }],
  ['role not known', {}, 'unknown', { on: 'magnet/safe/sensor' }],
);
