/**
 * Numbered, named steps from one file format to the next: plain object in, plain object out. A step never
 * imports today's types, because it must still work when those have changed.
 */
export interface Migration {
  readonly to: number;
  readonly name: string;
  readonly up: (project: unknown) => unknown;
}

export const migrations: readonly Migration[] = [];

/** Format 1 is the first; each migration raises it by one. */
export const newestFormat = 1 + migrations.length;
