import { type Candidate, candidates } from '../devices/candidates.ts';
import { decideFacts } from '../decide/decide.ts';
import { ruleBookFor } from '../decide/ruleBook.ts';
import type { Decision } from '../decide/decision.ts';
import type { Project } from '../model/project.ts';
import type { ConditionId } from '../simulate/conditions.ts';
import { simulate } from '../decide/whatHappens.ts';
import { standing } from '../simulate/simulate.ts';
import type { Edge } from './plan.ts';

/** Another arrangement of the opening that stays locked in the condition and lets people out in every one. */
export type Suggestion =
  | { readonly kind: 'failMode' | 'runnerUp' | 'other'; readonly candidate: Candidate }
  /** Nothing electric holds it: a lock has to be added at all. */
  | { readonly kind: 'lock' }
  | { readonly kind: 'none' };

/**
 * Tried in the order in which a person would: the same device in its other fail mode, the runner-up, then whatever
 * the rules leave. Each is run through the conditions before it is named.
 */
export function suggestFor(project: Project, { decision }: Edge, condition: ConditionId): Suggestion {
  const now = decision?.chosen?.candidate ?? decision?.overridden;
  if (!decision || !now) return { kind: 'none' };
  if (now.failMode === 'none' && now.release === 'free') return { kind: 'lock' };
  const ruledOut = new Set(decision.rejected.map((one) => one.candidate.id));
  const doubtful = new Set(decision.open.map((one) => one.candidate.id));
  const options = optionsOf(decision, now).filter(({ candidate }) => !ruledOut.has(candidate.id));
  for (const sure of [true, false]) {
    for (const option of options) {
      if (doubtful.has(option.candidate.id) === sure) continue;
      if (holds(project, decision, option.candidate, condition)) return option;
    }
  }
  return { kind: 'none' };
}

type Option = Extract<Suggestion, { candidate: Candidate }>;

function optionsOf(decision: Decision, now: Candidate): readonly Option[] {
  const options: Option[] = [];
  for (const candidate of everyOther(decision)) {
    if (candidate.deviceId === now.deviceId && candidate.failMode !== now.failMode) {
      options.push({ kind: 'failMode', candidate });
    }
  }
  if (decision.runnerUp) options.push({ kind: 'runnerUp', candidate: decision.runnerUp.candidate });
  for (const candidate of everyOther(decision)) options.push({ kind: 'other', candidate });
  return options;
}

function holds(project: Project, decision: Decision, candidate: Candidate, condition: ConditionId): boolean {
  const view = { slots: decision.slots, assumed: decision.assumed };
  const changed = decideFacts(
    view,
    ruleBookFor(project.basis, project.amendments),
    project.weights,
    candidate,
  );
  const found = simulate(changed);
  return (
    found !== undefined &&
    standing(found.outcomes, condition).entry === 'locked' &&
    !found.findings.some((one) => one.severity === 'severe')
  );
}

/** Candidates in the fixed order, free egress first: nobody is held to close a hole elsewhere. */
function everyOther(decision: Decision): readonly Candidate[] {
  const chosen = decision.chosen?.candidate;
  return wired
    .filter((candidate) => candidate !== chosen)
    .toSorted((a, b) => Number(a.release !== 'free') - Number(b.release !== 'free'));
}
const wired = candidates.filter((candidate) => candidate.failMode !== 'none');
