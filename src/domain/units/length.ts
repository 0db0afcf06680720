import { type Qty, qty } from './quantity.ts';
import { refuse, type Told } from './told.ts';

/**
 * Lengths as people write them in door schedules. 1 in = 25.4 mm exactly (ISO 80000, international inch).
 * A text that can be read in two ways is refused with a sentence; it is never guessed.
 */
export const mmPerInch = 25.4;
/** No door, frame or opening of a schedule is longer; a larger bare number was meant in millimeters. */
const longestIn = 240;

export interface LengthOptions {
  /** What a number without a unit means; `refuse` asks for the unit. */
  readonly bare: 'in' | 'mm' | 'refuse';
}
export type Length = Told<{ inches: Qty<'in'> }>;

const fractionSigns: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** One spelling for quotes, primes, dashes, fraction signs and unit words. */
export function plainSpelling(text: string): string {
  return text
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${fractionSigns[sign]}`)
    .replace(/⁄/g, '/')
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/[“”„″ʺ]/g, '"')
    .replace(/[‘’′ʹ`´]/g, "'")
    .replace(/''/g, '"')
    .replace(/[×✕]/g, 'x')
    .toLowerCase()
    .replace(/(?<=[\d\s/])(feet|foot|ft)\b\.?/g, "'")
    .replace(/(?<=[\d\s/])(inches|inch|in)\b\.?/g, '"')
    .replace(/\s+/g, ' ')
    .trim();
}

/** "10", "10.5", "3/4", "10 3/4", "10-3/4"; undefined when it is none of these. */
function inchNumber(text: string): number | undefined {
  const parts = /^(?:(\d+(?:\.\d+)?|\.\d+)|(?:(\d+)(?: ?- ?| ))?(\d{1,2})\/(\d{1,2}))$/.exec(text);
  if (!parts) return undefined;
  const [, decimal, whole, over, under] = parts;
  if (decimal !== undefined) return Number(decimal);
  const numerator = Number(over);
  const denominator = Number(under);
  // Only ruler fractions below one: "1 5/4" or "1 3/7" is a slip of the pen.
  if (![2, 4, 8, 16, 32, 64].includes(denominator) || numerator >= denominator || numerator === 0)
    return undefined;
  return Number(whole ?? 0) + numerator / denominator;
}

function notUnderstood(text: string): Length {
  return refuse(`“${text.trim()}” is not a length that can be read; write it as 3'-0", 36 in or 915 mm.`);
}

function inInches(value: number): Length {
  return { ok: true, inches: qty(value, 'in') };
}

function feetAndInches(text: string, feetText: string, rest: string): Length {
  if (rest === '') return inInches(Number(feetText) * 12);
  const inches = inchNumber(rest.replace(/ ?"$/, ''));
  if (inches === undefined) return notUnderstood(text);
  if (feetText.includes('.'))
    return refuse(`“${text.trim()}” has a fraction of a foot and inches as well; write one of the two.`);
  if (inches >= 12) return refuse(`“${text.trim()}” has 12 inches or more beside the feet; check it.`);
  return inInches(Number(feetText) * 12 + inches);
}

/** Reads one length. Valid from zero up; signs and thousands commas are refused. */
export function parseLength(text: string, options: LengthOptions): Length {
  const plain = plainSpelling(text);
  if (plain === '') return refuse('No length is written.');
  if (plain.includes(','))
    return refuse(
      `“${text.trim()}” has a comma, which may mean a decimal or a thousand; use a point or nothing.`,
    );

  const metric = /^(\d+(?:\.\d+)?|\.\d+) ?(mm|cm|m)$/.exec(plain);
  if (metric) {
    const millimeters = Number(metric[1]) * (metric[2] === 'mm' ? 1 : metric[2] === 'cm' ? 10 : 1000);
    return inInches(millimeters / mmPerInch);
  }
  const feet = /^(\d+(?:\.\d+)?) ?' ?(?:- ?)?(.*)$/.exec(plain);
  if (feet) return feetAndInches(text, feet[1] as string, feet[2] as string);
  if (plain.endsWith('"')) {
    const inches = inchNumber(plain.slice(0, -1).trim());
    return inches === undefined ? notUnderstood(text) : inInches(inches);
  }
  if (/^\d+ ?- ?\d+$/.test(plain)) {
    return refuse(
      `“${text.trim()}” may be feet and inches or a date; write it as ${plain.replace(/ ?- ?/, "'-")}".`,
    );
  }
  const bare = inchNumber(plain);
  if (bare === undefined) return notUnderstood(text);
  // Nobody writes millimeters as fractions, so a fraction needs no unit.
  if (plain.includes('/')) return inInches(bare);
  if (options.bare === 'refuse') return refuse(`“${text.trim()}” has no unit; write in or mm.`);
  if (options.bare === 'mm') return inInches(bare / mmPerInch);
  if (bare > longestIn)
    return refuse(
      `“${text.trim()}” without a unit is too long for inches; write mm if millimeters are meant.`,
    );
  return inInches(bare);
}

/** Sixteenths as a ruler fraction: 12 → "3/4". */
function rulerFraction(sixteenths: number): string {
  let over = sixteenths;
  let under = 16;
  while (over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return `${over}/${under}`;
}

/** To the nearest 1/16 in, from zero up: `3'-0"`, `5'-10 3/4"`, or in decimals `70.75 in`. */
export function formatInches(inches: number, style: 'feetInches' | 'decimal' = 'feetInches'): string {
  const sixteenths = Math.round(inches * 16);
  if (style === 'decimal') return `${sixteenths / 16} in`;
  const feet = Math.floor(sixteenths / 192);
  const rest = sixteenths - feet * 192;
  const whole = Math.floor(rest / 16);
  const part = rest - whole * 16;
  const inchWords =
    part === 0 ? `${whole}` : whole === 0 ? rulerFraction(part) : `${whole} ${rulerFraction(part)}`;
  return `${feet}'-${inchWords}"`;
}
