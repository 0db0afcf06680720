import { fireConditionIds } from '../simulate/conditions.ts';
import type { BuildingState } from './building.ts';
import type { BuildingFinding } from './finding.ts';
import { Gathered, idsOf, marksOf } from './gather.ts';
import { occupiedSpaces, shutWays, wayOut } from './leave.ts';
import { AFTER, NOT_SAID, SHUT, STAFF } from './passage.ts';
import type { Plan } from './plan.ts';
import { says } from './sentences.ts';

/** Everyone can leave: every space with people in it reaches the outside, in every condition. */
export function leavingFindings(plan: Plan, states: readonly BuildingState[]): readonly BuildingFinding[] {
  const found = new Gathered();
  const occupied = occupiedSpaces(plan);
  for (const { passages, leaving, conditions } of states) {
    const stuck = occupied.filter((space) => (leaving.grade[space] as number) > AFTER);
    if (stuck.length === 0) continue;
    const shutWay = shutWays(plan, passages);
    for (const index of stuck) {
      const space = plan.spaces[index];
      if (!space) continue;
      const grade = leaving.grade[index] as number;
      const common = { conditions, spaceId: space.id, closing: null };
      const way = wayOut(plan, leaving, index);
      if (grade === SHUT) {
        // A space with no opening at all is told among the gaps of the data.
        if (plan.first[index] === plan.first[index + 1]) continue;
        const { edges, shut } = shutWay(index) ?? { edges: [], shut: [] };
        found.add({
          ...common,
          kind: 'trapped',
          severity: 'severe',
          openingIds: idsOf(plan, shut),
          path: idsOf(plan, edges),
          says: says.trapped(space.name, marksOf(plan, shut)),
        });
      } else if (grade === NOT_SAID) {
        const open = way.filter((edge) => !plan.edges[edge]?.simulated || leadsNowhere(plan, edge));
        found.add({
          ...common,
          kind: 'notSaid',
          severity: 'serious',
          openingIds: idsOf(plan, open),
          path: idsOf(plan, way),
          says: says.notSaid(space.name, marksOf(plan, open)),
        });
      } else if (grade === STAFF) {
        const inFire = conditions.some((id) => (fireConditionIds as readonly string[]).includes(id));
        found.add({
          ...common,
          kind: 'staffOnly',
          severity: inFire ? 'serious' : 'note',
          openingIds: idsOf(
            plan,
            way.filter((edge) => passages.out[edge] === STAFF),
          ),
          path: idsOf(plan, way),
          says: says.staffOnly(space.name),
        });
      }
    }
  }
  return found.all();
}

function leadsNowhere(plan: Plan, index: number): boolean {
  const edge = plan.edges[index];
  return edge?.from === plan.nowhere || edge?.to === plan.nowhere;
}
