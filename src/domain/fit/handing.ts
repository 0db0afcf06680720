import type { FactValue } from '../model/fields.ts';

export type Hand = FactValue<'handing'>;
export type Side = 'left' | 'right';

/**
 * Hand of a door as seen from the outside, the key or secure side: hinges left or right, and R when the leaf swings
 * toward the viewer. Source: door makers’ handing charts, read.
 */
export function handOf(hinges: Side, swings: 'away' | 'toward'): Hand {
  if (hinges === 'left') return swings === 'away' ? 'LH' : 'LHR';
  return swings === 'away' ? 'RH' : 'RHR';
}

const other: Readonly<Record<Hand, Hand>> = { LH: 'RHR', RH: 'LHR', LHR: 'RH', RHR: 'LH' };
/** What the same door is called by somebody who stands on the wrong side: both letters turn. */
export function handFromWrongSide(hand: Hand): Hand {
  return other[hand];
}

/** A leaf that swings in, away from the secure side, needs a Z-bracket for a magnet. Common practice, no source. */
export function magnetNeedsBracket(hand: Hand): boolean {
  return hand === 'LH' || hand === 'RH';
}
