import type { Project } from '../../src/domain/model/project.ts';
import { demoBuilding } from './demoBuilding.ts';
import { buildProject } from './kit.ts';
import { withPower } from './power.ts';
import { withPrices } from './prices.ts';
import { withReviews } from './reviews.ts';

export function demoProject(): Project {
  return withPrices(withPower(withReviews(buildProject(demoBuilding))));
}
