/**
 * Three answers, kept as small numbers because they are computed millions of times:
 * a missing fact is never treated as "no".
 */
export type Verdict = 0 | 1 | 2;
export const NO = 0;
export const YES = 1;
export const UNKNOWN = 2;

export type VerdictWord = 'no' | 'yes' | 'unknown';
const words = ['no', 'yes', 'unknown'] as const;
export function verdictWord(verdict: Verdict): VerdictWord {
  return words[verdict];
}
