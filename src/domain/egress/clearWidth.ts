import { limits } from '../codes/limits.ts';
import { type Qty, qty } from '../units/quantity.ts';
import { refuse, type Told } from '../units/told.ts';

/** Frame and hinge as usually made, in; the estimates below rest on these. Common practice, no source. */
const usualFrame = {
  stopIn: 5 / 8,
  barrelOffFaceIn: 5 / 16,
  barrelFromRabbetIn: 1 / 16,
  meetingGapIn: 1 / 16,
} as const;
const { stopIn, barrelOffFaceIn, barrelFromRabbetIn, meetingGapIn } = usualFrame;

export type ClearWidth = Told<{ clear: Qty<'in'>; enough: boolean }>;

function answer(clear: number): ClearWidth {
  return { ok: true, clear: qty(clear, 'in'), enough: clear >= limits.clearWidthMinIn.editions.any.value };
}
function wrong(width: number, thickness: number): string | undefined {
  if (!(width >= 12 && width <= 240)) return 'The frame must be 12 to 240 in wide.';
  if (!(thickness >= 0.25 && thickness <= 6)) return 'The leaf must be 1/4 to 6 in thick.';
  return undefined;
}

/** What the open leaf takes on the hinge side at 90 degrees, in: thickness + 5/16 + 1/16. */
function hingeSide(thickness: number): number {
  return thickness + barrelOffFaceIn + barrelFromRabbetIn;
}

/**
 * Clear width of one leaf on butt hinges open 90 degrees, in: frame − 5/8 stop − (thickness + 3/8).
 * Estimate, worked out from usual dimensions; the published range is frame − 1.5 to frame − 3 in.
 * Measured from the leaf’s face to the stop: 2010 ADA Standards 404.2.3.
 */
export function clearWidthButt(frameWidth: Qty<'in'>, thickness: Qty<'in'>): ClearWidth {
  const why = wrong(frameWidth, thickness);
  return why ? refuse(why) : answer(frameWidth - stopIn - hingeSide(thickness));
}

/** The same on swing-clear hinges, in: frame − 5/8 − 5/8, the leaf stands outside the opening. Estimate. */
export function clearWidthSwingClear(frameWidth: Qty<'in'>, thickness: Qty<'in'>): ClearWidth {
  const why = wrong(frameWidth, thickness);
  return why ? refuse(why) : answer(frameWidth - 2 * stopIn);
}

/**
 * One leaf of an equal pair on butt hinges, in: half the frame − (thickness + 3/8) − 1/16, to the edge of the
 * closed other leaf. That one leaf alone must give 32 in: IBC 1010.1.1, ADA 404.2.2. Estimate.
 */
export function clearWidthOfPairLeaf(frameWidth: Qty<'in'>, thickness: Qty<'in'>): ClearWidth {
  const why = wrong(frameWidth, thickness);
  return why ? refuse(why) : answer(frameWidth / 2 - hingeSide(thickness) - meetingGapIn);
}
