import { fitRule, ratedFitRule } from '../rules/fitRules.ts';
import { amendmentRule } from '../rules/amendments.ts';
import { fitRows } from '../fit/matrix.ts';
import type { Amendment } from '../model/project.ts';
import { allRules } from '../rules/all.ts';
import { byFamily } from './ruleManual.ts';
import type { Rule } from '../rules/rule.ts';
import { counted } from '../text/counted.ts';

/** A chapter of the manual: a family of the book, the fit table, or what the project added itself. */
export interface RuleGroup {
  readonly key: string;
  readonly name: string;
  readonly rules: readonly Rule[];
}

const book: readonly RuleGroup[] = [
  ...byFamily(allRules).map(({ family, name, rules }) => ({ key: family, name, rules })),
  { key: 'table', name: 'Fit table', rules: [...fitRows.map(fitRule), ratedFitRule] },
];

/** Every rule that can take part in a decision, so that each id in a decision leads somewhere. */
export function ruleGroups(amendments: readonly Amendment[]): readonly RuleGroup[] {
  if (amendments.length === 0) return book;
  return [{ key: 'local', name: 'Local amendments', rules: amendments.map(amendmentRule) }, ...book];
}

export function groupOf(groups: readonly RuleGroup[], ruleId: string): RuleGroup | undefined {
  return groups.find((group) => group.rules.some((rule) => rule.id === ruleId));
}

export function foundInWords(rules: number): string {
  return rules === 0 ? 'No rule found.' : `${counted(rules, 'rule')} found`;
}

/** How the cases of a rule came out when they were judged again on this machine. */
export function casesInWords(all: number, wrong: number): string {
  return wrong === 0
    ? `All ${all} answer as expected, judged just now.`
    : `${wrong} of ${all} do not answer as expected.`;
}
