import { type AnyValue } from '../model/fields.ts';
import type { Slots } from '../logic/slots.ts';

/**
 * Hundreds of clauses answered together. Each is written as alternatives of parts that read one fact each, so it can
 * be worked out beforehand which alternatives one answer of the survey rules out, and which a missing answer leaves in
 * doubt. At an opening these are cut from each other as bits. What a part says of a value is asked of the compiled
 * condition: there is one meaning of a condition, and not two.
 */
export interface ClauseIndex {
  readonly facts: readonly FactReader[];
  /** All lists of words that an answer touches, each behind its length; one array, because it is gone through so often. */
  readonly table: Int32Array;
  /** Alternatives that some survey can make hold: the first of each clause in its place, further ones behind. */
  readonly possible: Bits;
  /** The clause of each further alternative. */
  readonly furtherOf: readonly number[];
  /** Where answers are written, so that thousands of openings leave nothing to clear away. */
  readonly open: Bits;
  readonly doubtful: Bits;
  readonly answers: Answers;
}
export type Bits = Int32Array;
/** Clauses as bits, in the order given. */
export type ClauseSet = Bits;

export interface Answers {
  /** Clauses whose answer is yes or unknown. */
  readonly speak: ClauseSet;
  /** Those of them whose answer is yes. */
  readonly sure: ClauseSet;
}

/** For each answer to a fact the words of bits that it touches: the number of a word, then what stays of it. */
export interface FactReader {
  readonly slot: number;
  readonly yes: Touched;
  readonly no: Touched;
  readonly choices: ReadonlyMap<AnyValue, Touched>;
  readonly bounds: readonly number[];
  /** Below the first bound, on it, between it and the second, and so on. */
  readonly places: readonly Touched[];
  /** By a value that no condition names; where numbers are wanted, a word is no answer. */
  readonly other: Touched;
  readonly unknown: Touched;
  /** The same way, which bits hang on the fact while it is unknown. */
  readonly doubts: Touched;
}
/** Place of a list in the table. */
export type Touched = number;

/** The clauses that have something to say. The answer holds until the index is asked again. */
export function answersOf(index: ClauseIndex, slots: Slots): Answers {
  const { facts, open, doubtful, table } = index;
  open.set(index.possible);
  doubtful.fill(0);
  for (let at = 0; at < facts.length; at++) {
    const fact = facts[at] as FactReader;
    const touched = touchedBy(fact, slots[fact.slot]);
    const end = touched + 1 + (table[touched] as number);
    for (let pair = touched + 1; pair < end; pair += 2) {
      const word = table[pair] as number;
      open[word] = (open[word] as number) & (table[pair + 1] as number);
    }
    if (touched !== fact.unknown) continue;
    const { doubts } = fact;
    const endOfDoubts = doubts + 1 + (table[doubts] as number);
    for (let pair = doubts + 1; pair < endOfDoubts; pair += 2) {
      const word = table[pair] as number;
      doubtful[word] = (doubtful[word] as number) | (table[pair + 1] as number);
    }
  }
  return byClause(index);
}

function touchedBy(fact: FactReader, value: Slots[number]): Touched {
  if (value === undefined) return fact.unknown;
  if (value === true) return fact.yes;
  if (value === false) return fact.no;
  if (typeof value === 'number') return fact.places[placeAmong(fact.bounds, value)] ?? fact.other;
  return fact.choices.get(value) ?? fact.other;
}

function placeAmong(bounds: readonly number[], value: number): number {
  let at = 0;
  while (at < bounds.length && value > (bounds[at] as number)) at++;
  return value === bounds[at] ? 2 * at + 1 : 2 * at;
}

function byClause({ open, doubtful, furtherOf, answers }: ClauseIndex): Answers {
  const { speak, sure } = answers;
  const words = speak.length;
  for (let word = 0; word < words; word++) {
    const bits = open[word] as number;
    speak[word] = bits;
    sure[word] = bits & ~(doubtful[word] as number);
  }
  for (let word = words; word < open.length; word++) {
    for (let bits = open[word] as number; bits !== 0; bits &= bits - 1) {
      const clause = furtherOf[lowestBit(word - words, bits)] as number;
      addClause(speak, clause);
      const inDoubt = (doubtful[word] as number) & bits & -bits;
      if (inDoubt === 0) addClause(sure, clause);
    }
  }
  return answers;
}

export function wordsFor(count: number): number {
  return Math.ceil(count / 32);
}
export function emptyClauseSet(count: number): ClauseSet {
  return new Int32Array(wordsFor(count));
}
export function addClause(set: ClauseSet, index: number): void {
  set[index >>> 5] = (set[index >>> 5] as number) | (1 << (index & 31));
}
/** Place of the first bit that is set in one word. */
export function lowestBit(word: number, bits: number): number {
  return (word << 5) + 31 - Math.clz32(bits & -bits);
}
