import { type Counting, countingOf } from '../hardware/counting.ts';
import { leavesOf } from '../hardware/inPlace.ts';
import { partsOf } from '../hardware/parts.ts';
import { type ItemId, items, trades } from '../devices/items.ts';
import { openingsInOrder, type Project } from '../model/project.ts';
import { type OrderState, orderState } from './forOrder.ts';
import type { Decisions } from '../decide/decision.ts';
import { detailOf } from './setLines.ts';
import { type Block, blockOf, type HardwareSet, standardOf } from './sets.ts';

/** One item at one opening: the same list as the sets, before it is multiplied. */
export interface OpeningLine {
  readonly openingId: string;
  readonly mark: string;
  readonly floorId: string | null;
  readonly set: string;
  readonly order: OrderState;
  readonly item: ItemId;
  readonly block: Block;
  readonly name: string;
  readonly detail: string;
  readonly standard: string;
  readonly trade: string;
  readonly counting: Counting;
  readonly quantity: number;
  readonly ruleIds: readonly string[];
}

/** Every line of every opening that has a set, in the order of the schedule. */
export function openingLines(
  project: Project,
  decisions: Decisions,
  sets: readonly HardwareSet[],
): readonly OpeningLine[] {
  const setOf = new Map(sets.flatMap((set) => set.openings.map((opening) => [opening.id, set.id] as const)));
  return openingsInOrder(project).flatMap((opening) => {
    const { id, mark, floorId } = opening;
    const decision = decisions.get(id);
    const set = setOf.get(id);
    if (!decision || set === undefined) return [];
    const parts = partsOf(decision);
    const order = orderState(project, opening, decision);
    return parts.map((part) => {
      const counting = countingOf(part, parts, leavesOf(decision));
      return {
        openingId: id,
        mark,
        floorId,
        set,
        order,
        item: part.item,
        block: blockOf(part.item),
        name: items[part.item].name,
        detail:
          counting === 'included' || counting === 'kept' ? '' : detailOf(part.item, [{ mark, decision }]),
        standard: standardOf(part.item),
        trade: trades[items[part.item].trade],
        counting,
        quantity: part.quantity,
        ruleIds: part.ruleId === undefined ? [] : [part.ruleId],
      };
    });
  });
}
