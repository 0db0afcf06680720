import type { Decision } from '../decide/decision.ts';
import type { Project } from '../model/project.ts';
import { buildingConditionIds, type ConditionId } from '../simulate/conditions.ts';
import { bySeverity } from '../simulate/outcome.ts';
import { type Crowd, crowdIn } from './crowd.ts';
import { crowdFindings } from './crowdFindings.ts';
import { dataFindings } from './dataFindings.ts';
import { exposureFindings } from './exposureFindings.ts';
import { type Reached, reachedWithoutCredential } from './exposure.ts';
import type { BuildingFinding } from './finding.ts';
import { type Leaving, leavingIn } from './leave.ts';
import { leavingFindings } from './leavingFindings.ts';
import { type Passages, passagesIn } from './passage.ts';
import { reentryFindings } from './reentryFindings.ts';
import { type HoursOf, type Plan, planOf } from './plan.ts';
import { type DoorCapacity, doorCapacity } from './width.ts';

/** The building in one condition. Conditions in which every opening does the same share one state. */
export interface BuildingState {
  readonly passages: Passages;
  readonly leaving: Leaving;
  readonly reached: Reached;
  readonly crowd: Crowd;
  readonly conditions: ConditionId[];
}

export interface BuildingAnswer {
  readonly plan: Plan;
  readonly capacities: readonly DoorCapacity[];
  readonly states: ReadonlyMap<ConditionId, BuildingState>;
  /** The worst first. */
  readonly findings: readonly BuildingFinding[];
}

/** The building as a whole in every condition: who cannot leave, where doors are narrow, what stands open. */
export function assessBuilding(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  hoursOf?: HoursOf,
): BuildingAnswer {
  const plan = planOf(project, decisions, hoursOf);
  const capacities = plan.edges.map((edge) => doorCapacity(edge, project.basis));
  const byKey = new Map<string, BuildingState>();
  const states = new Map<ConditionId, BuildingState>();
  for (const id of buildingConditionIds) {
    const passages = passagesIn(plan, id);
    let state = byKey.get(passages.key);
    if (!state) {
      const leaving = leavingIn(plan, passages);
      state = {
        passages,
        leaving,
        reached: reachedWithoutCredential(plan, passages),
        crowd: crowdIn(plan, passages, leaving, capacities),
        conditions: [],
      };
      byKey.set(passages.key, state);
    }
    state.conditions.push(id);
    states.set(id, state);
  }
  const all = [...byKey.values()];
  const findings = [
    ...(plan.outside.length > 0 ? leavingFindings(plan, all) : []),
    ...reentryFindings(plan),
    ...exposureFindings(plan, all),
    ...(plan.outside.length > 0 ? crowdFindings(plan, all) : []),
    ...dataFindings(plan, capacities),
  ];
  return { plan, capacities, states, findings: findings.toSorted(bySeverity) };
}
