import { text, under } from '../../codes/sections.ts';
import { all, nfpa72, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, type CaseRow, defineRule, type RuleCase } from '../rule.ts';
import { releaseExcuse } from '../special/conditions.ts';
import { without } from '../without.ts';
import { alarmMayBeThere, cabinet, exit, nothing, nursery, somethingDetects, ward } from './given.ts';

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

export const R116 = defineRule({
  id: 'R-116',
  title: 'Locks that hold people in are tied to fire detection as their section requires',
  family: 'alarm',
  book: 'nfpa72',
  cites: [
    text('nfpa72', '21.9 (2010 and later)', 'Electrically locked doors'),
    under('sensorRelease'),
    under('delayedEgress'),
    under('controlledEgress'),
    under('elevatorLobby'),
    under('hardwareRelease'),
  ],
  confidence: 'read',
  note: 'What ends a sensor lock or an elevator-lobby lock stands in R-16 and R-95. The 2010 text was read. That later editions only point to the other codes is from general knowledge.',
  why: 'A lock that prevents egress must release on its own when the building detects a fire.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects),
      of: { release: ['delayed'] },
      items: ['detectionRelease'],
      says: 'Sprinkler flow and automatic detection, as far as the building has them, end the delay; a manual pull station need not.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects, not(releaseExcuse)),
      of: { release: ['controlled'] },
      items: ['detectionRelease'],
      says: 'Sprinkler flow and automatic detection end the controlled lock’s hold; only the treatment areas that the code names are excused.',
    },
    {
      key: 'f',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects, alarmMayBeThere),
      of: { release: ['delayed'] },
      items: ['fireAlarmRelease'],
      says: 'The fire alarm system carries the signal that ends the delay.',
    },
    {
      key: 'g',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects, alarmMayBeThere, not(releaseExcuse)),
      of: { release: ['controlled'] },
      items: ['fireAlarmRelease'],
      says: 'The fire alarm system carries the signal that ends the controlled lock’s hold.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(yes('isEgress'), yes('fireAlarm'), nfpa72({ to: 2010 })),
      of: { release: ['doorSwitch'] },
      items: ['fireAlarmRelease'],
      says: 'NFPA 72-2010 requires a lock that prevents egress to be tied to the fire alarm, even one released by its own bar.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('fireAlarm')),
      of: { release: ['doorSwitch'] },
      says: 'Whether a lock released by the switch in its bar must also be tied to the fire alarm is for a reviewer to settle with the authority.',
    },
    {
      key: 'e',
      effect: 'permit',
      when: all(yes('isEgress'), not(nfpa72({ to: 2010 }))),
      of: { release: ['doorSwitch'] },
      says: 'The model building codes do not themselves require fire-alarm release for a lock released by its own bar or lever.',
    },
  ],
  cases: cases(
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
  ),
});
