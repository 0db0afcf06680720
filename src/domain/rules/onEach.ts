import type { VerdictWord } from '../logic/verdict.ts';
import type { FactValues } from '../model/fields.ts';
import type { CaseRow, Does } from './rule.ts';

/** The same case asked of several candidates, one row each: for clauses that name a list of devices. */
export function onEach(
  candidateIds: readonly string[],
  name: string,
  facts: FactValues,
  expect: VerdictWord,
  clause?: string | { readonly clause?: string; readonly does: Does },
): readonly CaseRow[] {
  return candidateIds.map((on) => [
    `${name}, ${on}`,
    facts,
    expect,
    typeof clause === 'string' ? { on, clause } : { on, ...clause },
  ]);
}
