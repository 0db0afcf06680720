import { allFindings, withBuilding } from '../domain/building/alongTheWay.ts';
import { spacesAround } from '../domain/building/aroundOpening.ts';
import { assessBuilding } from '../domain/building/building.ts';
import { pathFindings } from '../domain/building/paths.ts';
import { spaceEgress } from '../domain/building/spaceEgress.ts';
import type { Opening, Project } from '../domain/model/project.ts';
import { allDecisions, decisionFor } from './decisions.ts';
import { rememberLast } from './derive.ts';

/** The building as a whole; walked again after every edit, which takes well under a second. */
export const buildingFor = rememberLast((project: Project) => assessBuilding(project, allDecisions(project)));

/** Rules that look along the way out. */
export const pathFindingsFor = rememberLast((project: Project) =>
  pathFindings(project, allDecisions(project)),
);

/** Loads, ways out and their width, space by space. */
export const spaceEgressFor = rememberLast((project: Project) => spaceEgress(buildingFor(project)));

/** The same for the spaces one opening joins, without walking the whole building. */
export const spacesAroundFor = (project: Project, opening: Opening) =>
  spacesAround(project, opening, (one) => decisionFor(project, one));

/** What was found about the building, loads and exits and rules along the way out among it. */
export const buildingFindingsFor = rememberLast((project: Project) =>
  allFindings(buildingFor(project), pathFindingsFor(project), spaceEgressFor(project)),
);

/**
 * All decisions as the building leaves them, for paper, tables and the reviewer. The grid shows each opening by itself:
 * it is drawn after every answer, and walking a large building then would be felt.
 */
export const decisionsInBuilding = rememberLast((project: Project) =>
  withBuilding(allDecisions(project), buildingFindingsFor(project)),
);
