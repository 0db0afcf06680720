import { itemOf, type ItemId, items, linksOf } from '../devices/items.ts';
import { countingOf } from './counting.ts';
import type { Arranged } from './arranged.ts';
import { leavesOf } from './inPlace.ts';
import { type Part, partsOf } from './parts.ts';
import { slotOf } from '../logic/slots.ts';
import { articleOf } from './article.ts';

const pairSlot = slotOf('isPair');
const remembered = new WeakMap<Arranged, string>();

/**
 * What makes a hardware set the set it is: arrangement, single or pair, and every piece that is bought and would be
 * another part number. Label, hand and size stand with the opening; what is kept, asked of another line, shared, done
 * as work or put on single openings stands in the lines. Undefined while nothing is chosen.
 */
export function setContent(decision: Arranged): string | undefined {
  const { chosen } = decision;
  if (!chosen) return undefined;
  const before = remembered.get(decision);
  if (before !== undefined) return before;
  const { slots } = decision;
  const parts = partsOf(decision);
  const leaves = leavesOf(decision);
  const pieces = parts.flatMap((part) =>
    makesTheSet(part.item) && countingOf(part, parts, leaves) === 'bought'
      ? [pieceInWords(part, decision)]
      : [],
  );
  const content = inWords(chosen.candidate.id, `pair ${slots[pairSlot] ?? '?'}`, pieces);
  remembered.set(decision, content);
  return content;
}

function makesTheSet(item: ItemId): boolean {
  const { block, addition } = itemOf(item);
  return block === undefined && !addition;
}

/**
 * The piece by which it is ordered: a fail secure strike is usually listed for fire doors as it comes. Fire exit hardware
 * is no such piece: without dogging it is another device, and neither is a listed operator.
 */
const orderedAs = (item: ItemId): ItemId => linksOf(item).samePartAs ?? item;

function pieceInWords({ item, quantity }: Part, decision: Arranged): string {
  const article = articleOf(item, decision);
  return `${quantity} ${orderedAs(item)}${article === '' ? '' : ` ${article}`}`;
}

const inWords = (arrangement: string, leaves: string, pieces: readonly string[]) =>
  [arrangement, leaves, ...pieces.toSorted()].join('|');

/** What a set was stored with, in today's words: sets were told apart by the label and by the rails of a glass leaf once. */
export function contentNow(stored: string): string {
  const [arrangement, ...words] = stored.split('|').filter((word) => !word.startsWith('rated '));
  const [leaves, ...pieces] = words;
  if (arrangement === undefined || leaves === undefined) return stored;
  return inWords(
    arrangement,
    leaves,
    pieces.flatMap((piece) => {
      const [quantity = '', item = '', ...article] = piece.split(' ');
      if (!isItem(item)) return [piece];
      return makesTheSet(item) ? [[quantity, orderedAs(item), ...article].join(' ')] : [];
    }),
  );
}

const isItem = (word: string): word is ItemId => Object.hasOwn(items, word);
