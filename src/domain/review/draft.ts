import type { Decision } from '../decide/decision.ts';
import type { Opening, Project } from '../model/project.ts';
import { inSequence, type VerdictKind } from '../model/verdict.ts';
import { counted } from '../text/counted.ts';
import { isForbiddenByHand } from '../decide/byHand.ts';
import { whyNoApproval } from './approvable.ts';
import { isDay, isName, isReason, isReference } from './says.ts';
import { reviewState } from './status.ts';
import { isApproval, verdictSays } from './words.ts';

/** What a reviewer has filled in so far. */
export interface VerdictDraft {
  readonly verdict: VerdictKind | '';
  readonly by: string;
  readonly role: string;
  readonly firm: string;
  readonly license: string;
  readonly reference: string;
  readonly on: string;
  readonly reason: string;
  /** One condition to a line. */
  readonly conditions: string;
}

export const emptyDraft: VerdictDraft = {
  verdict: '',
  by: '',
  role: '',
  firm: '',
  license: '',
  reference: '',
  on: '',
  reason: '',
  conditions: '',
};

/** One opening that the verdict is about. */
export interface Target {
  readonly opening: Opening;
  readonly decision: Decision;
}

export interface Asked {
  readonly project: Project;
  readonly targets: readonly Target[];
  /** What it answers; empty for everything that is asked at these openings. */
  readonly questions: readonly string[];
  /** What was found about the building, where the question concerns no single opening. */
  readonly building?: readonly string[];
  /** Local day on this device. */
  readonly today: string;
  /** The local day of an instant. */
  readonly dayOf: (instant: string) => string;
}

export type VerdictProblems = { readonly [K in keyof VerdictDraft]?: string };

