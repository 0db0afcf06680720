import type { FactKey, FactValues } from '../model/fields.ts';

/** The same facts with some not surveyed, for cases that ask what a missing fact does. */
export function without(facts: FactValues, ...keys: readonly FactKey[]): FactValues {
  return Object.fromEntries(
    Object.entries(facts).filter(([key]) => !(keys as readonly string[]).includes(key)),
  );
}
