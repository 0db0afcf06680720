import type { Condition } from '../../logic/condition.ts';
import { all, no, yes } from '../../logic/condition.ts';
import type { CodeBasis } from '../../codes/basis.ts';
import type { FactValues } from '../../model/fields.ts';
import { doing } from '../doing.ts';
import type { CaseRow, Clause } from '../rule.ts';
import {
  anyLockWithoutBar,
  behindBar,
  devicesOf,
  heldByBarOrSensor,
  inEach,
  keyInside,
  keyInsideMeant,
  latchNeedsBar,
  latchNeedsBarMeant,
  lockWithoutBarMeant,
} from './panicCases.ts';

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

const lever = { latch: 'bored', panicPresent: false } as const;
const bar = { latch: 'rimExit', panicPresent: true } as const;
const unrated = { fireRatingMin: 0, wallRatingMin: 0 } as const;

/** The trigger's own cases in every clause, then what each clause adds. */
export function electricalRoomCases(
  rows: readonly CaseRow[],
  meant: FactValues,
  basis: Partial<CodeBasis>,
): readonly CaseRow[] {
  const trim = 'exitTrim/secure/free';
  return doing(
    {
      a: ['panicHardware'],
      b: ['fireExitHardware'],
      c: 'prohibit',
      d: 'prohibit',
      e: 'prohibit',
      f: 'modify doorSupplier',
      g: 'signOff must',
    },
    [
      ...inEach(
        [
          { clause: 'a', on: trim, basis, facts: lever },
          { clause: 'b', on: trim, basis, facts: { ...lever, fireRatingMin: 90 } },
          { clause: 'c', on: 'mortiseLock/secure/free', basis },
          { clause: 'd', on: 'strikeMortise/secure/free', basis, facts: lever },
          { clause: 'e', on: 'mechanicalLock/none/keyInside', basis },
          { clause: 'f', basis, facts: { swingsWithEgress: false } },
          { clause: 'g', on: 'delayedExitDevice/safe/delayed', basis },
        ],
        rows,
      ),
      ['bar already there', { ...meant, ...bar }, 'no', { clause: 'a', basis }],
      ['bar or not: not known', meant, 'unknown', { clause: 'a', basis }],
      [
        'a rated door needs it as well',
        { ...meant, ...lever, fireRatingMin: 90 },
        'yes',
        { clause: 'a', basis },
      ],
      ['rating not known', { ...meant, ...lever }, 'unknown', { clause: 'b', basis }],
      ['bar or not: not known', { ...meant, fireRatingMin: 90 }, 'unknown', { clause: 'b', basis }],
      ['bar already there', { ...meant, ...bar, fireRatingMin: 90 }, 'no', { clause: 'b', basis }],
      ['unrated door is clause a', { ...meant, ...lever, ...unrated }, 'no', { clause: 'b', basis }],
      ...devicesOf(
        'c',
        { ...meant, ...bar },
        [...lockWithoutBarMeant, ...heldByBarOrSensor],
        [...behindBar, ...latchNeedsBarMeant, ...keyInsideMeant],
        basis,
      ),
      [
        'bar on the leaf',
        { ...meant, ...bar },
        'no',
        { clause: 'd', on: 'strikeMortise/secure/free', basis },
      ],
      ...devicesOf(
        'd',
        { ...meant, ...lever },
        latchNeedsBarMeant,
        [...behindBar, 'magnet/safe/sensor', 'mortiseLock/secure/free', 'mechanicalLock/none/keyInside'],
        basis,
      ),
      ...devicesOf('e', meant, keyInsideMeant, ['mechanicalLock/none/free', trim], basis),
      ['swings out', { ...meant, swingsWithEgress: true }, 'no', { clause: 'f', basis }],
      ...devicesOf('g', meant, ['delayedMagnet/safe/delayed'], [trim, 'magnet/safe/sensor'], basis),
    ],
  );
}
