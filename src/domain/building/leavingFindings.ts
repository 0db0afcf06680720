import { type ConditionId, doubleFaultIds, fireConditionIds } from '../simulate/conditions.ts';
import type { Severity } from '../simulate/outcome.ts';
import type { BuildingState } from './building.ts';
import { dispersalOf } from './dispersal.ts';
import type { BuildingFinding } from './finding.ts';
import { Gathered, idsOf, marksOf } from './gather.ts';
import { occupiedSpaces, otherEnd, shutWays, wayOut } from './leave.ts';
import { AFTER, NOT_SAID, type Passages, SHUT, STAFF } from './passage.ts';
import { edgesAt, factOf, isKeyedWhileEmpty, type Plan } from './plan.ts';
import { says } from './sentences.ts';

/** Everyone can leave: every space with people in it reaches the outside, in every condition. */
export function leavingFindings(plan: Plan, states: readonly BuildingState[]): readonly BuildingFinding[] {
  const found = new Gathered();
  const occupied = occupiedSpaces(plan);
  for (const { passages, leaving, conditions } of states.flatMap(bySingleFault)) {
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
          const byStair = passesStair(plan, index, edges);
          found.add({
            ...common,
            kind: 'keyed',
            severity: conditions.includes('unlockedHours') || byStair ? 'serious' : 'note',
            openingIds: idsOf(plan, shut),
            path: idsOf(plan, edges),
            says: byStair
              ? says.keyedBelowStair(space.name, marksOf(plan, shut))
              : says.keyed(space.name, marksOf(plan, shut)),
          });
          continue;
        }
        const ends = shut.length > 0 ? dispersalOf(plan, shut) : undefined;
        if (ends) {
          found.add({
            ...common,
            kind: 'dispersal',
            severity: ends.severity,
            openingIds: idsOf(plan, shut),
            path: idsOf(plan, edges),
            says: says.dispersal(space.name, ends),
            ruleId: 'R-66',
          });
          continue;
        }
        if (shut.length > 0 && restsOnTwo(plan, shut, conditions)) {
          const alarmCuts = shut.every((edge) => plan.edges[edge]?.simulated?.arrangement.alarmCuts);
          found.add({
            ...common,
            kind: 'restsOnTwo',
            severity: alarmCuts ? 'note' : 'serious',
            openingIds: idsOf(plan, shut),
            path: idsOf(plan, edges),
            says: says.restsOnTwo(space.name, marksOf(plan, shut), alarmCuts),
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
        const held = waitedAt(plan, passages, way, index);
        const staff = staffAt(plan, held);
        const inFire = conditions.some((id) => (fireConditionIds as readonly string[]).includes(id));
        found.add({
          ...common,
          kind: 'staffOnly',
          severity:
            inFire && !isExcused(plan, held) ? 'severe' : staffSeverity[staff][inFire ? 'fire' : 'quiet'],
          openingIds: idsOf(plan, held),
          path: idsOf(plan, way),
          says: says.staffOnly(space.name, marksOf(plan, held), staff),
        });
      }
    }
  }
  return found.all();
}

/** Two faults at once are told apart from one, also where they end alike. */
function bySingleFault(state: BuildingState): readonly BuildingState[] {
  const isDouble = (id: ConditionId) => doubleFaultIds.includes(id);
  const [double, single] = [
    state.conditions.filter(isDouble),
    state.conditions.filter((id) => !isDouble(id)),
  ];
  return [single, double].flatMap((conditions) => (conditions.length > 0 ? [{ ...state, conditions }] : []));
}

type Staff = 'there' | 'none' | 'notKnown';
/** Whom nobody lets out is shut in, fire or not. */
const staffSeverity: Readonly<Record<Staff, Readonly<Record<'fire' | 'quiet', Severity>>>> = {
  there: { fire: 'serious', quiet: 'note' },
  notKnown: { fire: 'severe', quiet: 'serious' },
  none: { fire: 'severe', quiet: 'severe' },
};

/** Whether somebody is said to be there who can open each of these doors. */
function staffAt(plan: Plan, held: readonly number[]): Staff {
  const each = held.map((index): Staff => {
    const edge = plan.edges[index];
    const able = edge && factOf(edge, 'staffCanUnlock');
    const post = edge && factOf(edge, 'attendedStation');
    if (able === true || post === true) return 'there';
    return able === false || post === false ? 'none' : 'notKnown';
  });
  return each.includes('none') ? 'none' : each.includes('notKnown') ? 'notKnown' : 'there';
}

/**
 * In a fire people wait for staff only where the code lets a lock stay shut then: psychiatric treatment and detention.
 * Source: IBC 1010.1.9.7 exception 1 and 408 (2018), read for the first.
 */
function isExcused(plan: Plan, held: readonly number[]): boolean {
  return held.every((index) => {
    const edge = plan.edges[index];
    if (!edge) return true;
    return factOf(edge, 'clinicalArea') === 'psychiatric' || factOf(edge, 'occupancyGroup') === 'I-3';
  });
}

/** The openings of a way where people wait for staff, in the direction in which they come to each. */
function waitedAt(
  plan: Plan,
  { out, into }: Passages,
  way: readonly number[],
  start: number,
): readonly number[] {
  let here = start;
  return way.filter((index) => {
    const grade = (plan.edges[index]?.to === here ? out : into)[index];
    here = otherEnd(plan, index, here);
    return grade === STAFF;
  });
}

function restsOnTwo(plan: Plan, shut: readonly number[], conditions: readonly ConditionId[]): boolean {
  return (
    conditions.every((id) => doubleFaultIds.includes(id)) &&
    shut.every((index) => plan.edges[index]?.simulated?.outcomes.exitReleasesFailed.applies)
  );
}

/** People of other floors come by a stair, and keep no hours with the room whose door is locked. */
function passesStair(plan: Plan, start: number, way: readonly number[]): boolean {
  let here = start;
  if (plan.spaces[here]?.kind === 'stair') return true;
  return way.some((edge) => {
    here = otherEnd(plan, edge, here);
    return plan.spaces[here]?.kind === 'stair';
  });
}

function leadsNowhere(plan: Plan, index: number): boolean {
  const edge = plan.edges[index];
  return edge?.from === plan.nowhere || edge?.to === plan.nowhere;
}
