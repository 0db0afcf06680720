import { all, any, type Condition, is, isKnown } from '../../logic/condition.ts';

/**
 * Care suites belong to Group I-2, so only there is a missing answer a question. Elsewhere the fact counts when
 * somebody recorded it all the same.
 */
function ofSuite(door: Condition): Condition {
  return any(all(is('occupancyGroup', 'I-2'), door), all(isKnown('suiteDoor'), door));
}

export const suiteEntrance = ofSuite(is('suiteDoor', 'perimeter'));
export const insideSuite = ofSuite(is('suiteDoor', 'inside'));
export const suiteDoor = ofSuite(is('suiteDoor', 'perimeter', 'inside'));
