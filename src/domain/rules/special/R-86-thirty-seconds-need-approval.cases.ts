import { cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'delayedExitDevice/safe/delayed';

const wish = { egressRole: 'exteriorExit', wishDelayedEgress: true, wishDelay30s: true } as const;

const full = { ...wish, delay30sApproved: true, swingsWithEgress: true, wishNoDelaySign: false } as const;

const ward = {
  ...full,
  occupancyGroup: 'I-2',
  clinicalNeed: 'containment',
  clinicalArea: 'psychiatric',
  wishNoDelaySign: true,
} as const;

export const R86Cases = cases(
  ['30 s wanted', wish, 'yes', { clause: 'a', on, does: ['ahjApproval'] }],
  ['15 s will do', { ...wish, wishDelay30s: false }, 'no', { clause: 'a', on }],
  ['cabinet', { ...wish, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on }],
  ['length not asked', without(wish, 'wishDelay30s'), 'unknown', { clause: 'a', on }],
  ['a free bar has no delay', wish, 'no', { clause: 'a', on: 'exitTrim/secure/free' }],
  ['30 s wanted', wish, 'yes', { clause: 'b', on, does: 'signOff must' }],
  ['15 s will do', { ...wish, wishDelay30s: false }, 'no', { clause: 'b', on }],
  ['cabinet', { ...wish, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'b', on }],
  ['length not asked', without(wish, 'wishDelay30s'), 'unknown', { clause: 'b', on }],
  ['a free bar has no delay', wish, 'no', { clause: 'b', on: 'exitTrim/secure/free' }],
  ['30 s approved, swings out', full, 'yes', { clause: 'c', on, does: ['signDelayed30'] }],
  ['30 s not approved', { ...full, delay30sApproved: false }, 'no', { clause: 'c', on }],
  ['15 s', { ...full, wishDelay30s: false }, 'no', { clause: 'c', on }],
  [
    'swings toward the user: PULL sign instead',
    { ...full, swingsWithEgress: false },
    'no',
    { clause: 'c', on },
  ],
  ['cabinet', { ...full, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'c', on }],
  ['approval not known', without(full, 'delay30sApproved'), 'unknown', { clause: 'c', on }],
  ['ward that may go without a sign', ward, 'no', { clause: 'c', on }],
  ['ward with a sign', { ...ward, wishNoDelaySign: false }, 'yes', { clause: 'c', on }],
  ['office, sign not wanted', { ...ward, occupancyGroup: 'B' }, 'yes', { clause: 'c', on }],
  ['no containment', { ...ward, clinicalNeed: 'securityThreat' }, 'yes', { clause: 'c', on }],
  ['no treatment area', { ...ward, clinicalArea: 'none' }, 'yes', { clause: 'c', on }],
  ['ward, NFPA 101 beside it', ward, 'yes', { clause: 'c', on, basis: { nfpa101: 2021 } }],
  ['ward, no book', ward, 'yes', { clause: 'c', on, basis: { ibc: null } }],
  ['a free bar', full, 'no', { clause: 'c', on: 'exitTrim/secure/free' }],
);
