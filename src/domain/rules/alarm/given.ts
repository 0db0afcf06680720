import { all, any, isKnown, no, not, yes } from '../../logic/condition.ts';
import type { FactValues } from '../../model/fields.ts';

/** Something in the building notices fire by itself. */
export const somethingDetects = any(yes('fireAlarm'), yes('sprinklered'), yes('detectionThroughout'));

/** Nobody having said that there is none counts as an alarm, so that no release is left out for want of an answer. */
export const alarmMayBeThere = not(all(isKnown('fireAlarm'), no('fireAlarm')));

export const nothing: FactValues = { fireAlarm: false, sprinklered: false, detectionThroughout: false };
export const exit: FactValues = { egressRole: 'exitAccess' };
export const cabinet: FactValues = { egressRole: 'noOccupiedSpace' };
/** An ordinary patient area: none of the treatment areas that excuse controlled egress from its release. */
export const ward: FactValues = {
  ...exit,
  clinicalArea: 'other',
  abductionSystem: false,
  occupancyGroup: 'I-2',
};
export const nursery: FactValues = {
  ...exit,
  clinicalArea: 'nurseryObstetric',
  abductionSystem: true,
  occupancyGroup: 'I-2',
};
