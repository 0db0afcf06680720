import type { FactValue } from '../model/fields.ts';
import type { Confidence } from '../rules/rule.ts';
import { type Qty, qty } from '../units/quantity.ts';
import { refuse, type Told } from '../units/told.ts';

type WallKind = FactValue<'wallKind'>;
interface Row {
  readonly wallMin: number;
  readonly doorMin: number;
  readonly confidence: Confidence;
}
const row = (wallMin: number, doorMin: number, confidence: Confidence): Row => ({
  wallMin,
  doorMin,
  confidence,
});

/** Door minutes by wall. Source: IBC Table 716.1(2), with the confidence of each row. */
const doorRatings: Readonly<Record<WallKind, readonly Row[]>> = {
  none: [],
  corridor: [row(60, 20, 'secondary'), row(30, 20, 'memory')],
  otherPartition: [row(60, 45, 'memory'), row(30, 20, 'memory')],
  fireBarrier: [
    row(240, 180, 'read'),
    row(180, 180, 'read'),
    row(120, 90, 'read'),
    row(90, 90, 'read'),
    row(60, 45, 'secondary'),
  ],
  exitEnclosure: [row(120, 90, 'secondary'), row(60, 60, 'memory')],
  horizontalExit: [row(240, 180, 'memory'), row(180, 180, 'memory'), row(120, 90, 'memory')],
  fireWall: [row(240, 180, 'read'), row(180, 180, 'read'), row(120, 90, 'read'), row(90, 90, 'read')],
  smokeBarrier: [row(60, 20, 'secondary')],
  smokePartition: [],
  exterior: [row(180, 90, 'memory'), row(120, 90, 'memory'), row(60, 45, 'memory')],
};

/** Each leaf of a double fire wall (NFPA 221). Row read in part; values from general knowledge. */
export const doubleFireWall: readonly Row[] = [
  row(180, 180, 'memory'),
  row(120, 90, 'memory'),
  row(60, 60, 'memory'),
];

export type DoorRating = Told<{ minutes: Qty<'min'>; confidence: Confidence }>;

/**
 * Fire rating of a door by its wall, minutes. Only the table’s own rows are answered: a wall rating between two
 * rows is asked about, never rounded. A wall of 0 min asks no rating of its door.
 */
export function doorRating(kind: WallKind, wall: Qty<'min'>): DoorRating {
  if (wall === 0) return { ok: true, minutes: qty(0, 'min'), confidence: 'memory' };
  const found = doorRatings[kind].find((one) => one.wallMin === wall);
  if (!found)
    return refuse(`The table has no row for this kind of wall at ${wall} min; ask what the drawings mean.`);
  return { ok: true, minutes: qty(found.doorMin, 'min'), confidence: found.confidence };
}

const letters: Readonly<Record<string, readonly number[]>> = {
  A: [180],
  B: [90, 60],
  C: [45],
  D: [90],
  E: [45],
};

/** Minutes behind an old label letter. B stood for 90 and for 60 and is therefore a question, not an answer. */
export function minutesOfLetter(letter: string): Told<{ minutes: Qty<'min'> }> {
  const meant = letters[letter.trim().toUpperCase()];
  if (!meant) return refuse(`“${letter.trim()}” is not a label letter; write minutes.`);
  const [first, second] = meant;
  if (second !== undefined)
    return refuse(
      `A ${letter.trim().toUpperCase()} label may mean ${first} or ${second} min; read the minutes on the label.`,
    );
  return { ok: true, minutes: qty(first as number, 'min') };
}
