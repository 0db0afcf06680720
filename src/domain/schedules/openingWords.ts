import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../decide/factView.ts';
import { leavesOf } from '../decide/inPlace.ts';
import { valueInWords } from '../text/format.ts';

/** "36 × 84 × 1.75 in", "36 × 84 × 1.75 in each leaf" of a pair; a measure nobody took is a dash, so that its place is not mistaken. */
export function sizeInWords(decision: Decision): string {
  const measures = (['leafWidthIn', 'leafHeightIn', 'leafThicknessIn'] as const).map((key) =>
    valueIn(decision.slots, key),
  );
  if (measures.every((one) => one === undefined)) return '';
  const words = measures.map((one) => (typeof one === 'number' ? String(Math.round(one * 100) / 100) : '–'));
  return `${words.join(' × ')} in${leavesOf(decision) === 2 ? ' each leaf' : ''}`;
}

/** Minutes, never letters. Unrated is said in words, because an empty cell would mean "not surveyed". */
export function labelInWords(decision: Decision): string {
  const minutes = valueIn(decision.slots, 'fireRatingMin');
  if (minutes === undefined) return '';
  return minutes === 0 ? 'None' : valueInWords('fireRatingMin', minutes);
}
