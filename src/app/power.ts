import type { Project } from '../domain/model/project.ts';
import { powerPlan } from '../domain/power/powerPlan.ts';
import { rememberLast } from './rememberLast.ts';
import { decisionsInBuilding } from './buildings.ts';

/** Runs, supplies and closets of the building, as long as the project stays the same. */
export const powerFor = rememberLast((project: Project) => powerPlan(project, decisionsInBuilding(project)));
