import type { CodeBasis } from '../../codes/basis.ts';
import type { FactValues } from '../../model/fields.ts';
import { doing } from '../doing.ts';
import type { CaseRow } from '../rule.ts';
import {
  behindBar,
  devicesOf,
  heldByBarOrSensor,
  inEach,
  keyInsideMeant,
  latchNeedsBarMeant,
  lockWithoutBarMeant,
} from './panicCases.ts';

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
