import type { Command, Edit } from './edits.ts';

const lasting: ReadonlySet<Edit['kind']> = new Set([
  'appendVerdict',
  'setOverride',
  'putAmendment',
  'putStandard',
  'setBasis',
  'putRemark',
]);

/** What stays when a list of edits is thinned: who decided what, and under which rules. */
export function staysInList({ edits }: Command): boolean {
  return edits.some(({ kind }) => lasting.has(kind));
}
