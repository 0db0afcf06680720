import { type AnyValue } from '../model/fields.ts';
import type { CodeBasis } from '../codes/basis.ts';
import { limitValue } from '../codes/limits.ts';
import type { Condition } from './condition.ts';
import { type Slots, slotOf } from './slots.ts';
import { NO, UNKNOWN, type Verdict, YES } from './verdict.ts';

export type Test = (slots: Slots) => Verdict;

const never: Test = () => NO;
const certainly: Test = () => YES;

/**
 * Turns a condition into a function under one code basis. Editions and limits are settled here, so they cost
 * nothing per opening. Throws when a limit is asked for an edition nobody entered; `asker` names who asked.
 */
export function compile(condition: Condition, basis: CodeBasis, asker: string): Test {
  switch (condition.op) {
    case 'always':
      return certainly;
    case 'edition': {
      const edition = basis[condition.book];
      const inside =
        edition !== null && edition >= (condition.from ?? 0) && edition <= (condition.to ?? 9999);
      return inside ? certainly : never;
    }
    case 'is':
      return compileIs(slotOf(condition.fact), condition.values);
    case 'compare': {
      const slot = slotOf(condition.fact);
      const bound =
        typeof condition.bound === 'number' ? condition.bound : limitValue(condition.bound, basis, asker);
      return compileComparison(slot, condition.how, bound);
    }
    case 'known': {
      const slot = slotOf(condition.fact);
      return (slots) => (slots[slot] === undefined ? NO : YES);
    }
    case 'not': {
      const inner = compile(condition.of, basis, asker);
      if (inner === never) return certainly;
      if (inner === certainly) return never;
      return (slots) => {
        const verdict = inner(slots);
        return verdict === UNKNOWN ? UNKNOWN : verdict === YES ? NO : YES;
      };
    }
    case 'all':
      return compileAll(inOrder(condition.op, condition.of).map((part) => compile(part, basis, asker)));
    case 'any':
      return compileAny(inOrder(condition.op, condition.of).map((part) => compile(part, basis, asker)));
  }
}

/** Lists within a list of the same kind as one list, the quickest parts first: their order changes no answer. */
function inOrder(op: 'all' | 'any', parts: readonly Condition[]): readonly Condition[] {
  return flat(op, parts).toSorted((a, b) => weight(a) - weight(b));
}
function flat(op: 'all' | 'any', parts: readonly Condition[]): readonly Condition[] {
  return parts.flatMap((part) => (part.op === op ? flat(op, part.of) : [part]));
}
function weight(condition: Condition): number {
  switch (condition.op) {
    case 'not':
      return weight(condition.of);
    case 'all':
    case 'any':
      return condition.of.reduce((sum, part) => sum + weight(part), 1);
    default:
      return 1;
  }
}

function compileIs(slot: number, values: readonly (string | boolean)[]): Test {
  const [first, second] = values;
  if (values.length === 1) {
    return (slots) => {
      const value = slots[slot];
      return value === undefined ? UNKNOWN : value === first ? YES : NO;
    };
  }
  if (values.length === 2) {
    return (slots) => {
      const value = slots[slot];
      return value === undefined ? UNKNOWN : value === first || value === second ? YES : NO;
    };
  }
  const wanted = new Set<AnyValue>(values);
  return (slots) => {
    const value = slots[slot];
    return value === undefined ? UNKNOWN : wanted.has(value) ? YES : NO;
  };
}

function compileComparison(slot: number, how: 'atLeast' | 'over' | 'atMost' | 'under', bound: number): Test {
  const decide = (holds: (value: number) => boolean): Test => {
    return (slots) => {
      const value = slots[slot];
      return typeof value !== 'number' ? UNKNOWN : holds(value) ? YES : NO;
    };
  };
  switch (how) {
    case 'atLeast':
      return decide((value) => value >= bound);
    case 'over':
      return decide((value) => value > bound);
    case 'atMost':
      return decide((value) => value <= bound);
    case 'under':
      return decide((value) => value < bound);
  }
}

function compileAll(parts: readonly Test[]): Test {
  if (parts.includes(never)) return never;
  const rest = parts.filter((part) => part !== certainly);
  if (rest.length === 0) return certainly;
  const [first, second, third] = rest as [Test, Test?, Test?];
  if (!second) return first;
  // Two and three parts are most of the lists; written out they take half the time of a loop.
  if (rest.length === 2) {
    return (slots) => {
      const one = first(slots);
      if (one === NO) return NO;
      const two = second(slots);
      return two === NO ? NO : one === UNKNOWN ? UNKNOWN : two;
    };
  }
  if (third && rest.length === 3) {
    return (slots) => {
      const one = first(slots);
      if (one === NO) return NO;
      const two = second(slots);
      if (two === NO) return NO;
      const three = third(slots);
      return three === NO ? NO : one === UNKNOWN || two === UNKNOWN ? UNKNOWN : three;
    };
  }
  return (slots) => {
    let answer: Verdict = YES;
    for (let index = 0; index < rest.length; index++) {
      const verdict = (rest[index] as Test)(slots);
      if (verdict === NO) return NO;
      if (verdict === UNKNOWN) answer = UNKNOWN;
    }
    return answer;
  };
}

function compileAny(parts: readonly Test[]): Test {
  if (parts.includes(certainly)) return certainly;
  const rest = parts.filter((part) => part !== never);
  if (rest.length === 0) return never;
  const [first, second] = rest as [Test, Test?];
  if (!second) return first;
  if (rest.length === 2) {
    return (slots) => {
      const one = first(slots);
      if (one === YES) return YES;
      const two = second(slots);
      return two === YES ? YES : one === UNKNOWN ? UNKNOWN : two;
    };
  }
  return (slots) => {
    let answer: Verdict = NO;
    for (let index = 0; index < rest.length; index++) {
      const verdict = (rest[index] as Test)(slots);
      if (verdict === YES) return YES;
      if (verdict === UNKNOWN) answer = UNKNOWN;
    }
    return answer;
  };
}
