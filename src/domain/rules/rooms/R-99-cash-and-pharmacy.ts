import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const cash = { roomUse: 'cashRoom', egressRole: 'exitAccess' } as const;

export const R99 = defineRule({
  id: 'R-99',
  title: 'Value in a room is no reason to lock people in',
  family: 'rooms',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('locksAndLatches')],
  confidence: 'read',
  why: 'Neither cash, drugs nor evidence is on the list of places that may be locked against egress.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('roomUse', 'cashRoom', 'pharmacy')),
      of: { release: ['credentialOut', 'buttonOnly', 'alarmOnly', 'none'] },
      says: 'What is kept in this room earns no exemption: people inside leave without card, code or bare button.',
    },
    {
      key: 'b',
      effect: 'permit',
      when: is('roomUse', 'cashRoom', 'pharmacy'),
      of: { release: ['free'] },
      says: 'A fail-secure lock that always opens from inside is allowed; panic hardware is required only by occupant load.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'mortiseLock/secure/credentialOut',
        'magnet/safe/buttonOnly',
        'magnet/safe/alarmOnly',
        'strikeMortise/secure/none',
      ],
      'cash room',
      cash,
      'yes',
      'a',
    ),
    [
      'pharmacy',
      { ...cash, roomUse: 'pharmacy' },
      'yes',
      { clause: 'a', on: 'magnet/safe/buttonOnly', does: 'prohibit' },
    ],
    ['office', { ...cash, roomUse: 'office' }, 'no', { clause: 'a', on: 'magnet/safe/buttonOnly' }],
    [
      'cash cabinet',
      { ...cash, egressRole: 'noOccupiedSpace' },
      'no',
      { clause: 'a', on: 'magnet/safe/buttonOnly' },
    ],
    ['role not known', { roomUse: 'cashRoom' }, 'unknown', { clause: 'a', on: 'magnet/safe/buttonOnly' }],
    ...onEach(['mortiseLock/secure/free', 'magnet/safe/sensor'], 'cash room', cash, 'no', 'a'),
    ['cash room', cash, 'yes', { clause: 'b', on: 'mortiseLock/secure/free', does: 'permit' }],
    ['pharmacy', { roomUse: 'pharmacy' }, 'yes', { clause: 'b', on: 'mortiseLock/secure/free' }],
    ['office', { roomUse: 'office' }, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
    ['room not known', {}, 'unknown', { clause: 'b', on: 'mortiseLock/secure/free' }],
    ['card to leave', cash, 'no', { clause: 'b', on: 'mortiseLock/secure/credentialOut' }],
  ),
});
