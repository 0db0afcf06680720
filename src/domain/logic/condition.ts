import type { Book } from '../codes/basis.ts';
import type { LimitId } from '../codes/limits.ts';
import type { FactKey, FactValue } from '../model/fields.ts';
import type { DerivedKey } from './derivedKeys.ts';
import type { PlanKey } from './planKeys.ts';

/** Facts of the survey, facts worked out from them and what the plan says are read alike. */
export type Readable = FactKey | DerivedKey | PlanKey;
export type EditionBook = Extract<Book, 'ibc' | 'nfpa101' | 'nec' | 'nfpa72'>;
export type Bound = number | LimitId;
export type Comparison = 'atLeast' | 'over' | 'atMost' | 'under';

/**
 * A condition as data, so that one text serves evaluation, the list of missing facts, the generated manual,
 * the search for the smallest change and the mutation test.
 */
export type Condition =
  | { readonly op: 'always' }
  | { readonly op: 'is'; readonly fact: Readable; readonly values: readonly (string | boolean)[] }
  | { readonly op: 'compare'; readonly fact: Readable; readonly how: Comparison; readonly bound: Bound }
  | { readonly op: 'known'; readonly fact: Readable }
  | {
      readonly op: 'edition';
      readonly book: EditionBook;
      readonly from?: number;
      readonly to?: number;
      readonly readTo?: number;
    }
  | { readonly op: 'all'; readonly of: readonly Condition[] }
  | { readonly op: 'any'; readonly of: readonly Condition[] }
  | { readonly op: 'not'; readonly of: Condition };

type NumberKey = { [K in FactKey]: FactValue<K> extends number ? K : never }[FactKey];
type BooleanKey =
  | { [K in FactKey]: FactValue<K> extends boolean ? K : never }[FactKey]
  | DerivedKey
  | PlanKey;
type ChoiceKey = { [K in FactKey]: FactValue<K> extends string ? K : never }[FactKey];

/** The fact has one of these values. */
export function is<K extends ChoiceKey>(fact: K, ...values: readonly FactValue<K>[]): Condition {
  return { op: 'is', fact, values: values };
}
/** A yes/no fact that is yes. */
export function yes(fact: BooleanKey): Condition {
  return { op: 'is', fact, values: [true] };
}
/** A yes/no fact that is no (unknown stays unknown). */
export function no(fact: BooleanKey): Condition {
  return { op: 'is', fact, values: [false] };
}
export function atLeast(fact: NumberKey, bound: Bound): Condition {
  return { op: 'compare', fact, how: 'atLeast', bound };
}
export function over(fact: NumberKey, bound: Bound): Condition {
  return { op: 'compare', fact, how: 'over', bound };
}
export function atMost(fact: NumberKey, bound: Bound): Condition {
  return { op: 'compare', fact, how: 'atMost', bound };
}
export function under(fact: NumberKey, bound: Bound): Condition {
  return { op: 'compare', fact, how: 'under', bound };
}
/** Yes when the fact is known or assumed, no when it is unknown; never "unknown" itself. */
export function isKnown(fact: Readable): Condition {
  return { op: 'known', fact };
}
export function all(...of: readonly Condition[]): Condition {
  return { op: 'all', of };
}
export function any(...of: readonly Condition[]): Condition {
  return { op: 'any', of };
}
export function not(of: Condition): Condition {
  return { op: 'not', of };
}
export const always: Condition = { op: 'always' };

/** A range without an end says up to which edition the text was read: a later one is not covered until somebody reads it. */
type Range =
  | { readonly from?: never; readonly to?: number }
  | { readonly from: number; readonly to: number }
  | { readonly from: number; readonly readTo: number };
/** The project adopts this book, in an edition within the range (both ends included). */
export function ibc(range: Range = {}): Condition {
  return { op: 'edition', book: 'ibc', ...range };
}
export function nfpa101(range: Range = {}): Condition {
  return { op: 'edition', book: 'nfpa101', ...range };
}
export function nec(range: Range = {}): Condition {
  return { op: 'edition', book: 'nec', ...range };
}
export function nfpa72(range: Range = {}): Condition {
  return { op: 'edition', book: 'nfpa72', ...range };
}

/** Every fact a condition may read, in order of first mention. */
export function factsRead(condition: Condition, into: Set<Readable> = new Set()): Set<Readable> {
  switch (condition.op) {
    case 'is':
    case 'compare':
    case 'known':
      into.add(condition.fact);
      break;
    case 'all':
    case 'any':
      for (const part of condition.of) factsRead(part, into);
      break;
    case 'not':
      factsRead(condition.of, into);
      break;
    case 'always':
    case 'edition':
      break;
  }
  return into;
}
