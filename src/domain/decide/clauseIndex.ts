import type { CodeBasis } from '../codes/basis.ts';
import { compile, type Slots, slotCount, slotOf } from '../logic/compile.ts';
import { all, any, type Condition, factsRead, not, type Readable } from '../logic/condition.ts';
import { NO } from '../logic/verdict.ts';
import { fieldInfo, isFactKey } from '../model/fields.ts';

/**
 * Which clauses one known answer already silences: a clause about stair doors need not be asked at an office door.
 * What is left is asked in full, so the index changes how long a decision takes and never what it is.
 */
export interface ClauseIndex {
  /** Clauses, as bits in the order given, that some survey can make speak. */
  readonly possible: ClauseSet;
  readonly silencers: readonly Silencer[];
  /** Where `clausesLeft` writes its answer, so that thousands of openings leave nothing to clear away. */
  readonly scratch: ClauseSet;
}
/** Clauses as bits. */
export type ClauseSet = Uint32Array;

interface Silencer {
  readonly slot: number;
  /** By the fact's value: the words of the set in which it silences clauses, and what stays of each. */
  readonly left: ReadonlyMap<string | number | boolean, readonly WordLeft[]>;
}
interface WordLeft {
  readonly word: number;
  readonly stays: number;
}

export function indexClauses(conditions: readonly Condition[], basis: CodeBasis): ClauseIndex {
  const tests = conditions.map((one) => compile(openAboutKnown(one), basis, 'clause index'));
  const slots: Slots = new Array(slotCount).fill(undefined);
  const possible = emptyClauseSet(tests.length);
  tests.forEach((test, index) => test(slots) !== NO && addClause(possible, index));

  const readers = new Map<Readable, number[]>();
  conditions.forEach((condition, index) => {
    for (const fact of factsRead(condition)) readers.set(fact, [...(readers.get(fact) ?? []), index]);
  });
  const silencers = [...readers].flatMap(([fact, indexes]): Silencer[] => {
    const slot = slotOf(fact);
    const left = new Map(
      valuesOf(fact).map((value) => {
        slots[slot] = value;
        const set = possible.slice();
        for (const index of indexes) if (tests[index]?.(slots) === NO) dropClause(set, index);
        return [value, wordsLeft(possible, set)] as const;
      }),
    );
    slots[slot] = undefined;
    return [...left.values()].some((words) => words.length > 0) ? [{ slot, left }] : [];
  });
  return { possible, silencers, scratch: possible.slice() };
}

/** The clauses that no single known answer silences. The answer holds until the index is asked again. */
export function clausesLeft(index: ClauseIndex, slots: Slots): ClauseSet {
  const { silencers, scratch: left } = index;
  left.set(index.possible);
  for (let at = 0; at < silencers.length; at++) {
    const silencer = silencers[at] as Silencer;
    const value = slots[silencer.slot];
    if (value === undefined) continue;
    const words = silencer.left.get(value);
    if (words === undefined) continue;
    for (let which = 0; which < words.length; which++) {
      const { word, stays } = words[which] as WordLeft;
      left[word] = (left[word] as number) & stays;
    }
  }
  return left;
}

/**
 * `known` answers "no" while a fact is missing, so it would silence a clause that the fact may yet make speak. Here it
 * counts as undecided until the fact is known: "it is this or it is not".
 */
function openAboutKnown(condition: Condition): Condition {
  switch (condition.op) {
    case 'known': {
      const isSomething: Condition = { op: 'is', fact: condition.fact, values: [true] };
      return any(isSomething, not(isSomething));
    }
    case 'not':
      return not(openAboutKnown(condition.of));
    case 'all':
      return all(...condition.of.map(openAboutKnown));
    case 'any':
      return any(...condition.of.map(openAboutKnown));
    default:
      return condition;
  }
}

/** Values that single out clauses; numbers stand in too many places to be listed. */
function valuesOf(fact: Readable): readonly (string | boolean)[] {
  if (!isFactKey(fact)) return [true, false];
  const info = fieldInfo(fact);
  if (info.kind === 'yesNo') return [true, false];
  return info.kind === 'choice' ? Object.keys(info.options ?? {}) : [];
}

export function emptyClauseSet(count: number): ClauseSet {
  return new Uint32Array(Math.ceil(count / 32));
}
export function addClause(set: ClauseSet, index: number): void {
  set[index >>> 5] = (set[index >>> 5] as number) | (1 << (index & 31));
}
/** Place of the first clause among the bits of one word. */
export function lowestClause(word: number, bits: number): number {
  return (word << 5) + 31 - Math.clz32(bits & -bits);
}
function dropClause(set: ClauseSet, index: number): void {
  set[index >>> 5] = (set[index >>> 5] as number) & ~(1 << (index & 31));
}

function wordsLeft(possible: ClauseSet, left: ClauseSet): readonly WordLeft[] {
  return [...left].flatMap((stays, word) => (stays === possible[word] ? [] : [{ word, stays }]));
}
