import type { BuildingFinding, BuildingFindingKind } from '../../domain/building/finding.ts';
import type { Project } from '../../domain/model/project.ts';
import type { ConditionId } from '../../domain/simulate/conditions.ts';
import type { Severity } from '../../domain/simulate/outcome.ts';
import type { PowerRecords } from './powerRecord.ts';
import { reasonOfRule } from '../sheets/reasons.ts';

/** What was found about the building as a whole, for another program: the last line of the output. */
export interface BuildingRecord {
  readonly building: { readonly findings: readonly FindingRecord[]; readonly power: PowerRecords };
}
export interface FindingRecord {
  readonly severity: Severity;
  readonly kind: BuildingFindingKind;
  readonly says: string;
  /** Conditions in which it shows; empty where it does not depend on them. */
  readonly conditions: readonly ConditionId[];
  /** Name of the space it speaks of. */
  readonly space: string | null;
  readonly openings: readonly string[];
  /** Marks in the order in which a person meets them. */
  readonly path: readonly string[];
  /** The rule behind it; null where the walk through the building found it. */
  readonly rule: string | null;
  readonly cites: readonly string[];
}

export function buildingRecord(
  project: Project,
  findings: readonly BuildingFinding[],
  power: PowerRecords,
): BuildingRecord {
  const marksOf = (ids: readonly string[]) => ids.map((id) => project.openings[id]?.mark ?? id);
  return {
    building: {
      findings: findings.map((one) => ({
        severity: one.severity,
        kind: one.kind,
        says: one.says,
        conditions: one.conditions,
        space: one.spaceId === null ? null : (project.spaces[one.spaceId]?.name ?? null),
        openings: marksOf(one.openingIds),
        path: marksOf(one.path),
        rule: one.ruleId ?? null,
        cites:
          one.ruleId === undefined ? [] : reasonOfRule(one.ruleId, 'note', one.says, project.basis).cites,
      })),
      power,
    },
  };
}

export function buildingLine(record: BuildingRecord, pretty = false): string {
  return JSON.stringify(record, null, pretty ? 2 : undefined);
}
