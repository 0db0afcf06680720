import { all, any, type Condition, ibc, is, isKnown, nfpa101, not, yes } from '../../logic/condition.ts';
import type { FactKey } from '../../model/fields.ts';

/** NFPA 101 is the only adopted book, so what it leaves open is not closed by the stricter IBC beside it. */
export const nfpaAlone = all(nfpa101(), not(ibc()));

/** Where people are cared for, so that questions about patients and their locked units make sense. */
export const healthCare = any(
  yes('groupI'),
  is('occupancyGroup', 'R-4'),
  is('roomUse', 'patientRoom', 'patientUnit', 'memoryCare'),
);

/** What is asked only where people are cared for; elsewhere it counts when somebody recorded it all the same. */
export function ofCare(fact: FactKey, condition: Condition): Condition {
  return all(any(healthCare, isKnown(fact)), condition);
}

/** IBC exception 2 to controlled egress: a listed child-abduction system in a hospital’s nursery or obstetric area. */
export const abductionExcuse = all(
  is('clinicalArea', 'nurseryObstetric'),
  yes('abductionSystem'),
  is('occupancyGroup', 'I-2'),
);

/**
 * IBC exceptions 1 and 2. The text of 2018 names psychiatric areas alone; that later ones name cognitive areas too was not
 * read, so nobody is excused for it and R-90 has a reviewer read the section. What falls away: automatic release, power-loss release, remote switch and one-door limit.
 */
export const controlledExcuse = any(is('clinicalArea', 'psychiatric'), abductionExcuse);

/** What is left of those exceptions beside NFPA 101, whose security-needs lock always releases by itself. */
export const releaseExcuse = any(is('clinicalArea', 'psychiatric'), all(abductionExcuse, not(nfpa101())));

/**
 * Patients whom NFPA 101 protects for their safety, by their unit or by the need on record; memory care and psychiatric
 * wards are clinical needs there.
 */
export const protectiveUnit = any(
  is('clinicalArea', 'nurseryObstetric', 'pediatric', 'emergency'),
  all(isKnown('clinicalNeed'), is('clinicalNeed', 'protection')),
);