export function conditionsOf({ verdict, conditions }: VerdictDraft): readonly string[] {
  if (verdict !== 'approvedWithConditions') return [];
  return conditions
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/** A plain approval speaks for itself; everything else is worth nothing without its reason. */
export function needsReason(verdict: VerdictDraft['verdict']): boolean {
  return verdict === 'refused' || verdict === 'passedToAuthority' || verdict === 'withdrawn';
}

/** One sentence per field that is not in order; none when the verdict can be written. */
export function verdictProblems(draft: VerdictDraft, asked: Asked): VerdictProblems {
  const { verdict } = draft;
  const found: Record<keyof VerdictDraft, string> = {
    verdict: verdict === '' ? 'Choose what you decide.' : '',
    by: isName(draft.by)
      ? ''
      : 'Give the name a person can be found by; a verdict without one is no sign-off.',
    role: isName(draft.role)
      ? ''
      : 'Give the role you sign in, such as plan reviewer or fire protection engineer.',
    firm: '',
    license: '',
    reference: referenceProblem(draft, asked),
    on: dayProblem(draft.on, asked),
    reason: reasonProblem(draft),
    conditions: conditionsProblem(draft),
  };
  return Object.fromEntries(Object.entries(found).filter(([, says]) => says !== ''));
}

function reasonProblem({ verdict, reason }: VerdictDraft): string {
  if (reason.trim() !== '' && !isReason(reason)) {
    return 'Say it in words somebody can act on; this says nothing.';
  }
  if (reason.trim() !== '' || !needsReason(verdict)) return '';
  switch (verdict) {
    case 'refused':
      return 'Say why, so that it can be put right.';
    case 'passedToAuthority':
      return 'Say what the authority is asked to decide.';
    default:
      return 'Say why it is taken back; the entry stays on file beside this reason.';
  }
}

function conditionsProblem(draft: VerdictDraft): string {
  if (draft.verdict !== 'approvedWithConditions') return '';
  const conditions = conditionsOf(draft);
  if (conditions.length === 0)
    return 'Write the conditions, one to a line. Each goes into set, sequence and test.';
  const empty = conditions.find((one) => !isReason(one));
  return empty === undefined ? '' : `“${empty}” says nothing that can be built or tested.`;
}

function dayProblem(on: string, { targets, today, dayOf }: Asked): string {
  if (!isDay(on)) return 'Give the day as year, month and day.';
  if (on > today) return `It cannot be dated after today, ${today} by the clock of this device.`;
  const surveyed = lastSurveyed(targets, dayOf);
  return surveyed !== undefined && on < surveyed
    ? `It cannot be dated before the survey: a fact here was recorded on ${surveyed}.`
    : '';
}

/** The day of the last answer at these openings, as far as answers carry their time. */
function lastSurveyed(targets: readonly Target[], dayOf: Asked['dayOf']): string | undefined {
  const days = targets.flatMap(({ opening }) =>
    Object.values(opening.facts).flatMap((fact) => (fact?.at === undefined ? [] : [dayOf(fact.at)])),
  );
  return days.toSorted().at(-1);
}

function referenceProblem(draft: VerdictDraft, { project, targets, questions }: Asked): string {
  const { reference, verdict } = draft;
  const given = reference.trim() !== '';
  if (given && !isReference(reference)) return 'Name the document so that it can be asked for.';
  if (verdict === '' || !isApproval(verdict) || given) return '';
  for (const target of targets) {
    const why = whyNoApproval(target.decision);
    if (why !== undefined) {
      return `${target.opening.mark}: ${why} It can be approved only with the authority’s document, named here.`;
    }
  }
  const refused = targets.flatMap(({ opening, decision }) => {
    const { flags, marks } = reviewState(project, opening, decision);
    const about = flags.filter(({ reason }) => questions.length === 0 || questions.includes(reason.flag));
    const by = about.find((one) => one.state === 'refused')?.by ?? null;
    const whole =
      flags.length === 0
        ? marks.findLast((one) => one.verdict.verdict === 'refused' && !one.withdrawnBy && !one.stale)
        : null;
    const standing = by ?? whole;
    return standing ? [{ mark: opening.mark, by: standing.verdict.by }] : [];
  });
  const [first] = refused;
  return first
    ? `${first.mark} stands refused by ${first.by}. Whoever refused withdraws it first, or name the document that lifts it.`
    : '';
}

/** What is no hindrance and must be said before somebody signs. */
export function verdictWarnings(draft: VerdictDraft, { project, targets, today }: Asked): readonly string[] {
  const warnings: string[] = [];
  const same = (a: string, b: string) => a.trim() !== '' && a.trim().toLowerCase() === b.trim().toLowerCase();
  if (same(draft.by, project.preparedBy)) {
    warnings.push(`${draft.by.trim()} prepared this project. A second person should sign it.`);
  }
  const entered = targets.filter(({ opening }) =>
    Object.values(opening.facts).some((fact) => same(fact?.by ?? '', draft.by)),
  );
  if (entered.length > 0) {
    warnings.push(
      `${draft.by.trim()} entered facts at ${counted(entered.length, 'opening')} of these. A second person should sign.`,
    );
  }
  const last = inSequence(project.verdicts).at(-1);
  if (last && last.on > today) {
    warnings.push(
      `The last entry of the log is dated ${last.on}, and the clock of this device says ${today}. One of them is wrong.`,
    );
  }
  const forced = targets.filter(({ decision }) => isForbiddenByHand(decision));
  if (forced.length > 0 && draft.verdict !== '' && isApproval(draft.verdict)) {
    warnings.push(
      `${forced.map(({ opening }) => opening.mark).join(', ')}: refused by rule, chosen by a person. The approval does not make it decided.`,
    );
  }
  return warnings;
}

/** How the step is called in the history: "Approved by J. Reviewer: 108, 109". */
export function verdictLabel(verdict: VerdictKind, by: string, marks: readonly string[]): string {
  const shown = marks.length > 6 ? [...marks.slice(0, 6), `and ${marks.length - 6} more`] : marks;
  return `${verdictSays[verdict]} by ${by}: ${shown.length === 0 ? 'about the building' : shown.join(', ')}`;
}
