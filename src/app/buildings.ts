import { assessBuilding } from '../domain/building/building.ts';
import { allDecisions } from './decisions.ts';
import { rememberLast } from './derive.ts';

/** The building as a whole; walked again after every edit, which takes well under a second. */
export const buildingFor = rememberLast((project: Parameters<typeof assessBuilding>[0]) =>
  assessBuilding(project, allDecisions(project)),
);
