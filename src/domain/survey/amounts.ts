import { labelsAsStamped } from './labels.ts';
import { valueInWords } from '../text/format.ts';
import { type FactKey, fieldInfo, type AnyValue } from '../model/fields.ts';
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
  fireRatingMin: [0, 20, 30, 45, 60, 90, 180],
  frameLabelMin: [20, 30, 45, 60, 90, 180],
  wallRatingMin: [0, 30, 60, 120, 180],
  leafWidthIn: [30, 32, 36, 42, 48],
  leafHeightIn: [80, 84, 96],
  leafThicknessIn: [1.375, 1.75, 2.25],
  latchProjectionIn: [0.5, 0.625, 0.75, 1],
  egressHardwareHeightIn: [36, 38, 40, 42],
  distanceToSupplyFt: [25, 50, 100, 150, 200],
};

/** How a label or a wall type says it; what carries no such stamp reads as its figure. */
const stamped: { readonly [K in FactKey]?: Readonly<Record<number, string>> } = {
  fireRatingMin: { 0: 'None', ...Object.fromEntries(labelsAsStamped) },
  frameLabelMin: Object.fromEntries(labelsAsStamped),
  wallRatingMin: { 0: 'None', 30: '1/2 h', 60: '1 h', 120: '2 h', 180: '3 h' },
};

/** A figure offered as one press, in the words it is stamped or measured in. */
export function amountAsStamped(key: FactKey, amount: number): string {
  const said = stamped[key]?.[amount];
  if (said !== undefined) return said;
  return fieldInfo(key).unit === 'in' && amount < 12
    ? formatInches(amount).replace(/^0'-/, '')
    : String(amount);
}

/** How far one press of a stepper goes; undefined where nobody counts in steps. */
export function stepOf(key: FactKey): number | undefined {
  const { kind, unit, max = 0 } = fieldInfo(key);
  if (kind !== 'number') return undefined;
  if (unit === 'in') return max < 12 ? 0.125 : 1;
  if (unit === 'ft') return 10;
  return unit === 'people' || unit === 'stories' || unit === 'doors' ? 1 : undefined;
}

/** One step up or down from what is typed, within the range of the field. */
export function stepped(key: FactKey, typed: string, by: 1 | -1): string {
  const { min = 0, max = Number.MAX_SAFE_INTEGER } = fieldInfo(key);
  const step = stepOf(key) ?? 1;
  const now = Number.parseFloat(typed);
  const next = (Number.isFinite(now) ? now : (usualAmountsOf(key)[0] ?? min) - by * step) + by * step;
  return String(Math.min(max, Math.max(min, Math.round(next * 1000) / 1000)));
}

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
export function valueForSurveyor(key: FactKey, value: AnyValue | undefined): string {
  const also = alsoWritten(key, value);
  const said = valueInWords(key, typeof value === 'number' ? Math.round(value * 1000) / 1000 : value);
  return also === '' ? said : `${said} (${also})`;
}
