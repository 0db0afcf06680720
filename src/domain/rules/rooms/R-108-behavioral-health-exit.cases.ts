import { cases } from '../rule.ts';

const unit = { roomUse: 'patientUnit', clinicalArea: 'psychiatric', othersLeaveThroughRoom: true } as const;

export const R108Cases = cases(
  ['psychiatric unit', unit, 'yes', { clause: 'a', does: 'signOff must' }],
  ['surgical unit', { ...unit, clinicalArea: 'other' }, 'no', { clause: 'a' }],
  ['office of the unit', { ...unit, roomUse: 'office' }, 'no', { clause: 'a' }],
  ['area not known', { roomUse: 'patientUnit' }, 'unknown', { clause: 'a' }],
  ['offices leave through the unit', unit, 'yes', { clause: 'b', does: 'caution' }],
  ['nobody else leaves through it', { ...unit, othersLeaveThroughRoom: false }, 'no', { clause: 'b' }],
  ['surgical unit', { ...unit, clinicalArea: 'other' }, 'no', { clause: 'b' }],
  ['office of the unit', { ...unit, roomUse: 'office' }, 'no', { clause: 'b' }],
  ['others not asked', { roomUse: 'patientUnit', clinicalArea: 'psychiatric' }, 'unknown', { clause: 'b' }],
);
