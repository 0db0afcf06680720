import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'magnet/safe/controlled';

const bare = { clinicalArea: 'pediatric', sprinklered: false, lockedUnitWatch: 'neither' } as const;

const both = { nfpa101: 2021 } as const;

const free = 'mortiseLock/safe/free';

const nursery = { clinicalArea: 'nurseryObstetric', abductionSystem: true, occupancyGroup: 'I-2' } as const;

export const R92Cases = cases(
  ...onEach(
    [on, 'mortiseLock/secure/clinical', 'delayedExitDevice/safe/delayed'],
    'nursery',
    nursery,
    'yes',
    'a',
  ),
  ['children’s ward', { clinicalArea: 'pediatric' }, 'yes', { clause: 'a', on, does: 'signOff must' }],
  ['emergency department', { clinicalArea: 'emergency' }, 'yes', { clause: 'a', on }],
  ['psychiatric ward', { clinicalArea: 'psychiatric' }, 'no', { clause: 'a', on }],
  ['area not known', {}, 'unknown', { clause: 'a', on }],
  ['area not known, hospital', { occupancyGroup: 'I-2', roomUse: 'office' }, 'unknown', { clause: 'a', on }],
  ...(['patientRoom', 'patientUnit', 'memoryCare'] as const).map(
    (roomUse): CaseRow => [
      `area not known, ${roomUse}`,
      { occupancyGroup: 'B', roomUse },
      'unknown',
      { clause: 'a', on },
    ],
  ),
  ['area not known, care home', { occupancyGroup: 'R-4', roomUse: 'other' }, 'unknown', { clause: 'a', on }],
  ['office, nobody asks for an area', { occupancyGroup: 'B', roomUse: 'office' }, 'no', { clause: 'a', on }],
  ['a free lever', nursery, 'no', { clause: 'a', on: free }],
  ['nursery with system', nursery, 'yes', { clause: 'b', on, does: 'permit' }],
  ['nursery with system, both books', nursery, 'no', { clause: 'b', on, basis: { nfpa101: 2021 } }],
  ['nursery without system', { ...nursery, abductionSystem: false }, 'no', { clause: 'b', on }],
  ['children’s ward with system', { ...nursery, clinicalArea: 'pediatric' }, 'no', { clause: 'b', on }],
  ['birth center in B', { ...nursery, occupancyGroup: 'B' }, 'no', { clause: 'b', on }],
  ['system not asked', without(nursery, 'abductionSystem'), 'unknown', { clause: 'b', on }],
  ['clinical lock is another thing', nursery, 'no', { clause: 'b', on: 'mortiseLock/secure/clinical' }],
  ['children’s ward', { clinicalArea: 'pediatric' }, 'yes', { clause: 'c', on, does: 'caution' }],
  ['emergency department', { clinicalArea: 'emergency' }, 'yes', { clause: 'c', on }],
  ['nursery', nursery, 'no', { clause: 'c', on }],
  ['area not known', {}, 'unknown', { clause: 'c', on }],
  ['a free lever', { clinicalArea: 'emergency' }, 'no', { clause: 'c', on: free }],
  [
    'nursery without system',
    { ...nursery, abductionSystem: false },
    'yes',
    { clause: 'd', on, does: 'caution' },
  ],
  ['nursery with system', nursery, 'no', { clause: 'd', on }],
  [
    'children’s ward without system',
    { clinicalArea: 'pediatric', abductionSystem: false },
    'no',
    { clause: 'd', on },
  ],
  ['system not asked', { clinicalArea: 'nurseryObstetric' }, 'unknown', { clause: 'd', on }],
  ['a free lever', { ...nursery, abductionSystem: false }, 'no', { clause: 'd', on: free }],
  ...(['nurseryObstetric', 'pediatric', 'emergency'] as const).flatMap((clinicalArea): readonly CaseRow[] => [
    [
      'no sprinklers',
      { clinicalArea, sprinklered: false },
      'yes',
      { clause: 'e', on, basis: both, does: 'prohibit' },
    ],
    [
      'nothing watches',
      { clinicalArea, lockedUnitWatch: 'neither' },
      'yes',
      { clause: 'f', on, basis: both, does: 'prohibit' },
    ],
  ]),
  ...(['e', 'f'] as const).flatMap((clause): readonly CaseRow[] => [
    [
      'another area, patients who need protection',
      { ...bare, clinicalArea: 'other', clinicalNeed: 'protection' },
      'yes',
      { clause, on, basis: both },
    ],
    [
      'another area, patients contained for their care',
      { ...bare, clinicalArea: 'other', clinicalNeed: 'containment' },
      'no',
      { clause, on, basis: both },
    ],
    [
      'another area, need not on record',
      { ...bare, clinicalArea: 'other' },
      'no',
      { clause, on, basis: both },
    ],
    ['NFPA 101 alone', bare, 'yes', { clause, on, basis: { ibc: null, nfpa101: 2021 } }],
    ['IBC alone', bare, 'no', { clause, on }],
    ['psychiatric ward', { ...bare, clinicalArea: 'psychiatric' }, 'no', { clause, on, basis: both }],
    ['area not known', without(bare, 'clinicalArea'), 'unknown', { clause, on, basis: both }],
    ['clinical lock', bare, 'yes', { clause, on: 'mortiseLock/secure/clinical', basis: both }],
    ['a free lever', bare, 'no', { clause, on: free, basis: both }],
  ]),
  [
    'full sprinklers',
    { ...bare, sprinklered: true, sprinklerKind: 'nfpa13' },
    'no',
    { clause: 'e', on, basis: both },
  ],
  [
    'smoke detection in the unit',
    { ...bare, lockedUnitWatch: 'smokeDetection' },
    'no',
    { clause: 'f', on, basis: both },
  ],
  [
    'attended place in the unit',
    { ...bare, lockedUnitWatch: 'attended' },
    'no',
    { clause: 'f', on, basis: both },
  ],
  ['watch not asked', without(bare, 'lockedUnitWatch'), 'unknown', { clause: 'f', on, basis: both }],
);
