/** Null is "unknown": a fact nobody surveyed, and whatever hangs on it. Not `undefined`, for which a default would step in. */
export type Answer = boolean | null;

export function not(a: Answer): Answer {
  return a === null ? null : !a;
}
export function and(a: Answer, b: Answer, c: Answer = true, d: Answer = true, e: Answer = true): Answer {
  if (a === false || b === false || c === false || d === false || e === false) return false;
  return a && b && c && d && e;
}
export function or(a: Answer, b: Answer, c: Answer = false, d: Answer = false): Answer {
  if (a || b || c || d) return true;
  return a === false && b === false && c === false && d === false ? false : null;
}
export function is<T>(value: T | null, wanted: T): Answer {
  return value === null ? null : value === wanted;
}
export function oneOf<T>(value: T | null, wanted: readonly T[]): Answer {
  return value === null ? null : wanted.includes(value);
}
export function under(value: number | null, bound: number): Answer {
  return value === null ? null : value < bound;
}
export function over(value: number | null, bound: number): Answer {
  return value === null ? null : value > bound;
}
export function atLeast(value: number | null, bound: number): Answer {
  return value === null ? null : value >= bound;
}
export function atMost(value: number | null, bound: number): Answer {
  return value === null ? null : value <= bound;
}
