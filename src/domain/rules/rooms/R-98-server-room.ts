import { under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'mortiseLock/secure/free';

export const R98 = defineRule({
  id: 'R-98',
  title: 'Server and data rooms open freely from inside',
  family: 'rooms',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('monitoredEgress')],
  confidence: 'read',
  why: 'However valuable the equipment, a person inside must be able to get out at once.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: is('roomUse', 'serverRoom', 'modularDataCenter'),
      of: { release: ['free'] },
      says: 'A fail-secure lock with a lever or bar that always opens from inside is allowed and is the usual choice here.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(is('roomUse', 'serverRoom', 'modularDataCenter'), is('readerSides', 'both')),
      says: 'The inside reader may only record who leaves; the lever opens without it.',
    },
  ],
  cases: cases(
    ['server room', { roomUse: 'serverRoom' }, 'yes', { clause: 'a', on, does: 'permit' }],
    ['modular data center', { roomUse: 'modularDataCenter' }, 'yes', { clause: 'a', on }],
    ['office', { roomUse: 'office' }, 'no', { clause: 'a', on }],
    ['room not known', {}, 'unknown', { clause: 'a', on }],
    ...onEach(
      ['mortiseLock/secure/credentialOut', 'magnet/safe/sensor'],
      'no free lock',
      { roomUse: 'serverRoom' },
      'no',
      'a',
    ),
    [
      'readers on both sides',
      { roomUse: 'serverRoom', readerSides: 'both' },
      'yes',
      { clause: 'b', does: 'caution' },
    ],
    [
      'data center, both sides',
      { roomUse: 'modularDataCenter', readerSides: 'both' },
      'yes',
      { clause: 'b' },
    ],
    ['inside reader records', { roomUse: 'serverRoom', readerSides: 'recordOut' }, 'no', { clause: 'b' }],
    ['office, both sides', { roomUse: 'office', readerSides: 'both' }, 'no', { clause: 'b' }],
    ['reader not known', { roomUse: 'serverRoom' }, 'unknown', { clause: 'b' }],
  ),
});
