import { under } from '../../codes/sections.ts';
import {
  besideLeafLock,
  entryByElectricLock,
  handBoltOnLeaf,
  leverOrBarOnLeaf,
  outsideNotKnownFree,
} from '../../arrangement/leafLocks.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, defineRule } from '../rule.ts';

const small = { roomUse: 'office', occupancyGroup: 'B', occupantLoad: 10, doorType: 'single' } as const;
const room = { egressRole: 'exitAccess', latch: 'mortise' } as const;

export const R23 = defineRule({
  id: 'R-23',
  title: 'Latch and magnet act as one motion',
  family: 'magnets',
  book: 'ibc',
  cites: [under('hardwareRelease'), under('unlatching')],
  confidence: 'read',
  why: 'A person who has turned the lever believes that the door is free; a magnet that still holds feels like a jammed door.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['doorSwitchHardware'],
      when: all(yes('isEgress'), not(is('latch', 'pushPull', 'roller'))),
      of: { family: ['magnet'], release: ['doorSwitch'] },
      says: 'The lever or bar that retracts the latch gets the switch that cuts the magnet, so that one motion does both.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(yes('isEgress'), not(is('latch', 'pushPull', 'roller'))),
      of: { family: ['magnet'], release: ['sensor'] },
      says: 'The leaf keeps its latch beside the magnet; aim the sensor so that it unlocks before a hand reaches the lever or bar.',
    },
    {
      key: 'c',
      effect: 'require',
      items: ['passageFunction'],
      when: all(entryByElectricLock, any(leverOrBarOnLeaf, yes('panicWithLock')), outsideNotKnownFree),
      of: besideLeafLock,
      says: 'The lever or trim beside this lock is free outside at all hours, or a credential opens nothing: one lock decides who gets in, and the latch below it only holds the leaf closed.',
    },
    {
      key: 'd',
      effect: 'require',
      items: ['lockTakenOff'],
      when: handBoltOnLeaf,
      of: besideLeafLock,
      says: 'Remove the patch lock or bolt on the leaf: once thrown it holds the door after everything else has released.',
    },
  ],
  cases: cases(
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
  ),
});
