import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { alarmMayBeThere } from '../alarm/given.ts';
import { loneStairIbc } from './conditions.ts';
import { locked, loneStairCases, nfpaOnly, open } from './given.ts';

const lockedStair = all(is('egressRole', 'stairEntry'), not(loneStairIbc));
const trim = 'exitTrim/safe/stairReentry';
const ibc2024 = { ibc: 2024 } as const;

export const R56 = defineRule({
  id: 'R-56',
  title: 'Alarm and power loss free the stair side too; high-rise stairs have telephones',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), under('highRiseStairs'), text('ibc', '403.5.3.1', 'Stairway communication')],
  confidence: 'secondary',
  note: 'That 2024 added alarm and power loss is secondary, its exact words were not seen; that it asks the alarm only where the area has one is from general knowledge. The telephones were read. A local text with the three triggers is entered as an amendment.',
  why: 'A release that waits for somebody to press a switch comes late; from 2024 the alarm and a dead supply do it as well.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(ibc({ from: 2024, readTo: 2024 }), lockedStair),
      of: { release: ['stairReentry'] },
      items: ['powerLossRelease'],
      says: 'Besides the switch, any loss of power to the lock frees the stair side.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(ibc({ from: 2024, readTo: 2024 }), lockedStair, alarmMayBeThere),
      of: { release: ['stairReentry'] },
      items: ['stairAlarmRelease'],
      says: 'Besides the switch, a fire alarm in the area the stair serves frees the stair side.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(ibc(), lockedStair, yes('highRise')),
      of: { release: ['stairReentry'] },
      items: ['stairPhones'],
      says: 'A telephone or intercom to an attended place stands in the stair at every fifth floor or closer.',
    },
  ],
  cases: cases(
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
  ),
});
