import { text, under } from '../../codes/sections.ts';
import { all, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { releaseExcuse } from '../special/conditions.ts';
import { cabinet, exit, nothing, nursery, somethingDetects, ward } from './given.ts';

const sets = ['magnet/safe/sensor', 'delayedExitDevice/safe/delayed', 'magnet/safe/lobby'];
const b = { clause: 'b', on: 'magnet/safe/controlled' } as const;

export const R120 = defineRule({
  id: 'R-120',
  title: 'What the alarm unlocked stays unlocked until manually reset',
  family: 'alarm',
  book: 'nfpa72',
  cites: [
    text('nfpa72', '21.9', 'Electrically locked doors'),
    under('sensorRelease'),
    under('delayedEgress'),
  ],
  confidence: 'read',
  note: 'Read in the 2007 text; for sensor release from general knowledge.',
  why: 'A timer that locks again does so while people are still on their way.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects),
      of: { release: ['sensor', 'delayed', 'lobby'] },
      items: ['overrideReset'],
      says: 'After an alarm it relocks only when someone manually resets it; no timer may do so.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(yes('isEgress'), somethingDetects, not(releaseExcuse)),
      of: { release: ['controlled'] },
      items: ['overrideReset'],
      says: 'After an alarm the controlled-egress lock relocks only when staff manually reset it; no timer may do so.',
    },
  ],
  cases: cases(
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
  ),
});
