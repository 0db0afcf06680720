import type { FactValue } from '../model/fields.ts';
import { type Qty, qty } from '../units/quantity.ts';
import { roundDown } from '../units/told.ts';
import { limits } from '../codes/limits.ts';

export type Component = 'stair' | 'other';
type Group = FactValue<'occupancyGroup'>;

/** Inches of width per person. Source: IBC 1005.3.1 and 1005.3.2; base read in a city’s copy, reduction second-hand. */
export const capacityFactors = {
  base: { stair: 0.3, other: 0.2 },
  reduced: { stair: 0.2, other: 0.15 },
} as const;

/** NFPA 101 Table 7.3.3.1, inches per person. From general knowledge. */
export const nfpaCapacityFactors = {
  general: { stair: 0.3, other: 0.2 },
  healthCareSprinklered: { stair: 0.3, other: 0.2 },
  healthCareNotSprinklered: { stair: 0.6, other: 0.5 },
  boardAndCare: { stair: 0.4, other: 0.2 },
  highHazard: { stair: 0.7, other: 0.4 },
} as const;

export interface Protection {
  readonly sprinklered?: boolean;
  readonly voiceAlarm?: boolean;
  readonly group?: Group;
}

const noReduction: readonly Group[] = ['H-1', 'H-2', 'H-3', 'H-4', 'H-5', 'I-2'];

/**
 * Width factor, in per person. The reduced factor needs sprinklers AND emergency voice alarm, and is closed to
 * Group H and I-2; whatever is not known keeps the full factor. Source: IBC 1005.3 exceptions (2012 and later).
 */
export function capacityFactor(component: Component, given: Protection): number {
  const reduced =
    given.sprinklered === true &&
    given.voiceAlarm === true &&
    given.group !== undefined &&
    !noReduction.includes(given.group);
  return capacityFactors[reduced ? 'reduced' : 'base'][component];
}

/** Width a load asks for, in: people × factor, before minimums. Source: IBC 1005.3. */
export function widthRequired(people: Qty<'people'>, factor: number): Qty<'in'> {
  return qty(people * factor, 'in');
}

/** Width of a door a load asks for, in: the greater of capacity and 32 in clear. Source: IBC 1005.3.2, 1010.1.1. */
export function doorWidthRequired(people: Qty<'people'>, factor: number): Qty<'in'> {
  return qty(Math.max(widthRequired(people, factor), limits.clearWidthMinIn.editions.any.value), 'in');
}

/** People a clear width serves: width ÷ factor, rounded down. Source: IBC 1005.3. */
export function capacityOf(width: Qty<'in'>, factor: number): Qty<'people'> {
  return qty(roundDown(width / factor), 'people');
}

/**
 * People a stair serves under NFPA 101: width ÷ 0.3 up to 44 in; wider, 146.7 + (width − 44) ÷ 0.218.
 * Rounded down. Valid from 36 in up. Source: NFPA 101 7.3.3.2, from general knowledge.
 */
export function stairCapacityNfpa(width: Qty<'in'>): Qty<'people'> {
  const people = width <= 44 ? width / nfpaCapacityFactors.general.stair : 146.7 + (width - 44) / 0.218;
  return qty(roundDown(people), 'people');
}

/**
 * With any one exit lost, at least half the required capacity must remain. Source: IBC 1005.5, from general
 * knowledge. Capacities and load in people.
 */
export function halfRemains(capacities: readonly Qty<'people'>[], load: Qty<'people'>): boolean {
  const total = capacities.reduce((sum, one) => sum + one, 0);
  return capacities.every((one) => total - one >= load / 2);
}
