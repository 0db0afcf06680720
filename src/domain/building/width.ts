import { capacityFactor, capacityOf } from '../egress/capacity.ts';
import { clearWidthButt, clearWidthOfPairLeaf, clearWidthSwingClear } from '../egress/clearWidth.ts';
import { slotOf } from '../logic/compile.ts';
import type { FactKey, FactValues } from '../model/fields.ts';
import { qty } from '../units/quantity.ts';
import type { Edge } from './plan.ts';

/** People a door passes. `estimated`: from the leaf and its hinges, because nobody measured the clear width. */
export type DoorCapacity =
  | { readonly known: true; readonly people: number; readonly clearIn: number; readonly estimated: boolean }
  | { readonly known: false };

/** Clear width ÷ inches per person (IBC 1005.3.2: 0.2, or 0.15 with sprinklers and voice alarm). */
export function doorCapacity({ decision }: Edge): DoorCapacity {
  if (!decision) return { known: false };
  const fact = <K extends FactKey>(key: K) => decision.slots[slotOf(key)] as FactValues[K];
  const type = fact('doorType');
  const pair = type === 'pair' || type === 'doubleEgressPair';
  const measured = fact('clearWidthIn');
  const oneLeaf = measured ?? estimate(fact, pair);
  if (oneLeaf === undefined) return { known: false };
  // The second leaf counts only where it opens by itself or the survey says that its width is needed.
  const held = fact('inactiveBolts');
  const bothLeaves =
    pair && (fact('inactiveNeededForCapacity') === true || held === 'rods' || held === 'rim');
  const clearIn = bothLeaves ? oneLeaf * 2 : oneLeaf;
  const sprinklered = fact('sprinklered');
  const voiceAlarm = fact('voiceAlarm');
  const group = fact('occupancyGroup');
  const factor = capacityFactor('other', {
    ...(sprinklered !== undefined && { sprinklered }),
    ...(voiceAlarm !== undefined && { voiceAlarm }),
    ...(group !== undefined && { group }),
  });
  return {
    known: true,
    people: capacityOf(qty(clearIn, 'in'), factor),
    clearIn,
    estimated: measured === undefined,
  };
}

function estimate(
  fact: <K extends FactKey>(key: K) => FactValues[K] | undefined,
  pair: boolean,
): number | undefined {
  const width = fact('leafWidthIn');
  const thickness = fact('leafThicknessIn');
  const hanging = fact('hinges');
  if (width === undefined || thickness === undefined || hanging === undefined) return undefined;
  if (fact('opensTo90') === false || hanging === 'track') return undefined;
  const [leaf, thick] = [qty(width, 'in'), qty(thickness, 'in')];
  const found = pair
    ? clearWidthOfPairLeaf(qty(width * 2, 'in'), thick)
    : hanging === 'swingClear'
      ? clearWidthSwingClear(leaf, thick)
      : clearWidthButt(leaf, thick);
  return found.ok ? found.clear : undefined;
}
