import type { FactKey } from '../model/fields.ts';
import { fieldInfo } from '../model/fields.ts';
import { fillSentence, valueInSentence } from '../text/format.ts';
import { slotOf } from '../logic/slots.ts';
import { midSentence } from '../text/midSentence.ts';
import type { Grade } from '../rules/rule.ts';
import { unmetNeeds } from './unmetNeeds.ts';
import type { Decision } from './decision.ts';
import { isFromPlan } from './factView.ts';
import { forbiddingRules, forbidsByHand } from './byHand.ts';
import { factsIn, type Step } from './ruleBook.ts';
import { candidateInWords, isSecondHand, releaseInWords } from './words.ts';

export interface SignOffReason {
  /** Names the question: equal at every opening where the same is asked. */
  readonly flag: string;
  readonly grade: Grade;
  readonly sentence: string;
  /** Rule behind it, when it is one. */
  readonly ruleId: string | undefined;
  /** The recorded need that is not met: one signature, whichever rule stands against it. */
  readonly need?: FactKey;
}

const order: Record<Grade, number> = { must: 0, should: 1, note: 2 };
/** Groups of facts on which lives depend; an assumption among them must be looked at. */
const lifeSafetyGroups = new Set(['fire', 'egress', 'stair', 'use', 'health']);

/**
 * Everything a reviewer must or should put a name to, the gravest first: what the rules ask, an override, an
 * assumed fact on which lives depend, a rule read second-hand that turned the choice.
 */
export function signOffReasons(decision: Decision): readonly SignOffReason[] {
  const reasons: SignOffReason[] = decision.signOffs.map((step) => ({
    flag: flagOf(step),
    grade: step.clause.effect === 'signOff' ? step.clause.grade : 'must',
    sentence: fillSentence(step.clause.says, decision.slots),
    ruleId: step.rule.id,
  }));
  for (const step of decision.refers) {
    reasons.push({
      flag: flagOf(step),
      grade: 'must',
      sentence: fillSentence(step.clause.says, decision.slots),
      ruleId: step.rule.id,
    });
  }
  for (const { key, says, from } of decision.severe) {
    const flag = from === 'building' ? `building:${key.split(' ', 1)[0]}` : `happens:${key}`;
    reasons.push({ flag, grade: 'must', sentence: says, ruleId: undefined });
  }
  for (const { candidate, says } of decision.passedOver) {
    reasons.push({
      flag: 'passedOver',
      grade: 'note',
      sentence: `${candidateInWords(candidate)} (${midSentence(releaseInWords(candidate))}) scores higher and was passed over: ${says}`,
      ruleId: undefined,
    });
  }
  if (decision.overridden) reasons.push(overrideReason(decision));
  for (const key of assumedLifeSafetyFacts(decision)) {
    reasons.push({
      flag: `assumed:${key}`,
      grade: 'should',
      sentence: `${fieldInfo(key).label} is assumed (${valueInSentence(key, decision.slots[slotOf(key)])}; ${decision.assumed.get(key)}), not surveyed.`,
      ruleId: undefined,
    });
  }
  for (const { fact, sentence, ruleId } of unmetNeeds(decision)) {
    reasons.push({ flag: `unmet:${fact}`, grade: 'should', sentence, ruleId, need: fact });
  }
  const turned = turnedBySecondHand(decision);
  if (turned) reasons.push(turned);
  return reasons.toSorted((a, b) => order[a.grade] - order[b.grade]);
}

function flagOf({ rule, clause }: Step): string {
  return clause.key === undefined ? rule.id : `${rule.id}${clause.key}`;
}

export function worstGrade(reasons: readonly SignOffReason[]): Grade | undefined {
  return reasons[0]?.grade;
}

function overrideReason(decision: Decision): SignOffReason {
  const chosen = decision.overridden;
  const [first] = forbidsByHand(decision);
  const words = chosen ? candidateInWords(chosen) : '';
  return {
    flag: first ? 'refusedByRule' : 'byHand',
    grade: 'must',
    sentence: first
      ? `Refused by rule, chosen by a person: ${midSentence(words)}. Forbidden by ${forbiddingRules(decision)}; only the authority’s written approval lifts that.`
      : `${words} was chosen by hand in place of the recommendation.`,
    ruleId: first?.rule.id,
  };
}

function assumedLifeSafetyFacts(decision: Decision): readonly FactKey[] {
  const relied = new Set(factsIn(decision.relied));
  return [...decision.assumed.keys()].filter(
    (key) =>
      relied.has(key) &&
      lifeSafetyGroups.has(fieldInfo(key).group) &&
      // What the plan shows was surveyed, there.
      !isFromPlan(decision.assumed.get(key)),
  );
}

/**
 * A rule nobody here read in the code's text turned the choice, so a person confirms it. What it forbids is never said to
 * have been the better choice.
 */
function turnedBySecondHand(decision: Decision): SignOffReason | undefined {
  const best = decision.wouldHaveLed;
  // Whether a lock goes into a leaf is the trade's to say, not the authority's.
  const unread = best?.because.every((step) => isSecondHand(step) && step.rule.book !== 'practice');
  if (!best || best.because.length === 0 || !unread) return undefined;
  const ids = [...new Set(best.because.map((step) => step.rule.id))].join(', ');
  return {
    flag: `secondHand:${ids}`,
    grade: 'should',
    sentence: `${ids} rules out: ${midSentence(candidateInWords(best.candidate))}. The printed text was not read for this, so a reviewer confirms it.`,
    ruleId: best.because[0]?.rule.id,
  };
}
