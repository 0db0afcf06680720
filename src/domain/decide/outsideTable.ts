import { fitRows } from '../fit/matrix.ts';
import { readableAt, type Slots, slotOf } from '../logic/slots.ts';
import { factsRead, type Readable } from '../logic/condition.ts';
import { YES } from '../logic/verdict.ts';
import { isFactKey } from '../model/fields.ts';
import { answersTo } from './answers.ts';
import type { RuleBook } from './ruleBook.ts';

const read = new Set<Readable>();
for (const row of fitRows) factsRead(row.when, read);
/** What the fit table is asked by: door, leaf, frame and latch. */
const askedBy: readonly number[] = [...read].map(slotOf);

/** Rows read nothing that differs by code, so one memory serves every basis. */
const remembered = new Map<string, boolean>();

/**
 * Whether some answer still open leads to a pairing that no row of the fit table speaks of. There a person must ask;
 * so what every row in question refuses is not refused for good.
 */
export function mayBeOutside(book: RuleBook, slots: Slots): boolean {
  if (askedBy.every((slot) => slots[slot] !== undefined))
    return book.rows.every((row) => row.test(slots) !== YES);
  const name = askedBy.map((slot) => slots[slot] ?? '').join('|');
  let found = remembered.get(name);
  if (found === undefined) {
    found = someAnswer(book, [...slots], 0);
    remembered.set(name, found);
  }
  return found;
}

function someAnswer(book: RuleBook, slots: Slots, at: number): boolean {
  const slot = askedBy[at];
  if (slot === undefined) return mayBeOutside(book, slots);
  if (slots[slot] !== undefined) return someAnswer(book, slots, at + 1);
  const key = readableAt(slot);
  if (!isFactKey(key)) throw new Error(`The fit table reads ${key}, which nobody answers.`);
  return answersTo(key).some((value) => {
    const answered = [...slots];
    answered[slot] = value;
    return someAnswer(book, answered, at + 1);
  });
}
