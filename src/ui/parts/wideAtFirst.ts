/** Whether there is room to have folds open from the start: at a desk, not on a phone. */
export function wideAtFirst(): boolean {
  return globalThis.matchMedia?.('(min-width: 48rem)').matches ?? true;
}
