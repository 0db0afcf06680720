import { fingerprint } from '../model/fingerprint.ts';
import { textOf } from '../model/sorted.ts';
import { allRules } from '../rules/all.ts';

/** The number of this program, as package.json gives it; a test holds the two together. */
export const programVersion = '0.1.0';

let remembered: string | undefined;

/** The program that decided, with a mark of all its rules: two builds of one number may read a rule differently. */
export function programInWords(): string {
  remembered ??= fingerprint(textOf(allRules.map(({ id, clauses }) => [id, clauses])));
  return `${programVersion}, rules ${remembered}`;
}
