import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';
import { cabinet, exit, nothing, nursery, ward } from './given.ts';

const sets = ['magnet/safe/sensor', 'delayedExitDevice/safe/delayed', 'magnet/safe/lobby'];

const b = { clause: 'b', on: 'magnet/safe/controlled' } as const;

export const R120Cases = cases(
  ...onEach(sets, 'egress door, fire alarm', { ...exit, ...nothing, fireAlarm: true }, 'yes', 'a'),
  [
    'sprinklers only',
    { ...exit, ...nothing, sprinklered: true },
    'yes',
    { clause: 'a', on: 'magnet/safe/sensor', does: ['overrideReset'] },
  ],
  [
    'detection only',
    { ...exit, ...nothing, detectionThroughout: true },
    'yes',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  ['nothing releases it', { ...exit, ...nothing }, 'no', { clause: 'a', on: 'magnet/safe/sensor' }],
  [
    'cabinet nobody can enter',
    { ...cabinet, fireAlarm: true },
    'no',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  ['not surveyed', exit, 'unknown', { clause: 'a', on: 'magnet/safe/sensor' }],
  ['free lever', { ...exit, fireAlarm: true }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  [
    'ward with a fire alarm',
    { ...ward, ...nothing, fireAlarm: true },
    'yes',
    { ...b, does: ['overrideReset'] },
  ],
  ['ward with sprinklers', { ...ward, ...nothing, sprinklered: true }, 'yes', b],
  ['ward with detection', { ...ward, ...nothing, detectionThroughout: true }, 'yes', b],
  ['ward, nothing releases it', { ...ward, ...nothing }, 'no', b],
  ['psychiatric area', { ...ward, fireAlarm: true, clinicalArea: 'psychiatric' }, 'no', b],
  ['memory care', { ...ward, fireAlarm: true, clinicalArea: 'cognitive' }, 'yes', b],
  ['nursery with listed abduction system', { ...nursery, fireAlarm: true }, 'no', b],
  [
    'nursery, NFPA 101 adopted too',
    { ...nursery, fireAlarm: true },
    'yes',
    { ...b, basis: { nfpa101: 2021 } },
  ],
  ['nursery without the system', { ...nursery, fireAlarm: true, abductionSystem: false }, 'yes', b],
  ['nursery in assisted living', { ...nursery, fireAlarm: true, occupancyGroup: 'I-1.2' }, 'yes', b],
  [
    'pediatric ward with an abduction system',
    { ...nursery, fireAlarm: true, clinicalArea: 'pediatric' },
    'yes',
    b,
  ],
  ['cabinet nobody can enter', { ...ward, ...cabinet, fireAlarm: true }, 'no', b],
  ['treatment area not known', { ...exit, fireAlarm: true }, 'unknown', b],
  ['sensor is judged above', { ...ward, fireAlarm: true }, 'no', { ...b, on: 'magnet/safe/sensor' }],
);
