import { type FactKey, fieldInfo, type AnyValue } from '../model/fields.ts';
import { midSentence } from '../text/midSentence.ts';
import { valueForSurveyor } from './amounts.ts';

/** A fact as a part of a line that a surveyor checks against the door: "leaf width 36 in", "lockdown: no". */
export function sayFact(key: FactKey, value: AnyValue): string {
  const { label, kind } = fieldInfo(key);
  if (kind === 'yesNo') return `${midSentence(label)}: ${value === true ? 'yes' : 'no'}`;
  if (plainByItself.has(key)) return midSentence(valueForSurveyor(key, value));
  return `${midSentence(label)} ${midSentence(valueForSurveyor(key, value))}`;
}

/** Their answers say what they are about. */
const plainByItself: ReadonlySet<FactKey> = new Set([
  'control',
  'readerSides',
  'doorType',
  'latch',
  'existingArrangement',
  'egressRole',
  'closing',
  'workStatus',
  'roomUse',
]);
