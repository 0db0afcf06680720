import { mmPerInch, parseLength } from './length.ts';
import { type Qty, qty } from './quantity.ts';
import { refuse, type Told } from './told.ts';

/** Square meters in a square foot, exact: 0.3048². */
const m2PerFt2 = (12 * mmPerInch) ** 2 / 1e6;

const feetWords = ['ft²', 'ft2', 'sq ft', 'sf', 'sqft'];
const meterWords = ['m²', 'm2', 'sq m', 'sqm'];

/** Finer than a hundredth of a square foot nobody measures a floor. */
const hundredths = (value: number) => Math.round(value * 100) / 100;

/** Reads a floor area; a bare number is in square feet. Signs and thousands commas are refused, as with lengths. */
export function parseArea(text: string): Told<{ ft2: Qty<'ft²'> }> {
  const plain = text.replace(/\s+/g, ' ').trim().toLowerCase();
  if (plain.includes(','))
    return refuse(
      `“${text.trim()}” has a comma, which may mean a decimal or a thousand; use a point or nothing.`,
    );
  if (/^\d{1,3}\.\d{3}(?!\d)/.test(plain))
    return refuse(
      `“${text.trim()}” has three digits after the point, which may mean a thousand; write it without the point.`,
    );
  const parts = /^(\d+(?:\.\d+)?|\.\d+) ?(.*)$/.exec(plain);
  const unit = parts?.[2] ?? '';
  const value = Number(parts?.[1]);
  if (parts && (unit === '' || feetWords.includes(unit))) return { ok: true, ft2: qty(value, 'ft²') };
  if (parts && meterWords.includes(unit)) return { ok: true, ft2: qty(hundredths(value / m2PerFt2), 'ft²') };
  return refuse(`“${text.trim()}” is not an area that can be read; write it as 1120 ft² or 104 m².`);
}

/** The area in the unit it was not typed in: "104.05 m²" for 1120; empty as long as it cannot be read. */
export function areaAlso(text: string): string {
  const read = parseArea(text);
  if (!read.ok) return '';
  if (/m/i.test(text)) return areaInFeet(read.ft2);
  return `${hundredths(read.ft2 * m2PerFt2).toLocaleString('en-US')} m²`;
}
export function areaInFeet(ft2: number): string {
  return `${hundredths(ft2).toLocaleString('en-US')} ft²`;
}

/** Reads a length of way; a bare number is in feet. */
export function parseFeet(text: string): Told<{ feet: Qty<'ft'> }> {
  const bare = /^\s*(\d+(?:\.\d+)?)\s*$/.exec(text);
  if (bare) return { ok: true, feet: qty(Number(bare[1]), 'ft') };
  const read = parseLength(text, { bare: 'refuse' });
  return read.ok ? { ok: true, feet: qty(hundredths(read.inches / 12), 'ft') } : read;
}
