import { itemOf } from '../devices/items.ts';
import { countingOf } from '../decide/counting.ts';
import type { Decision } from '../decide/decision.ts';
import { leavesOf } from '../decide/inPlace.ts';
import { type Part, partsOf } from '../decide/parts.ts';
import { slotOf } from '../logic/slots.ts';
import { articleOf } from './article.ts';

const ratedSlot = slotOf('fireRated');
const pairSlot = slotOf('isPair');
const remembered = new WeakMap<Decision, string>();

/**
 * What makes a hardware set the set it is: arrangement, rated or not, single or pair, and every piece that is bought
 * and would be another part number. Label, hand and size stand with the opening; what is kept, asked of another line,
 * shared, done as work or put on single openings stands in the lines. Undefined while nothing is chosen.
 */
export function setContent(decision: Decision): string | undefined {
  const { chosen } = decision;
  if (!chosen) return undefined;
  const before = remembered.get(decision);
  if (before !== undefined) return before;
  const { slots } = decision;
  const parts = partsOf(decision);
  const leaves = leavesOf(decision);
  const content = [
    chosen.candidate.id,
    `rated ${slots[ratedSlot] ?? '?'}`,
    `pair ${slots[pairSlot] ?? '?'}`,
    ...parts
      .flatMap((part) => (makesTheSet(part, parts, leaves) ? [pieceInWords(part, decision)] : []))
      .toSorted(),
  ].join('|');
  remembered.set(decision, content);
  return content;
}

function makesTheSet(part: Part, parts: readonly Part[], leaves: number): boolean {
  const { block, addition } = itemOf(part.item);
  return block === undefined && !addition && countingOf(part, parts, leaves) === 'bought';
}

function pieceInWords(part: Part, decision: Decision): string {
  const article = articleOf(part.item, decision);
  return `${part.quantity} ${part.item}${article === '' ? '' : ` ${article}`}`;
}
