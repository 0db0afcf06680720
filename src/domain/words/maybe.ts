import { itemOf, type ItemId } from '../devices/items.ts';
import { missingFacts } from '../logic/missing.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import { counted } from '../text/counted.ts';
import { midSentence } from '../text/midSentence.ts';
import type { Decision } from '../decide/decision.ts';
import type { Step } from '../decide/ruleBook.ts';
import { awaited, itemsAskedFor } from '../decide/steps.ts';

/** Something that is needed, or ruled out, by facts nobody knows yet. It is said, and never left out in silence. */
export interface Maybe {
  /** What may be needed; empty where it is work, a signature or a reviewer. */
  readonly items: readonly ItemId[];
  readonly facts: readonly FactKey[];
  readonly sentence: string;
  readonly ruleId: string;
}

/** Items, work, signatures and referrals that hang on facts nobody knows, each once. */
export function maybesOf(decision: Decision): readonly Maybe[] {
  const work = decision.depends.filter(({ clause }) => clause.effect === 'modify');
  const once = new Map<string, Maybe>();
  for (const step of [...awaited(decision), ...work]) {
    const one = maybeOf(step, decision);
    once.set(`${one.ruleId} ${one.sentence}`, one);
  }
  return [...once.values()];
}

function maybeOf({ rule, clause }: Step, decision: Decision): Maybe {
  const facts = [...missingFacts(clause.when, decision.basis, decision.slots)];
  const asked = itemsAskedFor(decision);
  const items = clause.effect === 'require' ? clause.items.filter((item) => !asked.includes(item)) : [];
  const what =
    items.length > 0
      ? `${items.map((item) => itemOf(item).name).join(', ')}: needed`
      : `${rule.title}: ${needs[clause.effect] ?? 'needed'}`;
  const by = facts.map((key) => midSentence(fieldInfo(key).label)).join(', ');
  return { items, facts, sentence: `${what}, or ruled out by ${by}.`, ruleId: rule.id };
}

/** The head over what hangs on facts nobody knows. */
export const maybeNeeded = 'Needed, or ruled out by a fact not known yet';

/** More than so many are no reading matter: that they hang on facts is what there is to know. */
const readUpTo = 6;

/** What may yet be needed, where there is no room for a long list: then its length and the facts it hangs on. */
export function maybesInShort(maybes: readonly Maybe[]): readonly string[] {
  if (maybes.length <= readUpTo) return maybes.map(({ sentence, ruleId }) => `${sentence} ${ruleId}`);
  const count = new Map<FactKey, number>();
  for (const { facts } of maybes) for (const key of facts) count.set(key, (count.get(key) ?? 0) + 1);
  const facts = [...count]
    .toSorted(([, a], [, b]) => b - a)
    .map(([key]) => midSentence(fieldInfo(key).label));
  return [
    `${maybes.length} requirements hang on ${counted(facts.length, 'fact')} not known yet: ${facts.join(', ')}. The opening sheet lists each with its rule.`,
  ];
}

const needs: Partial<Record<Step['clause']['effect'], string>> = {
  modify: 'work needed',
  signOff: 'to be signed for',
  refer: 'a reviewer decides',
};
