/** An answer, or a plain sentence saying why there is none. Expected failures are values, never exceptions. */
export type Told<T extends object> =
  | ({ readonly ok: true } & Readonly<T>)
  | { readonly ok: false; readonly says: string };

export function refuse(says: string): { readonly ok: false; readonly says: string } {
  return { ok: false, says };
}

/**
 * Whole numbers from a division that binary fractions may leave a hair beside the whole number:
 * 735 / 15 people are 49, and 34 / 0.2 are 170.
 */
const hair = 1e-9;
export function roundUp(value: number): number {
  // "+ 0" so that nothing comes out as minus nought.
  return Math.ceil(value - hair) + 0;
}
export function roundDown(value: number): number {
  return Math.floor(value + hair);
}
