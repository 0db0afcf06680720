import type { CodeBasis } from '../codes/basis.ts';
import { limitValue } from '../codes/limits.ts';
import { compile, type Test } from '../logic/compile.ts';
import { type Slots, slotCount, slotOf } from '../logic/slots.ts';
import type { Condition, Readable } from '../logic/condition.ts';
import { termsOf } from '../logic/terms.ts';
import { NO, UNKNOWN } from '../logic/verdict.ts';
import { fieldInfo, isFactKey } from '../model/fields.ts';
import {
  addClause,
  type Bits,
  type ClauseIndex,
  emptyClauseSet,
  type FactReader,
  type Touched,
  wordsFor,
} from './clauseIndex.ts';

/** Works out beforehand what each answer to each fact does to each clause. */
export function indexClauses(conditions: readonly Condition[], basis: CodeBasis): ClauseIndex {
  const words = wordsFor(conditions.length);
  const furtherOf: number[] = [];
  const bits: number[] = [];
  const parts = new Map<Readable, Part[]>();
  conditions.forEach((condition, clause) => {
    termsOf(condition, basis).forEach((term, which) => {
      const bit = which === 0 ? clause : 32 * words + furtherOf.length;
      if (which > 0) furtherOf.push(clause);
      bits.push(bit);
      for (const [fact, about] of term) {
        const list = parts.get(fact) ?? [];
        parts.set(fact, list);
        list.push({ condition: about, bit, test: compile(about, basis, 'clause index') });
      }
    });
  });
  const possible = new Int32Array(words + wordsFor(furtherOf.length));
  for (const bit of bits) addClause(possible, bit);
  const table: number[] = [];
  return {
    facts: [...parts].map(([fact, list]) => readerOf(fact, list, possible.length, basis, table)),
    table: Int32Array.from(table),
    possible,
    furtherOf,
    open: possible.slice(),
    doubtful: possible.slice(),
    answers: { speak: emptyClauseSet(conditions.length), sure: emptyClauseSet(conditions.length) },
  };
}

interface Part {
  readonly condition: Condition;
  readonly bit: number;
  readonly test: Test;
}

function readerOf(
  fact: Readable,
  parts: readonly Part[],
  words: number,
  basis: CodeBasis,
  table: number[],
): FactReader {
  const slot = slotOf(fact);
  const slots: Slots = new Array(slotCount).fill(undefined);
  const bitsWhere = (value: Slots[number], verdict: number): Bits => {
    slots[slot] = value;
    const bits = new Int32Array(words);
    for (const part of parts) if (part.test(slots) === verdict) addClause(bits, part.bit);
    return bits;
  };
  const touched = (value: Slots[number]) => pairs(table, bitsWhere(value, NO), (bits) => ~bits);
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
    doubts: pairs(table, bitsWhere(undefined, UNKNOWN), (bits) => bits),
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

function pairs(table: number[], bits: Bits, say: (bits: number) => number): Touched {
  const found = [...bits].flatMap((word, at) => (word === 0 ? [] : [at, say(word)]));
  return table.push(found.length, ...found) - found.length - 1;
}
