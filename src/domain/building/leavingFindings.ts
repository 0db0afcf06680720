import { fireConditionIds } from '../simulate/conditions.ts';
import type { BuildingState } from './building.ts';
import type { BuildingFinding } from './finding.ts';
import { Gathered, idsOf, marksOf } from './gather.ts';
import { occupiedSpaces, shutWays, wayOut } from './leave.ts';
import { AFTER, NOT_SAID, type Passages, SHUT, STAFF } from './passage.ts';
import { factOf, isKeyedWhileEmpty, type Plan } from './plan.ts';
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
        if (shut.length > 0 && shut.every((edge) => isKeyedWhileEmpty(plan.edges[edge]))) {
          found.add({
            ...common,
            kind: 'keyed',
            severity: conditions.includes('unlockedHours') ? 'serious' : 'note',
            openingIds: idsOf(plan, shut),
            path: idsOf(plan, edges),
            says: says.keyed(space.name, marksOf(plan, shut)),
          });
          continue;
        }
        const around = shut.length > 0 ? [] : edgesAt(plan, index);
        found.add({
          ...common,
          kind: 'trapped',
          severity: 'severe',
          openingIds: idsOf(plan, shut.length > 0 ? shut : around),
          path: idsOf(plan, edges),
          says: says.trapped(space.name, marksOf(plan, shut), marksOf(plan, around)),
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
          severity: !inFire ? 'note' : isWatched(plan, passages, way) ? 'serious' : 'severe',
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

function edgesAt(plan: Plan, node: number): readonly number[] {
  return [...plan.around.subarray(plan.first[node], plan.first[node + 1])];
}

/**
 * In a fire people wait for staff only where the code lets a lock stay shut then and somebody is there to open it:
 * psychiatric treatment and detention. Source: IBC 1010.1.9.7 exception 1 and 408 (2018), read for the first.
 */
function isWatched(plan: Plan, { out }: Passages, way: readonly number[]): boolean {
  return way.every((index) => {
    const edge = plan.edges[index];
    if (!edge || out[index] !== STAFF) return true;
    const excused =
      factOf(edge, 'clinicalArea') === 'psychiatric' || factOf(edge, 'occupancyGroup') === 'I-3';
    return excused && (factOf(edge, 'staffCanUnlock') === true || factOf(edge, 'attendedStation') === true);
  });
}

function leadsNowhere(plan: Plan, index: number): boolean {
  const edge = plan.edges[index];
  return edge?.from === plan.nowhere || edge?.to === plan.nowhere;
}
