/**
 * Time and identifiers come from here and are handed in everywhere else, so that a test can say what time it
 * is and the domain gives the same answer next year.
 */
export type Clock = () => string;
export type NewId = () => string;

export const systemClock: Clock = () => new Date().toISOString();

/** `randomUUID` is missing on pages served without https; ids must be unique across devices all the same. */
export const randomIds: NewId = () =>
  typeof crypto.randomUUID === 'function'
    ? crypto.randomUUID()
    : Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
        byte.toString(16).padStart(2, '0'),
      ).join('');

/** For tests: a minute passes with every reading. */
export function steppingClock(start = '2026-01-05T08:00:00.000Z'): Clock {
  let now = Date.parse(start);
  return () => {
    const reading = new Date(now).toISOString();
    now += 60_000;
    return reading;
  };
}

/** For tests: `id-1`, `id-2`, … */
export function countingIds(prefix = 'id'): NewId {
  let count = 0;
  return () => {
    count += 1;
    return `${prefix}-${count}`;
  };
}
