import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases } from '../rule.ts';

const small = { roomUse: 'office', occupancyGroup: 'B', occupantLoad: 10, doorType: 'single' } as const;

const room = { egressRole: 'exitAccess', latch: 'mortise' } as const;

export const R23Cases = cases(
  ...onEach(
    ['magnet/safe/sensor', 'delayedMagnet/safe/delayed', 'boltSolenoid/safe/doorSwitch'],
    'reader, lever lock on the leaf',
    { ...room, readerSides: 'secure' },
    'yes',
    { clause: 'c', does: ['passageFunction'] },
  ),
  [
    'reader, storeroom lever',
    { ...room, readerSides: 'secure', lockFunction: 'storeroom' },
    'yes',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  [
    'reader, passage lever',
    { ...room, readerSides: 'secure', lockFunction: 'passage' },
    'no',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  [
    'reader, bar',
    { ...room, latch: 'rimExit', readerSides: 'secure' },
    'yes',
    { clause: 'c', on: 'magnet/safe/doorSwitch' },
  ],
  [
    'reader, push and pull',
    { ...room, ...small, latch: 'pushPull', readerSides: 'secure' },
    'no',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  [
    'reader, push and pull that gets a bar',
    {
      ...room,
      ...small,
      occupancyGroup: 'A-3',
      occupantLoad: 200,
      latch: 'pushPull',
      readerSides: 'secure',
    },
    'yes',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  [
    'open by schedule',
    { ...room, readerSides: 'none', wishScheduledUnlock: true },
    'yes',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  [
    'nobody let in by it',
    { ...room, readerSides: 'none', wishScheduledUnlock: false },
    'no',
    { clause: 'c', on: 'magnet/safe/sensor' },
  ],
  ['reader not known', room, 'unknown', { clause: 'c', on: 'magnet/safe/sensor' }],
  [
    'a lock that takes the place of the lever',
    { ...room, readerSides: 'secure' },
    'no',
    { clause: 'c', on: 'mortiseLock/safe/free' },
  ],
  ...(['patch', 'hookbolt', 'deadboltOnly'] as const).flatMap((latch) =>
    onEach(
      ['magnet/safe/sensor', 'delayedMagnet/safe/delayed', 'boltMotor/safe/sensor'],
      latch,
      { latch },
      'yes',
      {
        clause: 'd',
        does: ['lockTakenOff'],
      },
    ),
  ),
  ['lever lock', { latch: 'mortise' }, 'no', { clause: 'd', on: 'magnet/safe/sensor' }],
  ['latch not known', {}, 'unknown', { clause: 'd', on: 'magnet/safe/sensor' }],
  [
    'a patch lock of its own takes the place of the old one',
    { latch: 'patch' },
    'no',
    { clause: 'd', on: 'glassPatchLock/safe/doorSwitch' },
  ],
  ...doing(
    { a: ['doorSwitchHardware'], b: 'caution' },
    (
      [
        [
          'a',
          ['magnet/safe/doorSwitch', 'shearMagnet/safe/doorSwitch'],
          ['magnet/safe/sensor', 'boltMotor/safe/doorSwitch'],
        ],
        [
          'b',
          ['magnet/safe/sensor', 'shearMagnet/safe/sensor'],
          ['magnet/safe/doorSwitch', 'boltMotor/safe/sensor'],
        ],
      ] as const
    ).flatMap(([clause, meant, rest]) => [
      ...onEach(meant, 'leaf with a latch', room, 'yes' as const, clause),
      ...onEach(rest, 'leaf with a latch', room, 'no' as const, clause),
      ...onEach([meant[0]], 'push/pull leaf', { ...room, latch: 'pushPull' }, 'no' as const, clause),
      ...onEach([meant[0]], 'roller latch', { ...room, latch: 'roller' }, 'no' as const, clause),
      ...onEach([meant[0]], 'cabinet', { ...room, egressRole: 'noOccupiedSpace' }, 'no' as const, clause),
      ...onEach([meant[0]], 'latch not known', { egressRole: 'exitAccess' }, 'unknown' as const, clause),
    ]),
  ),
);
