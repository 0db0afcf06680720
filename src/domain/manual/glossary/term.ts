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
}

export interface TermGroup {
  readonly id: string;
  readonly name: string;
  readonly terms: readonly Term[];
}

export const trade = (term: string, says: string): Term => ({ term, says, origin: 'trade' });
export const standard = (term: string, says: string): Term => ({ term, says, origin: 'standard' });
export const own = (term: string, says: string): Term => ({ term, says, origin: 'own' });
