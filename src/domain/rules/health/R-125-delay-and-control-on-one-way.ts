import { under } from '../../codes/sections.ts';
import { atLeast } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const free = 'mortiseLock/secure/free';

export const R125 = defineRule({
  id: 'R-125',
  title: 'A delayed and a controlled door in one egress path',
  family: 'health',
  book: 'ibc',
  cites: [under('delayedEgress'), under('controlledEgress')],
  confidence: 'secondary',
  why: 'Each section counts only its own kind of door, and no text says what two kinds in a row add up to.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: atLeast('controlledDoorsOnPath', 1),
      of: { release: ['delayed'] },
      says: 'There is a controlled door in the same egress path; a reviewer decides whether a delay may be added to it.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: atLeast('delayedDoorsOnPath', 1),
      of: { release: ['controlled', 'clinical'] },
      says: 'There is a delayed door in the same egress path; a reviewer decides whether a staff-released lock may be added to it.',
    },
  ],
  cases: cases(
    [
      'one controlled door on the way',
      { controlledDoorsOnPath: 1 },
      'yes',
      { clause: 'a', on: 'delayedMagnet/safe/delayed', does: 'signOff must' },
    ],
    ['none', { controlledDoorsOnPath: 0 }, 'no', { clause: 'a', on: 'delayedMagnet/safe/delayed' }],
    ['number not known', {}, 'unknown', { clause: 'a', on: 'delayedMagnet/safe/delayed' }],
    ['a free lever', { controlledDoorsOnPath: 1 }, 'no', { clause: 'a', on: free }],
    ...onEach(
      ['magnet/safe/controlled', 'mortiseLock/secure/clinical'],
      'one delayed door on the way',
      { delayedDoorsOnPath: 1 },
      'yes',
      { clause: 'b', does: 'signOff must' },
    ),
    ['none', { delayedDoorsOnPath: 0 }, 'no', { clause: 'b', on: 'magnet/safe/controlled' }],
    ['number not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/controlled' }],
    ['a free lever', { delayedDoorsOnPath: 1 }, 'no', { clause: 'b', on: free }],
  ),
});
