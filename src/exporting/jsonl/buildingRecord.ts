import type { BuildingFinding } from '../../domain/building/finding.ts';
import type { Project } from '../../domain/model/project.ts';
import type { BuildingRecord, PowerRecords } from './schema.ts';
import { reasonOfRule } from '../sheets/reasons.ts';

/** What was found about the building as a whole, for another program. */
export function buildingRecord(
  project: Project,
  findings: readonly BuildingFinding[],
  power: PowerRecords,
): BuildingRecord {
  const marksOf = (ids: readonly string[]) => ids.map((id) => project.openings[id]?.mark ?? id);
  return {
    findings: findings.map((one) => ({
      severity: one.severity,
      kind: one.kind,
      says: one.says,
      conditions: one.conditions,
      space: one.spaceId === null ? null : (project.spaces[one.spaceId]?.name ?? null),
      openings: marksOf(one.openingIds),
      path: marksOf(one.path),
      rule: one.ruleId ?? null,
      cites: one.ruleId === undefined ? [] : reasonOfRule(one.ruleId, 'note', one.says, project.basis).cites,
    })),
    power,
  };
}

/** The last line of the output. */
export function buildingLine(record: BuildingRecord, pretty = false): string {
  return JSON.stringify({ building: record }, null, pretty ? 2 : undefined);
}
