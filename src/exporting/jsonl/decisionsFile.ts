import { standingOf } from '../../domain/bid/openQuestions.ts';
import type { BuildingFinding } from '../../domain/building/finding.ts';
import { basisInWords } from '../../domain/codes/basis.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import { openingsInOrder, type Project } from '../../domain/model/project.ts';
import { doubtsOf } from '../../domain/project/doubts.ts';
import { setNumbersOf } from '../../domain/sets/sets.ts';
import { standingCaution } from '../../domain/text/cautions.ts';
import { buildingRecord } from './buildingRecord.ts';
import { powerRecords } from './powerRecord.ts';
import { decisionRecord } from './record.ts';
import { type DecisionsFile, decisionsFormat, decisionsVersion } from './schema.ts';

type Decisions = ReadonlyMap<string, Decision>;

/** All that was decided, as one document for another program; its schema is published beside `assess.md`. */
export function decisionsFile(
  project: Project,
  decisions: Decisions,
  findings: readonly BuildingFinding[],
): DecisionsFile {
  const [numbers, doubts] = [setNumbersOf(project, decisions), doubtsOf(project)];
  return {
    format: decisionsFormat,
    version: decisionsVersion,
    project: project.name,
    basis: basisInWords(project.basis),
    standing: standingOf(project, decisions).says,
    caution: standingCaution,
    openings: openingsInOrder(project).flatMap((opening) => {
      const decision = decisions.get(opening.id);
      return decision ? [decisionRecord(project, opening, decision, numbers, doubts)] : [];
    }),
    building: buildingRecord(project, findings, powerRecords(project, decisions)),
  };
}

export const decisionsText = (file: DecisionsFile): string => `${JSON.stringify(file, null, 1)}\n`;
