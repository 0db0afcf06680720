import type { CodeBasis } from '../codes/basis.ts';
import { limitValue } from '../codes/limits.ts';
import { compile, type Slots, slotCount, slotOf, type Test } from '../logic/compile.ts';
import type { Condition, Readable } from '../logic/condition.ts';
import { type Term, termsOf } from '../logic/terms.ts';
import { NO, UNKNOWN } from '../logic/verdict.ts';
import { fieldInfo, isFactKey } from '../model/fields.ts';

/**
 * Hundreds of clauses answered together. Each is written as alternatives of parts that read one fact each, so it can
 * be worked out beforehand which alternatives one answer of the survey rules out, and which a missing answer leaves in
 * doubt. At an opening these are cut from each other as bits. What a part says of a value is asked of the compiled
 * condition: there is one meaning of a condition, and not two.
 */
export interface ClauseIndex {
  readonly facts: readonly FactReader[];
  /** Alternatives that some survey can make hold: the first of each clause in its place, further ones behind. */
  readonly possible: Bits;
  /** The clause of each further alternative. */
  readonly furtherOf: readonly number[];
  /** Where answers are written, so that thousands of openings leave nothing to clear away. */
  readonly open: Bits;
  readonly doubtful: Bits;
  readonly answers: Answers;
}
type Bits = Int32Array;
/** Clauses as bits, in the order given. */
export type ClauseSet = Bits;

export interface Answers {
  /** Clauses whose answer is yes or unknown. */
  readonly speak: ClauseSet;
  /** Those of them whose answer is yes. */
  readonly sure: ClauseSet;
}

/** For each answer to a fact the words of bits that it touches: the number of the word, then what stays of it. */
interface FactReader {
  readonly slot: number;
  readonly yes: Touched;
  readonly no: Touched;
  readonly choices: ReadonlyMap<string | number | boolean, Touched>;
  readonly bounds: readonly number[];
  /** Below the first bound, on it, between it and the second, and so on. */
  readonly places: readonly Touched[];
  /** By a value that no condition names; where numbers are wanted, a word is no answer. */
  readonly other: Touched;
  readonly unknown: Touched;
  /** The same way, which bits hang on the fact while it is unknown. */
  readonly doubts: Touched;
}
type Touched = Int32Array;

/** The clauses that have something to say. The answer holds until the index is asked again. */
export function answersOf(index: ClauseIndex, slots: Slots): Answers {
  const { facts, open, doubtful } = index;
  open.set(index.possible);
  doubtful.fill(0);
  for (let at = 0; at < facts.length; at++) {
    const fact = facts[at] as FactReader;
    const touched = touchedBy(fact, slots[fact.slot]);
    for (let pair = 0; pair < touched.length; pair += 2) {
      const word = touched[pair] as number;
      open[word] = (open[word] as number) & (touched[pair + 1] as number);
    }
    if (touched !== fact.unknown) continue;
    const { doubts } = fact;
    for (let pair = 0; pair < doubts.length; pair += 2) {
      const word = doubts[pair] as number;
      doubtful[word] = (doubtful[word] as number) | (doubts[pair + 1] as number);
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

export function indexClauses(conditions: readonly Condition[], basis: CodeBasis): ClauseIndex {
  const terms = conditions.map((condition) => termsOf(condition, basis));
  const words = wordsFor(conditions.length);
  const placed: Placed[] = [];
  const furtherOf: number[] = [];
  terms.forEach((list, clause) => {
    list.forEach((term, which) => {
      placed.push({ term, bit: which === 0 ? clause : 32 * words + furtherOf.length });
      if (which > 0) furtherOf.push(clause);
    });
  });
  const possible = new Int32Array(words + wordsFor(furtherOf.length));
  for (const { bit } of placed) addClause(possible, bit);
  const parts = new Map<Readable, Part[]>();
  for (const { term, bit } of placed) {
    for (const [fact, condition] of term) {
      const part = { condition, bit, test: compile(condition, basis, 'clause index') };
      parts.set(fact, [...(parts.get(fact) ?? []), part]);
    }
  }
  return {
    facts: [...parts].map(([fact, list]) => readerOf(fact, list, possible.length, basis)),
    possible,
    furtherOf,
    open: possible.slice(),
    doubtful: possible.slice(),
    answers: { speak: emptyClauseSet(conditions.length), sure: emptyClauseSet(conditions.length) },
  };
}

interface Placed {
  readonly term: Term;
  readonly bit: number;
}
interface Part {
  readonly condition: Condition;
  readonly bit: number;
  readonly test: Test;
}

function readerOf(fact: Readable, parts: readonly Part[], words: number, basis: CodeBasis): FactReader {
  const slot = slotOf(fact);
  const slots: Slots = new Array(slotCount).fill(undefined);
  const bitsWhere = (value: Slots[number], verdict: number): Bits => {
    slots[slot] = value;
    const bits = new Int32Array(words);
    for (const part of parts) if (part.test(slots) === verdict) addClause(bits, part.bit);
    return bits;
  };
  const touched = (value: Slots[number]) => pairs(bitsWhere(value, NO), (bits) => ~bits);
  const options = isFactKey(fact) ? Object.keys(fieldInfo(fact).options ?? {}) : [];
  const bounds = [...new Set(parts.flatMap(({ condition }) => boundsIn(condition, basis)))].toSorted(
    (a, b) => a - b,
  );
  const unknown = touched(undefined);
  const wantsNumber = bounds.length > 0;
  return {
    slot,
    yes: wantsNumber ? unknown : touched(true),
    no: wantsNumber ? unknown : touched(false),
    choices: new Map(options.map((value) => [value, touched(value)])),
    bounds,
    places: placesAmong(bounds).map(touched),
    other: wantsNumber ? unknown : touched(''),
    unknown,
    doubts: pairs(bitsWhere(undefined, UNKNOWN), (bits) => bits),
  };
}

/** A number for each place that bounds can tell apart. */
function placesAmong(bounds: readonly number[]): readonly number[] {
  if (bounds.length === 0) return [];
  const between = bounds.flatMap((bound, at) => {
    const next = bounds[at + 1] ?? bound + 2;
    return [bound, (bound + next) / 2];
  });
  return [(bounds[0] as number) - 1, ...between];
}

function boundsIn(condition: Condition, basis: CodeBasis): readonly number[] {
  switch (condition.op) {
    case 'compare':
      return [
        typeof condition.bound === 'number'
          ? condition.bound
          : limitValue(condition.bound, basis, 'clause index'),
      ];
    case 'not':
      return boundsIn(condition.of, basis);
    case 'all':
    case 'any':
      return condition.of.flatMap((part) => boundsIn(part, basis));
    default:
      return [];
  }
}

function pairs(bits: Bits, say: (bits: number) => number): Touched {
  return Int32Array.from([...bits].flatMap((word, at) => (word === 0 ? [] : [at, say(word)])));
}

function wordsFor(count: number): number {
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
