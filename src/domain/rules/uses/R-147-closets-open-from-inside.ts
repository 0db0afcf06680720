import { under } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const closet = all(is('roomUse', 'closet'), not(is('latch', 'pushPull', 'roller')));

export const R147 = defineRule({
  id: 'R-147',
  title: 'A closet opens from inside',
  family: 'uses',
  book: 'ibc',
  cites: [under('closetDoors')],
  confidence: 'memory',
  note: 'From general knowledge; refusing is the safe side.',
  why: 'A person who steps into a closet must not be locked in by its latch.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: closet,
      items: ['insideRelease'],
      says: 'A closet that latches needs a lever or knob inside that always opens it.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: closet,
      of: { release: ['none', 'keyInside', 'credentialOut', 'buttonOnly', 'alarmOnly'] },
      says: 'This arrangement could lock a person in the closet.',
    },
  ],
  cases: cases(
    [
      'closet with a latch',
      { roomUse: 'closet', latch: 'bored' },
      'yes',
      { clause: 'a', does: ['insideRelease'] },
    ],
    ['closet with a catch or none', { roomUse: 'closet', latch: 'pushPull' }, 'no', { clause: 'a' }],
    ['closet with a catch or none', { roomUse: 'closet', latch: 'roller' }, 'no', { clause: 'a' }],
    ['office', { roomUse: 'office', latch: 'bored' }, 'no', { clause: 'a' }],
    ['latch not seen', { roomUse: 'closet' }, 'unknown', { clause: 'a' }],
    [
      'no way to open from inside',
      { roomUse: 'closet', latch: 'bored' },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/none', does: 'prohibit' },
    ],
    [
      'no way to open from inside',
      { roomUse: 'closet', latch: 'bored' },
      'yes',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
    [
      'no way to open from inside',
      { roomUse: 'closet', latch: 'bored' },
      'yes',
      { clause: 'b', on: 'mortiseLock/secure/credentialOut' },
    ],
    [
      'no way to open from inside',
      { roomUse: 'closet', latch: 'bored' },
      'yes',
      { clause: 'b', on: 'magnet/safe/buttonOnly' },
    ],
    [
      'no way to open from inside',
      { roomUse: 'closet', latch: 'bored' },
      'yes',
      { clause: 'b', on: 'magnet/safe/alarmOnly' },
    ],
    [
      'free lever',
      { roomUse: 'closet', latch: 'bored' },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/free' },
    ],
    [
      'closet with a catch or none',
      { roomUse: 'closet', latch: 'pushPull' },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
    [
      'closet with a catch or none',
      { roomUse: 'closet', latch: 'roller' },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
    [
      'office',
      { roomUse: 'office', latch: 'bored' },
      'no',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
    [
      'latch not seen',
      { roomUse: 'closet' },
      'unknown',
      { clause: 'b', on: 'mechanicalLock/none/keyInside' },
    ],
  ),
});
