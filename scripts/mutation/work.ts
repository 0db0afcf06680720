import type { Broken } from '../lib/mutants.ts';

/** What the runner is given (.mutation/work.json). */
export interface Work {
  /** Code with every slip in it, switched off, by path. */
  readonly sources: Readonly<Record<string, string>>;
  readonly slips: readonly string[];
  readonly tests: readonly string[];
}

/** What it has found so far (.mutation/found.json). */
export interface Found {
  readonly status: Record<string, Broken['status']>;
  /** The slip under way, with the time; a slip that never ends is stopped from outside. */
  under: string | null;
}
