import type { ConditionId } from '../simulate/conditions.ts';
import { standing } from '../simulate/simulate.ts';
import type { BuildingFinding } from './finding.ts';
import { idsOf, marksOf } from './gather.ts';
import type { Edge, Plan } from './plan.ts';
import { says } from './sentences.ts';

/** When somebody in the stair may count on a floor door: always, under alarm, or once it is released from afar. */
const reentry: readonly ConditionId[] = ['lockedHours', 'fireAlarm', 'releaseCommand'];

/**
 * A stair from which no floor can be entered again. One floor door alone may be the way out of a cellar or roof; from
 * two on the stair joins floors. The stair that is the only exit has an exception of its own, left to a reviewer.
 */
export function reentryFindings(plan: Plan): readonly BuildingFinding[] {
  return plan.spaces.flatMap((stair, node): BuildingFinding[] => {
    if (stair.kind !== 'stair') return [];
    const floors = [...plan.around.subarray(plan.first[node], plan.first[node + 1])].filter((index) => {
      const edge = plan.edges[index];
      return edge?.from === node && plan.spaces[edge.to] !== undefined;
    });
    const edges = floors.flatMap((index) => plan.edges[index] ?? []);
    if (edges.length < 2 || !edges.every(staysShut)) return [];
    return [
      {
        kind: 'noReentry',
        severity: 'severe',
        conditions: [...reentry],
        spaceId: stair.id,
        openingIds: idsOf(plan, floors),
        path: [],
        closing: null,
        says: says.noReentry(stair.name, marksOf(plan, floors)),
      },
    ];
  });
}

/** What nobody decided, or what is the only exit stair, says nothing. */
function staysShut({ simulated }: Edge): boolean {
  return (
    simulated !== undefined &&
    !simulated.setting.loneStair &&
    reentry.every((id) => standing(simulated.outcomes, id).entry === 'locked')
  );
}
