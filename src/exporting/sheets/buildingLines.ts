import type { PathFinding } from '../../domain/building/paths.ts';
import type { Project } from '../../domain/model/project.ts';
import { reviewStateWords } from '../../domain/review/words.ts';
import { type ReasonInFull, reasonOfRule } from './reasons.ts';

/** What needs a name although no single opening can carry the mark: a rule along the way out. */
export interface BuildingLine {
  readonly id: string;
  readonly reason: ReasonInFull;
  /** No mark can be put on file for it, so it waits for as long as it stands. */
  readonly stateWord: string;
  readonly openings: readonly { readonly id: string; readonly mark: string }[];
}

/** What must be signed comes first, then what should be looked at; a note asks nothing of a reviewer. */
export function buildingLines(project: Project, paths: readonly PathFinding[]): readonly BuildingLine[] {
  return (['must', 'should'] as const).flatMap((grade) =>
    paths.filter((one) => one.grade === grade).map((one) => lineOf(project, one)),
  );
}

/** Rules along the way out that name this opening, notes among them. */
export function linesAbout(
  project: Project,
  paths: readonly PathFinding[],
  openingId: string,
): readonly BuildingLine[] {
  return paths.filter((one) => one.openingIds.includes(openingId)).map((one) => lineOf(project, one));
}

function lineOf(project: Project, { ruleId, grade, sentence, openingIds }: PathFinding): BuildingLine {
  return {
    id: `${ruleId} ${openingIds.join(' ')}`,
    reason: reasonOfRule(ruleId, grade, sentence, project.basis),
    stateWord: reviewStateWords.open,
    openings: openingIds.map((id) => ({ id, mark: project.openings[id]?.mark ?? id })),
  };
}
