import type { FactValue } from '../model/fields.ts';
import { type Qty, qty } from '../units/quantity.ts';
import { roundDown } from '../units/told.ts';

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

/** People a clear width serves: width ÷ factor, rounded down. Source: IBC 1005.3. */
export function capacityOf(width: Qty<'in'>, factor: number): Qty<'people'> {
  return qty(roundDown(width / factor), 'people');
}
