import { cases } from '../rule.ts';

const on = 'magnet/safe/controlled';

const free = 'mortiseLock/safe/free';

const second = { controlledDoorsOnPath: 1, clinicalArea: 'other' } as const;

const nursery = {
  controlledDoorsOnPath: 1,
  clinicalArea: 'nurseryObstetric',
  abductionSystem: true,
  occupancyGroup: 'I-2',
} as const;

const alone = { ibc: null, nfpa101: 2021 } as const;

export const R93Cases = cases(
  ['second controlled door', second, 'yes', { clause: 'a', on, does: 'prohibit' }],
  ['the only clause', { ...second, controlledDoorsOnPath: 0 }, 'no', { clause: 'a', on }],
  ['psychiatric ward', { ...second, clinicalArea: 'psychiatric' }, 'no', { clause: 'a', on }],
  ['memory care', { ...second, clinicalArea: 'cognitive' }, 'yes', { clause: 'a', on }],
  ['nursery with system', nursery, 'no', { clause: 'a', on }],
  ['nursery without system', { ...nursery, abductionSystem: false }, 'yes', { clause: 'a', on }],
  ['children’s ward with system', { ...nursery, clinicalArea: 'pediatric' }, 'yes', { clause: 'a', on }],
  ['nursery in I-1', { ...nursery, occupancyGroup: 'I-1.2' }, 'yes', { clause: 'a', on }],
  ['number not known', { clinicalArea: 'other' }, 'unknown', { clause: 'a', on }],
  ['NFPA 101 alone', second, 'no', { clause: 'a', on, basis: alone }],
  ['both books', second, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
  ['no book', second, 'yes', { clause: 'a', on, basis: { ibc: null } }],
  ['a free lever', second, 'no', { clause: 'a', on: free }],
  ['second controlled door', second, 'yes', { clause: 'b', on, does: 'signOff must' }],
  ['the only clause', { ...second, controlledDoorsOnPath: 0 }, 'no', { clause: 'b', on }],
  ['number not known', {}, 'unknown', { clause: 'b', on }],
  ['a free lever', second, 'no', { clause: 'b', on: free }],
);
