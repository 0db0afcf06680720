import { onEach } from '../onEach.ts';
import { cases, type CaseRow, type RuleCase } from '../rule.ts';
import { without } from '../without.ts';
import { cabinet, exit, nothing, nursery, ward } from './given.ts';

const sets = ['delayedMagnet/safe/delayed', 'delayedExitDevice/safe/delayed'];

const delay = 'delayedExitDevice/safe/delayed';

const b = { clause: 'b', on: 'magnet/safe/controlled' } as const;

const bar = 'magnet/safe/doorSwitch';

const old = { nfpa72: 2010 } as const;

/** Treatment areas that are excused, and what makes each of them one. */
function excuses(at: Pick<RuleCase, 'clause' | 'on'>): readonly CaseRow[] {
  return [
    ['psychiatric area', { ...ward, fireAlarm: true, clinicalArea: 'psychiatric' }, 'no', at],
    ['memory care', { ...ward, fireAlarm: true, clinicalArea: 'cognitive' }, 'yes', at],
    ['nursery with listed abduction system', { ...nursery, fireAlarm: true }, 'no', at],
    [
      'nursery, NFPA 101 adopted too',
      { ...nursery, fireAlarm: true },
      'yes',
      { ...at, basis: { nfpa101: 2021 } },
    ],
    ['nursery without the system', { ...nursery, fireAlarm: true, abductionSystem: false }, 'yes', at],
    ['nursery in assisted living', { ...nursery, fireAlarm: true, occupancyGroup: 'I-1.2' }, 'yes', at],
    [
      'pediatric ward with an abduction system',
      { ...nursery, fireAlarm: true, clinicalArea: 'pediatric' },
      'yes',
      at,
    ],
  ];
}

