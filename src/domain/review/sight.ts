import { forbidsByHand } from '../decide/byHand.ts';
import type { Decision } from '../decide/decision.ts';
import { valueIn } from '../logic/slots.ts';
import { partsOf } from '../hardware/parts.ts';
import { type FactSet, factsIn, factWords, type Step } from '../decide/ruleBook.ts';
import { signOffReasons } from '../words/signOff.ts';
import { simulateOpening } from '../decide/whatHappens.ts';
import { stepsInWords } from '../words/steps.ts';
import { items } from '../devices/items.ts';
import type { FactKey } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import type { SeenFact, Sight } from '../model/verdict.ts';
import { type ConditionId, conditionIds } from '../simulate/conditions.ts';
import { expectedInWords } from '../simulate/outcomeWords.ts';
import { type RuleSeen, ruleSeen } from './ruleText.ts';
import { signedKeys } from './strip.ts';

const remembered = new WeakMap<Decision, Sight>();

/**
 * All that lies before a reviewer at one opening: facts with their standing, reasons, rules, what they ask for, parts,
 * what happens in each condition, what was found about the building here. It is kept with a verdict and held against
 * what lies there later.
 */
export function sightOf(project: Project, opening: Opening, decision: Decision): Sight {
  const before = remembered.get(decision);
  // The mark and the space beyond are no part of a decision.
  if (before && before.mark === opening.mark) return before;
  const now = look(project, opening, decision);
  remembered.set(decision, now);
  return now;
}

function look(project: Project, opening: Opening, decision: Decision): Sight {
  const reasons = signOffReasons(decision).filter((one) => one.grade !== 'note');
  return {
    mark: opening.mark,
    candidate: decision.chosen?.candidate.id ?? null,
    state: decision.alone.state,
    facts: Object.fromEntries(
      [...new Set<FactKey>([...factsIn(decision.relied), ...signedKeys])].map((key) => [
        key,
        factSeen(decision, key),
      ]),
    ),
    weighs: weighing(decision),
    reasons: reasons
      .filter(({ flag }) => !flag.startsWith('building:'))
      .map(({ flag, grade, sentence }) => ({ flag, grade, says: sentence })),
    rules: rulesSeen(decision),
    asks: spoken(decision).flatMap((steps) =>
      stepsInWords(steps, decision).map(({ sentence, ruleId }) => `${sentence} ${ruleId}`),
    ),
    parts: partsOf(decision).map(
      ({ item, quantity, kept }) => `${quantity} × ${items[item].name}${kept ? ', kept' : ''}`,
    ),
    table: conditionTable(project, opening, decision),
    building: Object.fromEntries(
      decision.severe.filter(({ from }) => from === 'building').map(({ key, says }) => [key, says]),
    ),
  };
}

/** A fact as it stands today, whether anything relied on it or not. */
export function factSeen(decision: Decision, key: FactKey): SeenFact {
  const value = valueIn(decision.slots, key) ?? null;
  if (value === null) return { is: 'unknown', value };
  const from = decision.assumed.get(key);
  return from === undefined ? { is: 'known', value } : { is: 'assumed', value, from };
}

const spoken = ({ requires, modifies, cautions, permits, findings }: Decision) => [
  requires,
  modifies,
  cautions,
  permits,
  findings,
];

/** What the questions themselves read, and what anything here reads of the strip that register and sheet print. */
function weighing(decision: Decision): string[] {
  const read: FactSet = new Uint32Array(factWords);
  for (const { ready } of asking(decision)) {
    ready.reads.forEach((bits, word) => (read[word] = (read[word] as number) | bits));
  }
  const relied = new Set(factsIn(decision.relied));
  // Whoever signs on an assumption signs for its value.
  const assumed = [...decision.assumed.keys()].filter((key) => relied.has(key));
  return [
    ...new Set<FactKey>([...signedKeys.filter((key) => relied.has(key)), ...factsIn(read), ...assumed]),
  ];
}

/** The steps that make somebody sign; a note asks nobody. */
function asking(decision: Decision): readonly Step[] {
  const { signOffs, refers } = decision;
  return [
    ...signOffs.filter(({ clause }) => clause.effect === 'signOff' && clause.grade !== 'note'),
    ...refers,
    ...forbidsByHand(decision),
  ];
}

function rulesSeen(decision: Decision): Record<string, RuleSeen> {
  const steps = [...asking(decision), ...spoken(decision).flat()].filter(
    ({ rule }) => !rule.id.startsWith('FIT-'),
  );
  return Object.fromEntries(
    steps.map((step) => [`${step.rule.id}${step.clause.key ?? ''}`, ruleSeen(step, decision.basis)]),
  );
}

function conditionTable(project: Project, opening: Opening, decision: Decision): Record<string, string> {
  const ran = simulateOpening(project, opening, decision);
  if (!ran) return {};
  return Object.fromEntries(
    conditionIds
      .filter((id: ConditionId) => ran.outcomes[id].applies)
      .map((id) => [id, expectedInWords(ran.outcomes[id])]),
  );
}
