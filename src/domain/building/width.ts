import { valueIn } from '../logic/slots.ts';
import type { CodeBasis } from '../codes/basis.ts';
import { capacityOf } from '../egress/capacity.ts';
import { clearWidthButt, clearWidthOfPairLeaf, clearWidthSwingClear } from '../egress/clearWidth.ts';
import { type WidthFactor, widthFactors } from '../egress/widthFactors.ts';
import { type FactKey, type FactValue, fieldInfo } from '../model/fields.ts';
import { qty } from '../units/quantity.ts';
import type { Edge } from './plan.ts';

/** People a door passes. `estimated`: from the leaf and its hinges, because nobody measured the clear width. */
export type DoorCapacity =
  | {
      readonly known: true;
      readonly people: number;
      readonly clearIn: number;
      /** Of one leaf; the same as `clearIn` unless both leaves count. */
      readonly oneLeafIn: number;
      readonly estimated: boolean;
      /** Of each adopted code; the one that asks most counts. */
      readonly factors: readonly WidthFactor[];
    }
  | { readonly known: false; readonly missing: string };

type Ask = <K extends FactKey>(key: K) => FactValue<K> | undefined;

/** Clear width ÷ inches per person (IBC 1005.3.2: 0.2, or 0.15 with sprinklers and voice alarm). */
export function doorCapacity({ decision }: Edge, basis: CodeBasis): DoorCapacity {
  if (!decision) return { known: false, missing: 'anything about the door' };
  const fact: Ask = (key) => valueIn(decision.slots, key);
  const type = fact('doorType');
  const pair = type === 'pair' || type === 'doubleEgressPair';
  const measured = fact('clearWidthIn');
  const found = measured === undefined ? estimate(fact, pair) : { oneLeafIn: measured };
  if ('missing' in found) return { known: false, missing: found.missing };
  const { oneLeafIn } = found;
  // The second leaf counts only where it opens by itself or the survey says that its width is needed.
  const held = fact('inactiveBolts');
  const bothLeaves =
    pair && (fact('inactiveNeededForCapacity') === true || held === 'rods' || held === 'rim');
  const clearIn = bothLeaves ? oneLeafIn * 2 : oneLeafIn;
  const sprinklered = fact('sprinklered');
  const voiceAlarm = fact('voiceAlarm');
  const group = fact('occupancyGroup');
  const factors = widthFactors(
    {
      ...(sprinklered !== undefined && { sprinklered }),
      ...(voiceAlarm !== undefined && { voiceAlarm }),
      ...(group !== undefined && { group }),
    },
    basis,
  );
  return {
    known: true,
    people: Math.min(...factors.map((one) => capacityOf(qty(clearIn, 'in'), one.inPerPerson))),
    clearIn,
    oneLeafIn,
    estimated: measured === undefined,
    factors,
  };
}

const asksFor = ['leafWidthIn', 'leafThicknessIn', 'hinges'] as const;

function estimate(fact: Ask, pair: boolean): { readonly oneLeafIn: number } | { readonly missing: string } {
  const width = fact('leafWidthIn');
  const thickness = fact('leafThicknessIn');
  const hanging = fact('hinges');
  if (width === undefined || thickness === undefined || hanging === undefined) {
    const open = asksFor.filter((key) => fact(key) === undefined);
    const names = open.map((key) => fieldInfo(key).label.toLowerCase());
    return { missing: `the clear width, or else ${names.join(', ')}` };
  }
  const measure = { missing: 'the clear width; it cannot be worked out for this leaf, so measure it' };
  if (fact('opensTo90') === false || hanging === 'track') return measure;
  const [leaf, thick] = [qty(width, 'in'), qty(thickness, 'in')];
  const found = pair
    ? clearWidthOfPairLeaf(qty(width * 2, 'in'), thick)
    : hanging === 'swingClear'
      ? clearWidthSwingClear(leaf, thick)
      : clearWidthButt(leaf, thick);
  return found.ok ? { oneLeafIn: found.clear } : measure;
}
