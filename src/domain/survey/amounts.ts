import { valueInWords } from '../text/format.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import { formatInches, mmPerInch } from '../units/length.ts';

/** A length as the other trades write it, to check a tape against: 36 in → `3'-0" · 914 mm`. Empty for all else. */
export function alsoWritten(key: FactKey, value: unknown): string {
  if (fieldInfo(key).unit !== 'in' || typeof value !== 'number') return '';
  const feet = formatInches(value).replace(/^0'-/, '');
  return `${feet} · ${Math.round(value * mmPerInch)} mm`;
}

/** How a number may be written, said under its question. */
export function howToWrite(key: FactKey): string {
  const { kind, unit, max = Infinity } = fieldInfo(key);
  if (kind !== 'number') return '';
  // The thickness of a leaf or the throw of a latch: nobody writes it in feet.
  if (unit === 'in' && max < 12) return 'Write 3/4, 0.75 in or 19 mm.';
  if (unit === 'in') return 'Write 36, 36 in, 3\'-0" or 915 mm.';
  return unit ? `A number of ${unitWords[unit] ?? unit}.` : 'A number.';
}

/**
 * Ratings that a label or a wall type carries, offered as one press each; 0 is no rating. The labels of doors and the
 * walls they go with are those of IBC 2021 Table 716.1(2), memory. Any other figure is typed.
 */
const usualAmounts: { readonly [K in FactKey]?: readonly number[] } = {
  fireRatingMin: [0, 20, 45, 60, 90, 180],
  frameLabelMin: [20, 45, 60, 90, 180],
  wallRatingMin: [0, 30, 60, 120, 180],
};

export function usualAmountsOf(key: FactKey): readonly number[] {
  return usualAmounts[key] ?? [];
}

const unitWords: Readonly<Record<string, string>> = {
  min: 'minutes',
  ft: 'feet',
  'ft²': 'square feet',
  A: 'amperes',
  V: 'volts',
  lbf: 'pounds of force',
  s: 'seconds',
};

/** The value with its second spelling: `36 in (3'-0" · 914 mm)`. */
export function valueForSurveyor(key: FactKey, value: string | number | boolean | undefined): string {
  const also = alsoWritten(key, value);
  const said = valueInWords(key, typeof value === 'number' ? Math.round(value * 1000) / 1000 : value);
  return also === '' ? said : `${said} (${also})`;
}
