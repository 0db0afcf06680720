import type { Project } from '../domain/model/project.ts';
import { openSignatures, questionsOf } from '../domain/review/questions.ts';
import { unsignedOpenings } from '../domain/review/status.ts';
import { buildingFindingsFor, decisionsInBuilding } from './buildings.ts';
import { rememberLast } from './rememberLast.ts';

/** Every question that asks for a name, worked out again after an edit. */
export const questionsFor = rememberLast((project: Project) =>
  questionsOf(project, decisionsInBuilding(project), buildingFindingsFor(project)),
);

/** What must be signed before issue and is not: one count for screens, pages and exports. */
export const openSignaturesFor = rememberLast((project: Project) =>
  openSignatures(questionsFor(project), unsignedOpenings(project, decisionsInBuilding(project))),
);
