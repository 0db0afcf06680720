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
