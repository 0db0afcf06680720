import type { Project } from '../../src/domain/model/project.ts';
import { demoBuilding } from './demoBuilding.ts';
import { buildProject } from './kit.ts';
import { withReviews } from './reviews.ts';

export function demoProject(): Project {
  return withReviews(buildProject(demoBuilding));
}