export const R116Cases = cases(
  ...onEach(sets, 'egress door, fire alarm', { ...exit, ...nothing, fireAlarm: true }, 'yes', 'a'),
  [
    'sprinklers only',
    { ...exit, ...nothing, sprinklered: true },
    'yes',
    { clause: 'a', on: delay, does: ['detectionRelease'] },
  ],
  ['detection only', { ...exit, ...nothing, detectionThroughout: true }, 'yes', { clause: 'a', on: delay }],
  ['nothing to connect to', { ...exit, ...nothing }, 'no', { clause: 'a', on: delay }],
  ['cabinet nobody can enter', { ...cabinet, fireAlarm: true }, 'no', { clause: 'a', on: delay }],
  ['not surveyed', exit, 'unknown', { clause: 'a', on: delay }],
  [
    'controlled egress is judged below',
    { ...exit, fireAlarm: true },
    'no',
    { clause: 'a', on: 'magnet/safe/controlled' },
  ],
  ['free lever', { ...exit, fireAlarm: true }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  [
    'a sensor is judged by R-16',
    { ...exit, fireAlarm: true },
    'no',
    { clause: 'a', on: 'magnet/safe/sensor' },
  ],
  [
    'ward with a fire alarm',
    { ...ward, ...nothing, fireAlarm: true },
    'yes',
    { ...b, does: ['detectionRelease'] },
  ],
  ['ward with sprinklers', { ...ward, ...nothing, sprinklered: true }, 'yes', b],
  ['ward with detection', { ...ward, ...nothing, detectionThroughout: true }, 'yes', b],
  ['ward, nothing to connect to', { ...ward, ...nothing }, 'no', b],
  ...excuses(b),
  ...excuses({ ...b, clause: 'g' }),
  ['cabinet nobody can enter', { ...ward, ...cabinet, fireAlarm: true }, 'no', b],
  ['treatment area not known', { ...exit, fireAlarm: true }, 'unknown', b],
  ['sensor is judged above', { ...ward, fireAlarm: true }, 'no', { ...b, on: 'magnet/safe/sensor' }],
  ...onEach(sets, 'egress door, fire alarm', { ...exit, fireAlarm: true }, 'yes', {
    clause: 'f',
    does: ['fireAlarmRelease'],
  }),
  [
    'sprinklers only: nothing to connect to',
    { ...exit, ...nothing, sprinklered: true },
    'no',
    { clause: 'f', on: delay },
  ],
  ['cabinet nobody can enter', { ...cabinet, fireAlarm: true }, 'no', { clause: 'f', on: delay }],
  ['nothing surveyed', exit, 'unknown', { clause: 'f', on: delay }],
  ['alarm not surveyed, sprinklers', { ...exit, sprinklered: true }, 'yes', { clause: 'f', on: delay }],
  [
    'alarm not surveyed, detection',
    { ...exit, detectionThroughout: true },
    'yes',
    { clause: 'f', on: delay },
  ],
  [
    'alarm not surveyed, nothing else',
    without({ ...exit, ...nothing }, 'fireAlarm'),
    'unknown',
    { clause: 'f', on: delay },
  ],
  ['ward, alarm not surveyed, sprinklers', { ...ward, sprinklered: true }, 'yes', { ...b, clause: 'g' }],
  [
    'ward, alarm not surveyed, nothing else',
    without({ ...ward, ...nothing }, 'fireAlarm'),
    'unknown',
    { ...b, clause: 'g' },
  ],
  [
    'ward, alarm not surveyed, detection',
    { ...ward, detectionThroughout: true },
    'yes',
    { ...b, clause: 'g' },
  ],
  ['controlled egress is clause g', { ...ward, fireAlarm: true }, 'no', { ...b, clause: 'f' }],
  [
    'ward with a fire alarm',
    { ...ward, fireAlarm: true },
    'yes',
    { ...b, clause: 'g', does: ['fireAlarmRelease'] },
  ],
  [
    'ward, sprinklers only: nothing to connect to',
    { ...ward, ...nothing, sprinklered: true },
    'no',
    { ...b, clause: 'g' },
  ],
  ['cabinet nobody can enter', { ...ward, ...cabinet, fireAlarm: true }, 'no', { ...b, clause: 'g' }],
  ['treatment area not known', { ...exit, fireAlarm: true }, 'unknown', { ...b, clause: 'g' }],
  ['a delay is clause f', { ...ward, fireAlarm: true }, 'no', { clause: 'g', on: delay }],
  [
    'bar, NFPA 72 of 2010',
    { ...exit, fireAlarm: true },
    'yes',
    { clause: 'c', on: bar, basis: old, does: ['fireAlarmRelease'] },
  ],
  [
    'bar, NFPA 72 of 2016',
    { ...exit, fireAlarm: true },
    'no',
    { clause: 'c', on: bar, basis: { nfpa72: 2016 } },
  ],
  [
    'bar, NFPA 72 not adopted',
    { ...exit, fireAlarm: true },
    'no',
    { clause: 'c', on: bar, basis: { nfpa72: null } },
  ],
  ['bar, no fire alarm', { ...exit, fireAlarm: false }, 'no', { clause: 'c', on: bar, basis: old }],
  ['bar, cabinet', { ...cabinet, fireAlarm: true }, 'no', { clause: 'c', on: bar, basis: old }],
  ['alarm not surveyed', exit, 'unknown', { clause: 'c', on: bar, basis: old }],
  ['sensor', { ...exit, fireAlarm: true }, 'no', { clause: 'c', on: 'magnet/safe/sensor', basis: old }],
  ['bar, fire alarm', { ...exit, fireAlarm: true }, 'yes', { clause: 'd', on: bar, does: 'signOff must' }],
  ['bar, no fire alarm', { ...exit, fireAlarm: false }, 'no', { clause: 'd', on: bar }],
  ['bar, cabinet', { ...cabinet, fireAlarm: true }, 'no', { clause: 'd', on: bar }],
  ['alarm not surveyed', exit, 'unknown', { clause: 'd', on: bar }],
  [
    'free lever needs nobody',
    { ...exit, fireAlarm: true },
    'no',
    { clause: 'd', on: 'mortiseLock/safe/free' },
  ],
  ['bar, NFPA 72 of 2019', exit, 'yes', { clause: 'e', on: bar, does: 'permit' }],
  ['bar, NFPA 72 of 2016', exit, 'yes', { clause: 'e', on: bar, basis: { nfpa72: 2016 } }],
  ['bar, NFPA 72 of 2010', exit, 'no', { clause: 'e', on: bar, basis: old }],
  ['bar, cabinet', cabinet, 'no', { clause: 'e', on: bar }],
  ['role not known', {}, 'unknown', { clause: 'e', on: bar }],
  ['sensor', exit, 'no', { clause: 'e', on: 'magnet/safe/sensor' }],
);
