import { all, any, type Condition, ibc, is, isKnown, nfpa101, not, yes } from '../../logic/condition.ts';

/**
 * Care suites belong to Group I-2, so only there is a missing answer a question. Elsewhere the fact counts when
 * somebody recorded it all the same.
 */
function ofSuite(door: Condition): Condition {
  return any(all(is('occupancyGroup', 'I-2'), door), all(isKnown('suiteDoor'), door));
}

export const suiteEntrance = ofSuite(is('suiteDoor', 'perimeter'));
/**
 * IBC 407.3.1 speaks of corridor doors in general, not of patient rooms alone. The corridor walls of a hospital are smoke
 * partitions (407.3), so they are entered as either kind.
 */
export const hospitalCorridorDoor = any(
  is('roomUse', 'patientRoom'),
  suiteEntrance,
  all(is('occupancyGroup', 'I-2'), is('wallKind', 'corridor', 'smokePartition')),
);
export const insideSuite = ofSuite(is('suiteDoor', 'inside'));
export const suiteDoor = ofSuite(is('suiteDoor', 'perimeter', 'inside'));

/** Treatment areas whose delayed door may go without its sign, where the authority agrees; NFPA 101 knows no such case. */
export const signExcused = all(
  ibc(),
  not(nfpa101()),
  yes('groupI'),
  is('clinicalNeed', 'containment'),
  not(is('clinicalArea', 'none')),
);
/** The owner wants no sign and the place may go without. */
export const unsigned = all(yes('wishNoDelaySign'), signExcused);
/** The longer delay is wanted and approved, so the sign names it. */
export const approved30 = all(yes('wishDelay30s'), yes('delay30sApproved'));
