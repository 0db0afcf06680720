import { under } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const court = { roomUse: 'courtroom' } as const;

export const R133 = defineRule({
  id: 'R-133',
  title: 'Courtroom doors to the secure side',
  family: 'health',
  book: 'ibc',
  cites: [under('delayedEgress'), under('hardwareRelease'), under('panicHardware')],
  confidence: 'memory',
  note: 'Partly second-hand, partly from general knowledge.',
  why: 'Public egress can cross the path of judges, jury and prisoners.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: is('roomUse', 'courtroom'),
      of: { not: { release: ['free'] } },
      says: 'A reviewer signs for a courtroom door that does not simply open by its lever or bar.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: is('roomUse', 'courtroom'),
      says: 'To the secure corridor the options are a free lever or bar, a switch in that hardware, or delayed egress at a side door in a sprinklered building; panic hardware is required from 50 people, and holding cells are judged as detention.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: is('roomUse', 'courtroom'),
      of: { release: ['sensor'] },
      says: 'A sensor opens the secure side to anyone who walks up; a switch in the lever or bar is the better release here.',
    },
  ],
  cases: cases(
    ...onEach(['magnet/safe/doorSwitch', 'delayedExitDevice/safe/delayed'], 'courtroom', court, 'yes', {
      clause: 'a',
      does: 'signOff must',
    }),
    ['free bar', court, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
    ['office', { roomUse: 'office' }, 'no', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
    ['room not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/doorSwitch' }],
    ['courtroom', court, 'yes', { clause: 'b', does: 'caution' }],
    ['office', { roomUse: 'office' }, 'no', { clause: 'b' }],
    ['room not known', {}, 'unknown', { clause: 'b' }],
    ['courtroom', court, 'yes', { clause: 'c', on: 'magnet/safe/sensor', does: 'caution' }],
    ['switch in the bar', court, 'no', { clause: 'c', on: 'magnet/safe/doorSwitch' }],
    ['office', { roomUse: 'office' }, 'no', { clause: 'c', on: 'magnet/safe/sensor' }],
    ['room not known', {}, 'unknown', { clause: 'c', on: 'magnet/safe/sensor' }],
  ),
});
