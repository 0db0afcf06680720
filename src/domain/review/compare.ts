import { candidateInWords } from '../words/arrangement.ts';
import { stateWords } from '../words/states.ts';
import type { DecisionState } from '../decide/decision.ts';
import { candidateById } from '../devices/candidates.ts';
import { type FactKey, fieldInfo, isFactKey } from '../model/fields.ts';
import type { SeenFact, Sight } from '../model/verdict.ts';
import { condition, type ConditionId, conditions } from '../simulate/conditions.ts';
import { valueInSentence } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';

export interface Differences {
  /** What was signed is another thing now: one sentence each, facts first. */
  readonly says: readonly string[];
  readonly facts: readonly FactKey[];
  /** Facts that changed without changing anything that was signed. */
  readonly without: readonly string[];
}

/** How today's facts are read: also those that nothing relies on any longer. */
export type FactNow = (key: FactKey) => SeenFact;

/**
 * What differs between what was signed and what lies here now, by content: what changed and was changed back does not
 * differ, and a fact that the question does not read counts only where something in the result changed with it.
 */
export function differences(before: Sight, now: Sight, factNow: FactNow): Differences {
  const result = [...arrangementDiffers(before, now), ...resultDiffers(before, now)];
  const differing = factsSeen(before, now).filter((key) => differs(before, key, factNow(key)));
  const weighs = weighing(before, now);
  const counting = differing.filter((key) => result.length > 0 || weighs === 'all' || weighs.has(key));
  const said = (key: FactKey) => factSentence(key, before.facts[key], factNow(key));
  return {
    says: [...counting.map(said), ...result],
    facts: counting,
    without: differing.filter((key) => !counting.includes(key)).map(said),
  };
}

/** An older file kept the facts and nothing of the result, so each of them counts there. */
function weighing(before: Sight, now: Sight): ReadonlySet<string> | 'all' {
  if (before.weighs === undefined) return 'all';
  const seen = new Set(Object.keys(before.facts));
  return new Set([...before.weighs, ...(now.weighs ?? [])].filter((key) => seen.has(key)));
}

function factsSeen(before: Sight, now: Sight): readonly FactKey[] {
  const keys = new Set([
    ...Object.keys(before.facts),
    ...(before.weighs === undefined ? Object.keys(now.facts) : []),
  ]);
  // A fact of a newer version cannot be compared here and must not make every verdict stale.
  return [...keys].filter(isFactKey);
}

function differs(before: Sight, key: FactKey, now: SeenFact): boolean {
  const was = before.facts[key] ?? { is: 'unknown', value: null };
  if (was.value !== now.value) return true;
  // What was assumed and is surveyed now says the same with better standing.
  return before.weighs !== undefined && was.is === 'known' && now.is !== 'known';
}

function factSentence(key: FactKey, was: SeenFact | undefined, now: SeenFact): string {
  const words = (fact: SeenFact | undefined) => valueInSentence(key, fact?.value ?? undefined);
  const standing = now.is === 'assumed' ? ', assumed' : '';
  return `${fieldInfo(key).label}: ${words(was)} → ${words(now)}${standing}; signed on ${words(was)}.`;
}

function arrangementDiffers(before: Sight, now: Sight): readonly string[] {
  const says: string[] = [];
  if (before.candidate !== now.candidate) {
    says.push(`The arrangement was ${arrangementSays(before)} and is now ${arrangementSays(now)}.`);
  }
  if (before.state !== undefined && before.state !== now.state) {
    says.push(`The opening was ${stateSays(before.state)} and is now ${stateSays(now.state)}.`);
  }
  return says;
}

const stateSays = (state: string | undefined) =>
  midSentence(stateWords[state as DecisionState]?.word ?? String(state));

function arrangementSays({ candidate: id }: Sight): string {
  if (id === null) return 'none';
  const candidate = candidateById(id);
  return candidate ? candidateInWords(candidate) : id;
}

function resultDiffers(before: Sight, now: Sight): readonly string[] {
  return [
    ...reasonsDiffer(before, now),
    ...rulesDiffer(before, now),
    ...listsDiffer(before.asks, now.asks, 'Asked for now', 'Asked for no longer'),
    ...listsDiffer(before.parts, now.parts, 'Part added', 'Part gone or counted otherwise'),
    ...tablesDiffer(before.table, now.table),
    ...foundSince(before.building, now.building),
  ];
}

function reasonsDiffer(before: Sight, now: Sight): readonly string[] {
  if (before.reasons === undefined) return [];
  const said = (sight: Sight) => (sight.reasons ?? []).map(({ grade, says }) => `${grade} ${says}`);
  const [was, is] = [new Set(said(before)), new Set(said(now))];
  const added = (now.reasons ?? []).filter(({ grade, says }) => !was.has(`${grade} ${says}`));
  // An assumption that was surveyed leaves one thing less to sign for; its value is compared with the facts.
  const gone = before.reasons.filter(
    ({ grade, says, flag }) => !is.has(`${grade} ${says}`) && !flag.startsWith('assumed:'),
  );
  return [
    ...added.map(({ says }) => `To be signed for since: ${says}`),
    ...gone.map(({ says }) => `No longer asked: ${says}`),
  ];
}

function rulesDiffer(before: Sight, now: Sight): readonly string[] {
  if (before.rules === undefined) return [];
  const is = now.rules ?? {};
  return Object.entries(before.rules).flatMap(([id, was]) => {
    const today = is[id];
    // That a rule speaks no longer is seen in what it asked for.
    if (!today) return [];
    if (today.edition !== was.edition) {
      return [`${id} was read in ${was.edition} and is read in ${today.edition} now.`];
    }
    return today.text === was.text ? [] : [`${id} reads otherwise than on the day it was signed.`];
  });
}

function listsDiffer(
  before: readonly string[] | undefined,
  now: readonly string[] | undefined,
  added: string,
  gone: string,
): readonly string[] {
  if (before === undefined || now === undefined) return [];
  const [was, is] = [new Set(before), new Set(now)];
  return [
    ...now.filter((one) => !was.has(one)).map((one) => `${added}: ${one}`),
    ...before.filter((one) => !is.has(one)).map((one) => `${gone}: ${one}`),
  ];
}

/** What the building no longer shows leaves one thing less to sign for. */
function foundSince(before: Sight['building'], now: Sight['building'] = {}): readonly string[] {
  if (before === undefined) return [];
  return Object.entries(now)
    .filter(([key]) => !Object.hasOwn(before, key))
    .map(([, says]) => `Found in the building since: ${says}`);
}

function tablesDiffer(before: Sight['table'], now: Sight['table']): readonly string[] {
  if (before === undefined || now === undefined) return [];
  const ids = [...new Set([...Object.keys(before), ...Object.keys(now)])];
  return ids
    .filter((id) => before[id] !== now[id])
    .map((id) => {
      const name = Object.hasOwn(conditions, id) ? condition(id as ConditionId).name : id;
      const words = (says: string | undefined) => midSentence((says ?? 'not applicable').replace(/\.$/, ''));
      return `${name}: ${words(before[id])} → ${words(now[id])}.`;
    });
}
