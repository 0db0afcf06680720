import type { Decision, SevereFinding } from '../decide/decision.ts';
import type { Grade } from '../rules/rule.ts';
import { bySeverity, type Severity } from '../simulate/outcome.ts';
import type { BuildingAnswer } from './building.ts';
import type { BuildingFinding } from './finding.ts';
import type { PathFinding } from './paths.ts';
import type { SpaceEgress } from './spaceEgress.ts';

/** What a reviewer must sign weighs as much as what the building itself shows; both stand in one list. */
const severityOf: Readonly<Record<Grade, Severity>> = { must: 'severe', should: 'serious', note: 'note' };

/** Everything found about the building: spaces short of ways out and rules along the way out among it, the worst first. */
export function allFindings(
  { findings }: Pick<BuildingAnswer, 'findings'>,
  paths: readonly PathFinding[],
  spaces: readonly SpaceEgress[],
): readonly BuildingFinding[] {
  // Notes on loads and exits are many while a survey is young; they stand with their space.
  const egress = spaces.flatMap((one) => one.findings).filter((one) => one.severity !== 'note');
  return [...findings, ...egress, ...paths.map(asFinding)].toSorted(bySeverity);
}

/** Severe findings by the openings they name: none of these is settled while they stand. */
export function severeByOpening(
  findings: readonly BuildingFinding[],
): ReadonlyMap<string, readonly SevereFinding[]> {
  const found = new Map<string, SevereFinding[]>();
  for (const finding of findings) {
    if (finding.severity !== 'severe') continue;
    const [key, says] = [keyOf(finding), finding.says];
    for (const id of new Set(finding.openingIds)) {
      const there = found.get(id) ?? [];
      if (!there.some((one) => one.says === says)) there.push({ key, says, from: 'building' });
      found.set(id, there);
    }
  }
  return found;
}

/** What is wrong and in which space, or at which openings: a mark or a room renamed is the same finding. */
function keyOf({ kind, ruleId, spaceId, openingIds }: BuildingFinding): string {
  return `${ruleId ?? kind} ${spaceId ?? openingIds.toSorted().join(' ')}`;
}

/** Decisions as the building leaves them: an opening that a severe finding names is not settled. */
export function withBuilding(
  decisions: ReadonlyMap<string, Decision>,
  findings: readonly BuildingFinding[],
): ReadonlyMap<string, Decision> {
  const severe = severeByOpening(findings);
  return new Map([...decisions].map(([id, decision]) => [id, decision.withSevere(severe.get(id) ?? [])]));
}

/** A rule along the way out holds whatever the condition, so it names none. */
function asFinding({ ruleId, grade, sentence, openingIds }: PathFinding): BuildingFinding {
  return {
    kind: 'alongTheWay',
    severity: severityOf[grade],
    conditions: [],
    spaceId: null,
    openingIds,
    path: openingIds,
    closing: null,
    says: sentence,
    ruleId,
  };
}
