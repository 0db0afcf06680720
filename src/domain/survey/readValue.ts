import { type AnyFact } from '../model/fact.ts';
import type { FieldInfo } from '../model/field.ts';
import { type FactKey, factSchemas, fieldInfo, type AnyValue } from '../model/fields.ts';
import { parseLength } from '../units/length.ts';

/** A fact, or null where the cell says nothing, or a sentence saying why the cell cannot be taken. */
export type ReadCell =
  | { readonly ok: true; readonly fact: AnyFact | null }
  | { readonly ok: false; readonly says: string };

const yesWords = new Set(['yes', 'y', 'true']);
const noWords = new Set(['no', 'n', 'false']);

/** A fraction of a ruler stays exact; otherwise a hundredth is finer than any tape: 915 mm becomes 36.02 in. */
export function hundredths(inches: number): number {
  if (Number.isInteger(inches * 64)) return inches;
  return Math.round(inches * 100) / 100;
}

export function oneSpelling(text: string): string {
  return text.replace(/\s+/g, ' ').trim().toLowerCase();
}

/**
 * Text → a fact, in one place for a cell of a file, of a paste and for what is typed. "unknown" or "?" was asked without an answer; "45 min (assumed: plan A-601)"
 * carries its source; everything else is taken as seen.
 */
export function readCell(key: FactKey, cell: string): ReadCell {
  const text = cell.trim();
  if (text === '') return { ok: true, fact: null };
  if (text === '?' || text.toLowerCase() === 'unknown') return { ok: true, fact: { is: 'unknown' } };
  const assumed = /^(.*?)\s*\(assumed: ([\s\S]*\S)\s*\)$/s.exec(text);
  const read = readValue(key, assumed ? (assumed[1] ?? '') : text);
  if (!read.ok) return read;
  const from = assumed?.[2];
  return {
    ok: true,
    fact:
      from === undefined ? { is: 'known', value: read.value } : { is: 'assumed', value: read.value, from },
  };
}

/** A fact as text that `readCell` reads back; `inWords` says its value. Empty was never asked. */
export function writeCell(fact: AnyFact | undefined, inWords: (value: AnyValue) => string): string {
  if (fact === undefined) return '';
  if (fact.is === 'unknown') return 'unknown';
  const text = inWords(fact.value);
  return fact.is === 'assumed' ? `${text} (assumed: ${fact.from})` : text;
}

type ReadValue =
  | { readonly ok: true; readonly value: AnyValue }
  | { readonly ok: false; readonly says: string };

export function readValue(key: FactKey, text: string): ReadValue {
  const info = fieldInfo(key);
  switch (info.kind) {
    case 'yesNo': {
      const word = text.toLowerCase();
      if (yesWords.has(word)) return { ok: true, value: true };
      if (noWords.has(word)) return { ok: true, value: false };
      return { ok: false, says: `${info.label} is answered by yes or no, not by “${text}”.` };
    }
    case 'choice':
      return readChoice(info, text);
    case 'number':
      return readNumber(key, info, text);
  }
}

function readChoice(info: FieldInfo, text: string): ReadValue {
  const wanted = oneSpelling(text);
  const options = Object.entries(info.options ?? {});
  const found =
    options.find(([key]) => key === text) ??
    options.find(([key, label]) => key.toLowerCase() === wanted || oneSpelling(label) === wanted);
  if (found) return { ok: true, value: found[0] };
  const may = options.map(([, label]) => label).join('; ');
  return { ok: false, says: `${info.label} cannot be “${text}”; it may be ${may}.` };
}

function readNumber(key: FactKey, info: FieldInfo, text: string): ReadValue {
  const read = info.unit === 'in' ? readInches(text) : readAmount(info, text);
  if (!read.ok) return read;
  const checked = factSchemas[key].safeParse(read.value);
  if (checked.success) return read;
  return { ok: false, says: checked.error.issues[0]?.message ?? `${info.label} cannot be “${text}”.` };
}

function readInches(text: string): ReadValue {
  const bare = /^-\d+(\.\d+)?$/.exec(text);
  // The field's own sentence names the range better than the reader of lengths.
  if (bare) return { ok: true, value: Number(text) };
  const length = parseLength(text, { bare: 'in' });
  return length.ok ? { ok: true, value: hundredths(length.inches) } : length;
}

/** Spellings of each unit; the first is ours. A figure in another unit is refused, not converted. */
type Unit = Exclude<NonNullable<FieldInfo['unit']>, 'in'>;
const unitSpellings: Readonly<Record<Unit, readonly string[]>> = {
  ft: ['ft', 'ft.', 'feet', 'foot', "'"],
  'ft²': ['ft²', 'ft2', 'sq ft', 'sf', 'sqft'],
  min: ['min', 'min.', 'minutes', 'minute', 'm'],
  people: ['people', 'person', 'persons', 'occupants', 'occupant'],
  stories: ['stories', 'story'],
  A: ['a', 'amp', 'amps', 'ampere', 'amperes'],
  V: ['v', 'volt', 'volts'],
  lbf: ['lbf', 'lb'],
  doors: ['doors', 'door'],
  s: ['s', 'sec', 'second', 'seconds'],
  h: ['h', 'hr', 'hrs', 'hour', 'hours'],
};

const withoutCommas = (figure: string) => figure.replaceAll(',', '');

/** A point between thousands, as many countries write it: no room has 1.120 ft², and nobody measures a last zero. */
const mayBeThousands = (figure: string) =>
  /^[1-9]\d{0,2}\.\d{3}$/.test(figure) && (figure.endsWith('0') || Number(figure) < 10);

function readAmount(info: FieldInfo, text: string): ReadValue {
  const parts = /^(-?\d+(?:\.\d+)?)\s*(.*)$/s.exec(text.replace(/^\d{1,3}(?:,\d{3})+(?!\d)/, withoutCommas));
  if (!parts) {
    const unit = info.unit ? ` in ${info.unit}` : '';
    return { ok: false, says: `${info.label} must be a number${unit}, not “${text}”.` };
  }
  const unit = oneSpelling(parts[2] ?? '');
  const number = Number(parts[1]);
  if (info.unit === 'ft²' && mayBeThousands(parts[1] ?? '')) {
    const whole = (parts[1] ?? '').replace('.', ',');
    return { ok: false, says: `${info.label} “${text}” may mean ${whole} or ${number}; write it again.` };
  }
  if (unit === '') return { ok: true, value: number };
  if (info.unit === 'min' && /^(h|hr|hrs|hour|hours)\.?$/.test(unit)) return { ok: true, value: number * 60 };
  if (info.unit !== undefined && info.unit !== 'in' && unitSpellings[info.unit].includes(unit)) {
    return { ok: true, value: number };
  }
  const own = info.unit ? `; write it in ${info.unit}` : ' without a unit';
  return { ok: false, says: `${info.label} cannot be read from “${text}”${own}.` };
}
