import type { CaseRow, Does } from './rule.ts';

/** For rows made by a function: what each clause does in those of them that it answers with yes. */
export function doing(does: Readonly<Record<string, Does>>, rows: readonly CaseRow[]): readonly CaseRow[] {
  return rows.map((row): CaseRow => {
    const [name, facts, expect, options] = row;
    const told = expect === 'yes' ? does[options?.clause ?? ''] : undefined;
    return told === undefined ? row : [name, facts, expect, { ...options, does: told }];
  });
}
