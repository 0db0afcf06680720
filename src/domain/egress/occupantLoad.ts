import type { Use } from '../model/uses.ts';
import type { Confidence } from '../rules/rule.ts';
import { type Qty, qty } from '../units/quantity.ts';
import { refuse, roundUp, type Told } from '../units/told.ts';
import {
  type FactorEdition,
  type FactorEntry,
  type NfpaUse,
  nfpaUseFactors,
  type UseFactor,
  useFactors,
} from './occupantFactors.ts';

export type Load = Told<{
  people: Qty<'people'>;
  ft2PerPerson: number;
  measure: 'net' | 'gross';
  confidence: Confidence;
}>;

function badArea(areaFt2: number): boolean {
  return !Number.isFinite(areaFt2) || areaFt2 < 0;
}

/**
 * Occupant load of one use: people = area ÷ factor, rounded up to a whole person.
 * Valid for areas from zero up; rooms with fixed seats are counted by seats instead.
 * Source: IBC 1004.5 and Table 1004.5 (2015: Table 1004.1.2).
 */
export function occupantLoad(use: Use, area: Qty<'ft²'>, edition: FactorEdition): Load {
  if (badArea(area)) return refuse('The area must be a number of square feet, zero or more.');
  const row: UseFactor = useFactors[use];
  const entry: FactorEntry | undefined = row.editions[edition];
  if (!entry)
    return refuse(
      `The ${edition} table does not list “${row.name}”; choose the nearest use and have it accepted.`,
    );
  return {
    ok: true,
    people: qty(roundUp(area / entry.ft2), 'people'),
    ft2PerPerson: entry.ft2,
    measure: row.measure,
    confidence: entry.confidence,
  };
}

/** The same under NFPA 101 Table 7.3.1.2 (2018 and later), for the uses that differ. From general knowledge. */
export function occupantLoadNfpa(use: NfpaUse, area: Qty<'ft²'>): Told<{ people: Qty<'people'> }> {
  if (badArea(area)) return refuse('The area must be a number of square feet, zero or more.');
  const factor = nfpaUseFactors[use];
  if (factor === null) return refuse('NFPA 101 sets no load for storage; count the people expected.');
  return { ok: true, people: qty(roundUp(area / factor), 'people') };
}
