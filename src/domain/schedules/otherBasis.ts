import { type CodeBasis, basisInWords } from '../codes/basis.ts';
import { decideInBuilding } from '../building/joined.ts';
import type { Decision } from '../decide/decision.ts';
import type { Step } from '../decide/ruleBook.ts';
import { signOffReasons, gradeWords } from '../words/signOff.ts';
import { citesInWords } from '../words/steps.ts';
import { candidateInWords, releaseInWords } from '../words/arrangement.ts';
import { stateWords } from '../words/states.ts';
import { itemOf } from '../devices/items.ts';
import { type Amendment, type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { fillSentence } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';

/** Another footing of the same building: other editions, a second code, amendments more or fewer. */
export interface OtherBasis {
  readonly basis: CodeBasis;
  readonly amendments: readonly Amendment[];
}

/** As it is chosen on screen: editions, and the amendments that are left out. */
export interface OtherBasisChoice {
  readonly basis: CodeBasis;
  readonly without: readonly string[];
}

export function otherBasisOf(project: Project, { basis, without }: OtherBasisChoice): OtherBasis {
  return { basis, amendments: project.amendments.filter((one) => !without.includes(one.id)) };
}

/** What the other footing changes at an opening. */
export type DifferenceKind = 'decided' | 'required' | 'signed' | 'reported';
export const differenceWords: Readonly<Record<DifferenceKind, string>> = {
  decided: 'Decided differently',
  required: 'Required differently',
  signed: 'Signed differently',
  reported: 'Reported differently',
};

/** A rule that makes the difference, cited under the footing on which it speaks. */
export interface Behind {
  readonly ruleId: string;
  readonly cites: readonly string[];
}

export interface Difference {
  readonly kind: DifferenceKind;
  /** As the project stands; empty where only the other footing says something. */
  readonly now: string;
  /** Under the other footing; empty where only today's says something. */
  readonly instead: string;
  readonly behind: readonly Behind[];
}

export interface ComparedOpening {
  readonly openingId: string;
  readonly mark: string;
  readonly differences: readonly Difference[];
}

/** The project on the other footing; everything else stays as it is. */
export function onOtherBasis(project: Project, { basis, amendments }: OtherBasis): Project {
  return { ...project, basis, amendments };
}

/** "IBC 2024 · NEC 2020, without 1 local amendment" — what the comparison is called by on screen and paper. */
export function otherBasisInWords(project: Project, other: OtherBasis): string {
  const kept = new Set(other.amendments.map((one) => one.id));
  const without = project.amendments.filter((one) => !kept.has(one.id)).length;
  const left = without === 0 ? '' : `, without ${without} local amendment${without === 1 ? '' : 's'}`;
  return `${basisInWords(other.basis)}${left}`;
}

/** Every opening in the order of the schedule, each as the building leaves it on either footing. */
export function compareProject(
  project: Project,
  other: OtherBasis,
  now = decideInBuilding(project),
  then = decideInBuilding(onOtherBasis(project, other)),
): readonly ComparedOpening[] {
  return openingsInOrder(project).flatMap((opening) => {
    const [was, is] = [now.get(opening.id), then.get(opening.id)];
    return was && is ? [compareOpening(opening, was, is)] : [];
  });
}

/** What would be decided, required, signed or reported otherwise at one opening, with the rules that make it so. */
export function compareOpening(opening: Opening, now: Decision, then: Decision): ComparedOpening {
  return {
    openingId: opening.id,
    mark: opening.mark,
    differences: [
      ...decidedOtherwise(now, then),
      ...requiredOtherwise(now, then),
      ...signedOtherwise(now, then),
      ...reportedOtherwise(now, then),
    ],
  };
}

function decidedOtherwise(now: Decision, then: Decision): readonly Difference[] {
  const [was, is] = [answerInWords(now), answerInWords(then)];
  if (was === is) return [];
  return [{ kind: 'decided', now: was, instead: is, behind: behindDecision(now, then) }];
}

function answerInWords(decision: Decision): string {
  const { word } = stateWords[decision.state];
  const { chosen } = decision;
  if (!chosen) return word;
  const { candidate } = chosen;
  return `${word}: ${candidateInWords(candidate)}; ${midSentence(releaseInWords(candidate))}`;
}

/**
 * The rules that speak of either answer on one footing and not on the other. What led before and is ruled out now,
 * what leads now and was ruled out before, what puts a candidate in doubt, and what ends a decision altogether.
 */
function behindDecision(now: Decision, then: Decision): readonly Behind[] {
  const both = [now, then].flatMap(({ chosen, overridden }) => chosen?.candidate ?? overridden ?? []);
  const speaking = (decision: Decision): readonly Step[] => [
    ...decision.refers,
    ...decision.findings,
    ...[...decision.rejected, ...decision.open].flatMap(({ candidate, because }) =>
      both.length === 0 || both.includes(candidate) ? because : [],
    ),
  ];
  return onlyOnOne(now, then, speaking);
}

type Speaking = (decision: Decision) => readonly Step[];

function onlyOnOne(now: Decision, then: Decision, speaking: Speaking): readonly Behind[] {
  const [before, after] = [speaking(now), speaking(then)];
  return once([...behind(notAmong(after, before), then), ...behind(notAmong(before, after), now)]);
}

const nameOf = ({ rule, clause, sure }: Step) => `${rule.id} ${clause.key ?? ''} ${sure}`;

function notAmong(steps: readonly Step[], others: readonly Step[]): readonly Step[] {
  const known = new Set(others.map(nameOf));
  return steps.filter((step) => !known.has(nameOf(step)));
}

function behind(steps: readonly Step[], decision: Decision): readonly Behind[] {
  return steps.map((step) => ({ ruleId: step.rule.id, cites: citesInWords(step, decision.basis) }));
}

function once(list: readonly Behind[]): readonly Behind[] {
  return [...new Map(list.map((one) => [one.ruleId, one])).values()];
}

/** Items and work on door and frame; a rule that asks the same in other words makes no difference. */
function requiredOtherwise(now: Decision, then: Decision): readonly Difference[] {
  return onOneSide('required', askedAt(now), askedAt(then));
}

type Asked = ReadonlyMap<string, readonly Behind[]>;

function askedAt(decision: Decision): Asked {
  const asked = new Map<string, readonly Behind[]>();
  const put = (what: string, step: Step) =>
    asked.set(what, once([...(asked.get(what) ?? []), ...behind([step], decision)]));
  for (const step of decision.requires) {
    if (step.clause.effect !== 'require') continue;
    for (const item of step.clause.items) put(itemOf(item).name, step);
  }
  for (const step of decision.modifies) put(fillSentence(step.clause.says, decision.slots), step);
  return asked;
}

function onOneSide(kind: DifferenceKind, now: Asked, then: Asked): readonly Difference[] {
  return [
    ...only(then, now).map(([says, by]) => ({ kind, now: '', instead: says, behind: by })),
    ...only(now, then).map(([says, by]) => ({ kind, now: says, instead: '', behind: by })),
  ];
}

function only(list: Asked, others: Asked): readonly (readonly [string, readonly Behind[]])[] {
  return [...list].filter(([what]) => !others.has(what));
}

function signedOtherwise(now: Decision, then: Decision): readonly Difference[] {
  return onOneSide('signed', signedAt(now), signedAt(then));
}

function signedAt(decision: Decision): Asked {
  const steps = new Map(
    [...decision.signOffs, ...decision.refers, ...decision.rejected.flatMap((one) => one.because)].map(
      (step) => [step.rule.id, step] as const,
    ),
  );
  return new Map(
    signOffReasons(decision)
      .filter((reason) => reason.grade !== 'note')
      .map((reason) => {
        const step = reason.ruleId === undefined ? undefined : steps.get(reason.ruleId);
        return [`${gradeWords[reason.grade]}: ${reason.sentence}`, step ? behind([step], decision) : []];
      }),
  );
}

/** What the survey, held against the codes, is found to contradict. */
function reportedOtherwise(now: Decision, then: Decision): readonly Difference[] {
  const says = (decision: Decision): Asked =>
    new Map(
      decision.findings.map((step) => [
        fillSentence(step.clause.says, decision.slots),
        behind([step], decision),
      ]),
    );
  return onOneSide('reported', says(now), says(then));
}
