import type { Decision } from '../domain/decide/decision.ts';
import { type DecisionReport, reportOf } from '../domain/words/report.ts';
import { type Simulated, simulateOpening } from '../domain/decide/whatHappens.ts';
import type { Opening, Project, SecurityLevel } from '../domain/model/project.ts';

const reports = new WeakMap<Decision, DecisionReport>();

/** A decision in words. */
export function reportFor(decision: Decision): DecisionReport {
  const report = reports.get(decision) ?? reportOf(decision);
  reports.set(decision, report);
  return report;
}

interface Ran {
  readonly toLevel: SecurityLevel | null | undefined;
  readonly simulated: Simulated | undefined;
}
const simulations = new WeakMap<Decision, Ran>();

/** One opening in every condition, run again only when its decision or the level of the space beyond changed. */
export function simulationFor(project: Project, opening: Opening, decision: Decision): Simulated | undefined {
  const toLevel = opening.toSpaceId === null ? undefined : project.spaces[opening.toSpaceId]?.securityLevel;
  const before = simulations.get(decision);
  if (before && before.toLevel === toLevel) return before.simulated;
  const simulated = simulateOpening(project, opening, decision);
  simulations.set(decision, { toLevel, simulated });
  return simulated;
}
