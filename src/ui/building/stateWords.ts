import type { BuildingState } from '../../domain/building/building.ts';
import { AFTER, FREE, NOT_SAID, STAFF } from '../../domain/building/passage.ts';
import type { Edge, Plan } from '../../domain/building/plan.ts';
import { isOccupied } from '../../domain/building/plan.ts';
import { endsTheWay } from '../../domain/model/project.ts';
import type { ConditionId } from '../../domain/simulate/conditions.ts';
import type { Outcome } from '../../domain/simulate/outcome.ts';
import { standing } from '../../domain/simulate/simulate.ts';
import { rankOf } from '../../domain/building/exposure.ts';
import type { StateWord } from '../../exporting/drawing/word-symbols.ts';

/** What an opening does in a condition, or undefined where nothing is chosen. */
export function outcomeOf({ simulated }: Edge, condition: ConditionId): Outcome | undefined {
  return simulated && standing(simulated.outcomes, condition);
}

/** The one symbol that stands at an opening: a way out that is not free tells more than its lock. */
export function symbolOf(outcome: Outcome): StateWord {
  switch (outcome.exit) {
    case 'blocked':
      return 'blocked';
    case 'byStaff':
      return 'byStaff';
    case 'after':
      return 'delayed';
    case 'free':
    case 'none':
      return outcome.entry === 'unlocked' ? 'unlocked' : 'locked';
  }
}

export function wayOutInWords(plan: Plan, state: BuildingState, space: number): string {
  const found = plan.spaces[space];
  if (!found || endsTheWay(found)) return 'Outside';
  switch (state.leaving.grade[space]) {
    case FREE:
      return 'Egress free';
    case AFTER:
      return 'Egress after a delay';
    case STAFF:
      return 'Egress by staff release';
    case NOT_SAID:
      return 'Egress not known';
    default:
      return isOccupied(plan, space) ? 'No egress' : 'No egress; no one inside';
  }
}

/** Protected and yet open to anybody. */
export function isExposed(plan: Plan, state: BuildingState, space: number): boolean {
  return state.reached.reached[space] === 1 && rankOf(plan, space) >= 2;
}
