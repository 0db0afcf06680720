/** The same value with the keys of every object in alphabetical order, and without entries that are undefined. */
export function sortKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sortKeys);
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
      .map(([key, inner]) => [key, sortKeys(inner)]),
  );
}

/** One text for equal values, whatever order their keys were written in. */
export const textOf = (value: unknown): string => JSON.stringify(sortKeys(value)) ?? '';
