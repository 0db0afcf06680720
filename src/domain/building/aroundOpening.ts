import type { Decision } from '../decide/decision.ts';
import type { Opening, Project } from '../model/project.ts';
import { assessBuilding } from './building.ts';
import { type SpaceEgress, spaceEgress } from './spaceEgress.ts';

/**
 * Loads and exits of the spaces an opening joins. They rest on the openings of these spaces alone, so the rest of a
 * large building need not be walked while somebody answers questions here; the answer is the same.
 */
export function spacesAround(
  project: Project,
  opening: Opening,
  decisionOf: (opening: Opening) => Decision,
): readonly SpaceEgress[] {
  const joined = [opening.fromSpaceId, opening.toSpaceId];
  const near = Object.values(project.openings).filter(({ fromSpaceId, toSpaceId }) =>
    [fromSpaceId, toSpaceId].some((id) => id !== null && joined.includes(id)),
  );
  const ids = new Set(near.flatMap(({ fromSpaceId, toSpaceId }) => [fromSpaceId, toSpaceId]));
  const part: Project = {
    ...project,
    openings: Object.fromEntries(near.map((one) => [one.id, one])),
    spaces: Object.fromEntries(Object.entries(project.spaces).filter(([id]) => ids.has(id))),
  };
  const decisions = new Map(near.map((one) => [one.id, decisionOf(one)]));
  return spaceEgress(assessBuilding(part, decisions)).filter(({ space }) => joined.includes(space.id));
}
