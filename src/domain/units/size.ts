import { type LengthOptions, mmPerInch, parseLength, plainSpelling } from './length.ts';
import { type Qty, qty } from './quantity.ts';
import { refuse, type Told } from './told.ts';

export type Size = Told<{
  widthIn: Qty<'in'>;
  heightIn: Qty<'in'>;
  thicknessIn?: Qty<'in'>;
  /** Marked as a pair: the width is that of the whole opening. */
  pair: boolean;
  /** What was understood beyond the bare figures, for the person who typed it. */
  says?: string;
}>;

const pairWidth = 'A pair: the width given is that of both leaves together.';
/** Narrower, and a “pair” is more likely the width of one leaf. */
const leastPairIn = 48;
/** Sizes below this many millimeters, or above it as inches, are no doors. */
const leastDoorMm = 300;

function sized(widthIn: number, heightIn: number, pair: boolean, thicknessIn?: number): Size {
  if (pair && widthIn < leastPairIn)
    return refuse('A pair this narrow is not likely; write the width of the whole opening.');
  return {
    ok: true,
    widthIn: qty(widthIn, 'in'),
    heightIn: qty(heightIn, 'in'),
    ...(thicknessIn === undefined ? {} : { thicknessIn: qty(thicknessIn, 'in') }),
    pair,
    ...(pair ? { says: pairWidth } : {}),
  };
}

/** 3070 is 3 ft 0 in by 7 ft 0 in: each length is one digit of feet and one of inches. */
function fromCode(code: string, pair: boolean): Size {
  const digit = (place: number) => Number(code.charAt(place));
  const widthIn = digit(0) * 12 + digit(1);
  const heightIn = digit(2) * 12 + digit(3);
  if (widthIn < 12 || heightIn < 72)
    return refuse(`“${code}” is not a door size of the kind 3070; write width x height with units.`);
  return sized(widthIn, heightIn, pair);
}

/** One side of "3-0 x 7-0": beside another length it cannot be a date. */
function side(text: string, bare: LengthOptions['bare']) {
  const shorthand = /^(\d{1,2}) ?- ?(\d{1,2}) ?"?$/.exec(text);
  if (shorthand) return parseLength(`${shorthand[1]}'-${shorthand[2]}"`, { bare });
  return parseLength(text, { bare });
}

/**
 * Reads a door size: 3'-0" x 7'-0", 3-0 x 7-0, 3070, PR 6070, 915 x 2135, with or without a thickness.
 * The width of a pair is the whole opening.
 */
export function parseSize(text: string, options: LengthOptions): Size {
  const plain = plainSpelling(text);
  const marked = /^(?:pr\b\.?|pair\b(?: of)?) ?(.*)$/.exec(plain);
  const pair = marked !== null;
  const body = marked ? (marked[1] as string) : plain;
  if (/^\d{4}$/.test(body)) return fromCode(body, pair);

  const sides = body.split(/ ?(?:x|\bby\b) ?/);
  if (sides.length !== 2 && sides.length !== 3)
    return refuse(`“${text.trim()}” is not a size; write width x height.`);
  const [first, second, third] = sides as [string, string, string?];
  const numbers = [first, second].map((one) => (/^\d+(\.\d+)?$/.test(one) ? Number(one) : undefined));
  const bothBare = numbers.every((one) => one !== undefined);
  // 915 x 2135 can only be millimeters: nobody builds a door of 76 ft.
  const bare =
    bothBare && options.bare === 'refuse' && numbers.every((one) => (one ?? 0) >= leastDoorMm)
      ? 'mm'
      : options.bare;
  const width = side(first, bare);
  if (!width.ok) return width;
  const height = side(second, bare);
  if (!height.ok) return height;
  const thickness = third === undefined ? undefined : side(third, bare);
  if (thickness && !thickness.ok) return thickness;
  if (width.inches * mmPerInch < leastDoorMm || height.inches * mmPerInch < leastDoorMm) {
    return refuse(`“${text.trim()}” is too small for a door; check the units.`);
  }
  return sized(width.inches, height.inches, pair, thickness?.inches);
}
