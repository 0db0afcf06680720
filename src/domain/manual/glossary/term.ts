/** Where a word comes from: the trade at large, a code or standard, or this product alone. */
export const origins = {
  trade: 'Trade word',
  standard: 'Word of a standard',
  own: 'Word of this schedule',
} as const;
export type Origin = keyof typeof origins;

export interface Term {
  readonly term: string;
  /** One plain sentence. */
  readonly says: string;
  readonly origin: Origin;
  /** What others in the trade call it; never the name of a maker or of a product. */
  readonly alsoCalled?: string;
}

export interface TermGroup {
  readonly id: string;
  readonly name: string;
  readonly terms: readonly Term[];
}

const term =
  (origin: Origin) =>
  (name: string, says: string, alsoCalled?: string): Term => ({
    term: name,
    says,
    origin,
    ...(alsoCalled === undefined ? {} : { alsoCalled }),
  });
export const trade = term('trade');
export const standard = term('standard');
export const own = term('own');

export const alsoCalledInWords = (names: string): string => `Also called ${names}.`;
