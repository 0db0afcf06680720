import { cases } from '../rule.ts';

const panel = { lockPowerSource: 'fireAlarmPanel' } as const;

export const R119Cases = cases(
  ['fed by the panel', panel, 'yes', { on: 'magnet/safe/sensor', does: 'caution' }],
  ['fed by the panel, electrified lock', panel, 'yes', { on: 'mortiseLock/safe/free' }],
  ['supply of its own', { lockPowerSource: 'dedicated' }, 'no', { on: 'magnet/safe/sensor' }],
  ['source not known', {}, 'unknown', { on: 'magnet/safe/sensor' }],
  ['battery lock', panel, 'no', { on: 'batteryLock/asIs/free' }],
);
