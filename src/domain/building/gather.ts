import type { ConditionId } from '../simulate/conditions.ts';
import type { BuildingFinding } from './finding.ts';
import type { Plan } from './plan.ts';

/** Findings that say the same in several conditions become one that names them all. */
export class Gathered {
  readonly #found = new Map<string, BuildingFinding>();

  add(finding: BuildingFinding): void {
    const key = `${finding.kind}|${finding.spaceId}|${finding.says}`;
    const before = this.#found.get(key);
    if (!before) {
      this.#found.set(key, finding);
      return;
    }
    const conditions: ConditionId[] = [...before.conditions, ...finding.conditions];
    // The worse of the two, with the conditions of both.
    const kept = severityRank[finding.severity] < severityRank[before.severity] ? finding : before;
    this.#found.set(key, { ...kept, conditions });
  }

  all(): readonly BuildingFinding[] {
    return [...this.#found.values()];
  }
}
const severityRank = { severe: 0, serious: 1, note: 2 } as const;

export function marksOf(plan: Plan, edges: readonly number[]): readonly string[] {
  return edges.flatMap((index) => {
    const edge = plan.edges[index];
    return edge ? [edge.opening.mark] : [];
  });
}
export function idsOf(plan: Plan, edges: readonly number[]): readonly string[] {
  return edges.flatMap((index) => {
    const edge = plan.edges[index];
    return edge ? [edge.opening.id] : [];
  });
}
