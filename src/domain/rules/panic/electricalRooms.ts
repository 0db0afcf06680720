import type { Condition } from '../../logic/condition.ts';
import { all, no, yes } from '../../logic/condition.ts';
import type { Clause } from '../rule.ts';
import { anyLockWithoutBar, keyInside, latchNeedsBar } from './panicCases.ts';

/** What follows at an electrical room once a trigger holds; differ in the trigger only. */
export function electricalRoomClauses(trigger: Condition): readonly [Clause, ...Clause[]] {
  return [
    {
      key: 'a',
      effect: 'require',
      items: ['panicHardware'],
      when: all(trigger, no('hasExitDevice')),
      says: 'The electrical equipment behind this door requires panic hardware.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['fireExitHardware'],
      when: all(trigger, no('hasExitDevice'), yes('fireRated')),
      says: 'It is also a fire door, so its panic hardware carries the fire exit hardware label.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: trigger,
      of: anyLockWithoutBar,
      says: 'A person burned by an arc must be able to open this door with the body; only panic hardware may hold it.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(trigger, no('hasExitDevice')),
      of: latchNeedsBar,
      says: 'This electrical room needs a push bar on its door, and there is none; a lever latch is not enough.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: trigger,
      of: keyInside,
      says: 'A person hurt in this electrical room cannot use a key to get out.',
    },
    {
      key: 'f',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(trigger, no('swingsWithEgress')),
      says: 'The door must swing out of the electrical room; rehang it or replace leaf and frame.',
    },
    {
      key: 'g',
      effect: 'signOff',
      grade: 'must',
      when: trigger,
      of: { release: ['delayed'] },
      says: 'A delay keeps a person beside faulted equipment for seconds that count; a reviewer must accept it, and free panic hardware is better.',
    },
  ];
}
