import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const path = { egressRole: 'exitAccess', othersLeaveThroughRoom: true, roomUse: 'office' } as const;
const cabinet = { ...path, egressRole: 'noOccupiedSpace' } as const;
const notPath = { ...path, othersLeaveThroughRoom: false } as const;
const on = 'magnet/safe/controlled';
const through = all(yes('isEgress'), yes('othersLeaveThroughRoom'));

export const R127 = defineRule({
  id: 'R-127',
  title: 'Egress through this room stays open',
  family: 'health',
  book: 'ibc',
  cites: [under('interveningRooms'), text('nfpa101', '7.5.2', 'Impediments to egress')],
  confidence: 'read',
  note: 'NFPA 101 from general knowledge. Sensor and hardware release open for the person who comes, so they go to a reviewer; delayed egress and the elevator-lobby set are judged by their own rules.',
  why: 'An egress path may not lead through a room that someone can lock.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: through,
      of: {
        release: [
          'controlled',
          'clinical',
          'keyInside',
          'credentialOut',
          'buttonOnly',
          'alarmOnly',
          'attended',
          'none',
        ],
      },
      says: 'Others leave through this room, so its door may not be locked against them, even with fire-alarm release; give them another path or use a free-egress lock.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: through,
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'lobby'] },
      says: 'Others leave through this room; a reviewer confirms that the lock releases for their direction of travel.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'othersLeaveThroughRoom',
      severity: 'warn',
      when: all(
        yes('othersLeaveThroughRoom'),
        is('roomUse', 'multiToilet', 'singleToilet', 'storage', 'closet', 'kitchen'),
      ),
      says: 'A restroom, storage room, closet or kitchen may not serve as egress for other rooms; look for the intended path.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        on,
        'mortiseLock/secure/clinical',
        'mechanicalLock/none/keyInside',
        'mortiseLock/secure/credentialOut',
        'magnet/safe/buttonOnly',
        'magnet/safe/alarmOnly',
        'detentionLock/none/attended',
        'strikeMortise/secure/none',
      ],
      'others leave through the office',
      path,
      'yes',
      { clause: 'a', does: 'prohibit' },
    ),
    ...onEach(
      ['mortiseLock/secure/free', 'magnet/safe/sensor', 'delayedMagnet/safe/delayed'],
      'others leave through the office',
      path,
      'no',
      'a',
    ),
    ['nobody else leaves through it', notPath, 'no', { clause: 'a', on }],
    ['cabinet', cabinet, 'no', { clause: 'a', on }],
    ['not asked', { egressRole: 'exitAccess' }, 'unknown', { clause: 'a', on }],
    ...onEach(
      ['magnet/safe/sensor', 'magnet/safe/doorSwitch', 'delayedMagnet/safe/delayed', 'magnet/safe/lobby'],
      'others leave through the office',
      path,
      'yes',
      { clause: 'b', does: 'signOff must' },
    ),
    ['a free lever', path, 'no', { clause: 'b', on: 'mortiseLock/secure/free' }],
    ['nobody else leaves through it', notPath, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['cabinet', cabinet, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['not asked', { egressRole: 'exitAccess' }, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
    [
      'through a toilet room',
      { ...path, roomUse: 'multiToilet' },
      'yes',
      { clause: 'c', does: 'warn othersLeaveThroughRoom' },
    ],
    ['through a single toilet', { ...path, roomUse: 'singleToilet' }, 'yes', { clause: 'c' }],
    ['through a storage room', { ...path, roomUse: 'storage' }, 'yes', { clause: 'c' }],
    ['through a closet', { ...path, roomUse: 'closet' }, 'yes', { clause: 'c' }],
    ['through a kitchen', { ...path, roomUse: 'kitchen' }, 'yes', { clause: 'c' }],
    ['through an office', path, 'no', { clause: 'c' }],
    ['storage room nobody passes', { ...notPath, roomUse: 'storage' }, 'no', { clause: 'c' }],
    ['not asked', { roomUse: 'storage' }, 'unknown', { clause: 'c' }],
  ),
});
