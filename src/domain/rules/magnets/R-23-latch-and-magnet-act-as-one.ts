import { under } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, defineRule } from '../rule.ts';

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
      says: 'The lever or bar that draws the latch gets the switch that cuts the magnet, so that one motion does both.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(yes('isEgress'), not(is('latch', 'pushPull', 'roller'))),
      of: { family: ['magnet'], release: ['sensor'] },
      says: 'The leaf keeps its latch beside the magnet; set the sensor so that it has unlocked before a hand reaches the lever or bar.',
    },
  ],
  cases: cases(
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
