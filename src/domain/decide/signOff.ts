import type { Candidate } from '../devices/candidates.ts';
import { slotOf } from '../logic/slots.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import { type Grade, isSecondHand } from '../rules/rule.ts';
import { forbidsByHand } from './byHand.ts';
import type { Decision, PassedOver, Rejection, SevereFinding } from './decision.ts';
import { isFromPlan } from './factView.ts';
import { factsIn, type Step } from './ruleBook.ts';
import { type UnmetNeed, unmetNeeds } from './unmetNeeds.ts';

/** Why somebody must or should put a name to an opening. What a person reads of it stands in the words. */
export type Because =
  | { readonly kind: 'rule'; readonly step: Step }
  | { readonly kind: 'severe'; readonly finding: SevereFinding }
  | { readonly kind: 'passedOver'; readonly passedOver: PassedOver }
  | { readonly kind: 'byHand'; readonly chosen: Candidate; readonly refused: boolean }
  /** A fact on which lives depend and that nobody surveyed. */
  | { readonly kind: 'assumed'; readonly fact: FactKey }
  | { readonly kind: 'unmet'; readonly unmet: UnmetNeed }
  | { readonly kind: 'secondHand'; readonly ruledOut: Candidate; readonly ruleIds: readonly string[] };

export interface SignOff {
  /** Names the question: equal at every opening where the same is asked. */
  readonly flag: string;
  readonly grade: Grade;
  /** Rule behind it, when it is one. */
  readonly ruleId: string | undefined;
  readonly because: Because;
}

const order: Record<Grade, number> = { must: 0, should: 1, note: 2 };
/** Groups of facts on which lives depend; an assumption among them must be looked at. */
const lifeSafetyGroups = new Set(['fire', 'egress', 'stair', 'use', 'health']);

/**
 * Everything a reviewer must or should put a name to, the gravest first: what the rules ask, an override, an
 * assumed fact on which lives depend, a rule read second-hand that turned the choice.
 */
export function signOffsOf(decision: Decision): readonly SignOff[] {
  const found: SignOff[] = [
    ...decision.signOffs.map((step) =>
      ofRule(step, step.clause.effect === 'signOff' ? step.clause.grade : 'must'),
    ),
    ...decision.refers.map((step) => ofRule(step, 'must')),
  ];
  for (const finding of decision.severe) {
    const flag =
      finding.from === 'building' ? `building:${finding.key.split(' ', 1)[0]}` : `happens:${finding.key}`;
    found.push({ flag, grade: 'must', ruleId: undefined, because: { kind: 'severe', finding } });
  }
  for (const passedOver of decision.passedOver) {
    const because = { kind: 'passedOver', passedOver } as const;
    found.push({ flag: 'passedOver', grade: 'note', ruleId: undefined, because });
  }
  if (decision.overridden) found.push(ofOverride(decision, decision.overridden));
  for (const fact of assumedLifeSafetyFacts(decision)) {
    const because = { kind: 'assumed', fact } as const;
    found.push({ flag: `assumed:${fact}`, grade: 'should', ruleId: undefined, because });
  }
  for (const unmet of unmetNeeds(decision)) {
    const because = { kind: 'unmet', unmet } as const;
    found.push({ flag: `unmet:${unmet.fact}`, grade: 'should', ruleId: unmet.ruleId, because });
  }
  const turned = turnedBySecondHand(decision);
  if (turned) found.push(turned);
  return found.toSorted((a, b) => order[a.grade] - order[b.grade]);
}

export function worstGrade(reasons: readonly Pick<SignOff, 'grade'>[]): Grade | undefined {
  return reasons[0]?.grade;
}

/**
 * The same text for as long as nothing else is to be signed: by whatever asks for it, the need that is not met, the
 * finding, or the fact as it is assumed.
 */
export function signOffInShort({ flag, grade, ruleId, because }: SignOff, decision: Decision): string {
  switch (because.kind) {
    case 'unmet':
      return `${grade} ${because.unmet.fact}`;
    case 'severe':
      return `${grade} ${because.finding.says}`;
    case 'assumed': {
      const { fact } = because;
      return `${grade} ${flag} ${decision.slots[slotOf(fact)]} ${decision.assumed.get(fact)}`;
    }
    default:
      return `${grade} ${ruleId ?? flag}`;
  }
}

function ofRule(step: Step, grade: Grade): SignOff {
  const { rule, clause } = step;
  const flag = clause.key === undefined ? rule.id : `${rule.id}${clause.key}`;
  return { flag, grade, ruleId: rule.id, because: { kind: 'rule', step } };
}

function ofOverride(decision: Decision, chosen: Candidate): SignOff {
  const [first] = forbidsByHand(decision);
  return {
    flag: first ? 'refusedByRule' : 'byHand',
    grade: 'must',
    ruleId: first?.rule.id,
    because: { kind: 'byHand', chosen, refused: first !== undefined },
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
function turnedBySecondHand({ wouldHaveLed: best }: Decision): SignOff | undefined {
  if (!best || best.because.length === 0 || !best.because.every(isUnread)) return undefined;
  const ruleIds = rulesOf(best);
  return {
    flag: `secondHand:${ruleIds.join(', ')}`,
    grade: 'should',
    ruleId: ruleIds[0],
    because: { kind: 'secondHand', ruledOut: best.candidate, ruleIds },
  };
}

const rulesOf = ({ because }: Rejection) => [...new Set(because.map((step) => step.rule.id))];

/** Whether a lock goes into a leaf is the trade's to say, not the authority's. */
const isUnread = ({ rule }: Step) => isSecondHand(rule) && rule.book !== 'practice';
