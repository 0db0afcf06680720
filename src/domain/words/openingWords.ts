import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../logic/slots.ts';
import { leavesOf } from '../hardware/inPlace.ts';
import { valueInWords } from '../text/format.ts';

/**
 * "3'-0\" × 7'-0\" × 1.75 in", of a pair "each leaf": the size a door is ordered by. A measure nobody took is a dash, so
 * that its place is not mistaken.
 */
export function sizeInWords(decision: Decision): string {
  const [width, height, thickness] = (['leafWidthIn', 'leafHeightIn', 'leafThicknessIn'] as const).map(
    (key) => {
      const value = valueIn(decision.slots, key);
      return typeof value === 'number' ? value : undefined;
    },
  );
  if (width === undefined && height === undefined && thickness === undefined) return '';
  const thick = thickness === undefined ? '–' : `${Math.round(thickness * 100) / 100} in`;
  const words = [feetAndInches(width), feetAndInches(height), thick].join(' × ');
  return `${words}${leavesOf(decision) === 2 ? ' each leaf' : ''}`;
}

/** "3'-0\"", with sixteenths where the measure has them. */
function feetAndInches(inches: number | undefined): string {
  if (inches === undefined) return '–';
  const sixteenths = Math.round(inches * 16);
  const feet = Math.floor(sixteenths / 192);
  const rest = sixteenths - feet * 192;
  const [whole, part] = [Math.floor(rest / 16), rest % 16];
  return `${feet}'-${whole}${part === 0 ? '' : ` ${lowest(part)}`}"`;
}

function lowest(sixteenths: number): string {
  let [top, bottom] = [sixteenths, 16];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

/** Minutes, never letters. Unrated is said in words, because an empty cell would mean "not surveyed". */
export function labelInWords(decision: Decision): string {
  const minutes = valueIn(decision.slots, 'fireRatingMin');
  if (minutes === undefined) return '';
  return minutes === 0 ? 'None' : valueInWords('fireRatingMin', minutes);
}
