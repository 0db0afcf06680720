import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'magnet/safe/controlled';

const secure = 'boltMotor/secure/controlled';

const free = 'mortiseLock/safe/free';

const ward = {
  egressRole: 'exitAccess',
  occupancyGroup: 'I-2',
  clinicalArea: 'other',
  clinicalNeed: 'containment',
} as const;

const nursery = { ...ward, clinicalArea: 'nurseryObstetric', abductionSystem: true } as const;

export const R90Cases = cases(
  ['no clinical need', { ...ward, clinicalNeed: 'none' }, 'yes', { clause: 'a', on, does: 'prohibit' }],
  ['containment', ward, 'no', { clause: 'a', on }],
  ['security threat', { ...ward, clinicalNeed: 'securityThreat' }, 'no', { clause: 'a', on }],
  ['nursery with abduction system', { ...nursery, clinicalNeed: 'none' }, 'no', { clause: 'a', on }],
  [
    'nursery without the system',
    { ...nursery, clinicalNeed: 'none', abductionSystem: false },
    'yes',
    { clause: 'a', on },
  ],
  [
    'pediatric ward with the system',
    { ...nursery, clinicalNeed: 'none', clinicalArea: 'pediatric' },
    'yes',
    { clause: 'a', on },
  ],
  [
    'nursery outside a hospital',
    { ...nursery, clinicalNeed: 'none', occupancyGroup: 'I-1.2' },
    'yes',
    { clause: 'a', on },
  ],
  ['need not recorded', without(ward, 'clinicalNeed'), 'unknown', { clause: 'a', on }],
  ['a free lever', { ...ward, clinicalNeed: 'none' }, 'no', { clause: 'a', on: free }],
  [
    'neither sprinklers nor detection',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'yes',
    { clause: 'b', on, does: 'prohibit' },
  ],
  [
    'sprinklers',
    { sprinklered: true, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
    { clause: 'b', on },
  ],
  [
    'detection',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: true },
    'no',
    { clause: 'b', on },
  ],
  ['detection not asked', { sprinklered: false, sprinklerKind: 'nfpa13' }, 'unknown', { clause: 'b', on }],
  [
    'a free lever',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
    { clause: 'b', on: free },
  ],
  ['fail-secure bolt on a ward', ward, 'yes', { clause: 'c', on: secure, does: 'prohibit' }],
  [
    'fail-secure bolt on a psychiatric ward',
    { ...ward, clinicalArea: 'psychiatric' },
    'no',
    { clause: 'c', on: secure },
  ],
  [
    'fail-secure bolt in memory care',
    { ...ward, clinicalArea: 'cognitive' },
    'yes',
    { clause: 'c', on: secure },
  ],
  ['fail-secure bolt at a nursery with system', nursery, 'no', { clause: 'c', on: secure }],
  [
    'fail-secure bolt at a nursery without system',
    { ...nursery, abductionSystem: false },
    'yes',
    { clause: 'c', on: secure },
  ],
  [
    'fail-secure bolt, pediatric with system',
    { ...nursery, clinicalArea: 'pediatric' },
    'yes',
    { clause: 'c', on: secure },
  ],
  [
    'fail-secure bolt, nursery in I-1',
    { ...nursery, occupancyGroup: 'I-1.2' },
    'yes',
    { clause: 'c', on: secure },
  ],
  [
    'fail-secure bolt at a nursery, both books',
    nursery,
    'yes',
    { clause: 'c', on: secure, basis: { nfpa101: 2021 } },
  ],
  ['area not known', without(ward, 'clinicalArea'), 'unknown', { clause: 'c', on: secure }],
  ['fail-safe bolt', ward, 'no', { clause: 'c', on: 'boltMotor/safe/controlled' }],
  ['fail-secure free lock', ward, 'no', { clause: 'c', on: 'mortiseLock/secure/free' }],
  ['some staff without a key', { staffCanUnlock: false }, 'yes', { clause: 'd', on, does: 'prohibit' }],
  ['all staff with a key', { staffCanUnlock: true }, 'no', { clause: 'd', on }],
  ['not asked', {}, 'unknown', { clause: 'd', on }],
  ['a free lever', { staffCanUnlock: false }, 'no', { clause: 'd', on: free }],
  ['ward exit', ward, 'yes', { clause: 'e', on, does: ['staffMeans', 'emergencyLighting', 'listedLock'] }],
  ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'e', on }],
  ['role not known', without(ward, 'egressRole'), 'unknown', { clause: 'e', on }],
  ['a free lever', ward, 'no', { clause: 'e', on: free }],
  [
    'ward exit',
    ward,
    'yes',
    { clause: 'f', on, does: ['detectionRelease', 'powerLossRelease', 'remoteRelease'] },
  ],
  ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'f', on }],
  ['psychiatric ward', { ...ward, clinicalArea: 'psychiatric' }, 'no', { clause: 'f', on }],
  ...([2018, 2021, 2024] as const).map(
    (ibc): CaseRow => [
      'memory care',
      { ...ward, clinicalArea: 'cognitive' },
      'yes',
      { clause: 'f', on, basis: { ibc } },
    ],
  ),
  [
    'memory care, both books',
    { ...ward, clinicalArea: 'cognitive' },
    'yes',
    { clause: 'f', on, basis: { nfpa101: 2021 } },
  ],
  ['nursery with system', nursery, 'no', { clause: 'f', on }],
  ['nursery with system, both books', nursery, 'yes', { clause: 'f', on, basis: { nfpa101: 2021 } }],
  ['nursery without system', { ...nursery, abductionSystem: false }, 'yes', { clause: 'f', on }],
  ['emergency room with system', { ...nursery, clinicalArea: 'emergency' }, 'yes', { clause: 'f', on }],
  ['nursery in I-1', { ...nursery, occupancyGroup: 'I-1.1' }, 'yes', { clause: 'f', on }],
  ['area not known', without(ward, 'clinicalArea'), 'unknown', { clause: 'f', on }],
  ['a free lever', ward, 'no', { clause: 'f', on: free }],
  ['ward exit', ward, 'yes', { clause: 'g', on, does: 'signOff must' }],
  ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'g', on }],
  ['role not known', {}, 'unknown', { clause: 'g', on }],
  ['a free lever', ward, 'no', { clause: 'g', on: free }],
  ['security threat', { clinicalNeed: 'securityThreat' }, 'yes', { clause: 'h', on, does: 'caution' }],
  ['containment', { clinicalNeed: 'containment' }, 'no', { clause: 'h', on }],
  [
    'security threat, NFPA 101 alone',
    { clinicalNeed: 'securityThreat' },
    'no',
    { clause: 'h', on, basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['need not recorded', {}, 'unknown', { clause: 'h', on }],
  ['a free lever', { clinicalNeed: 'securityThreat' }, 'no', { clause: 'h', on: free }],
  [
    'memory care, 2021',
    { ...ward, clinicalArea: 'cognitive' },
    'yes',
    { clause: 'i', on, does: 'signOff must' },
  ],
  [
    'memory care, 2024',
    { ...ward, clinicalArea: 'cognitive' },
    'yes',
    { clause: 'i', on, basis: { ibc: 2024 } },
  ],
  [
    'memory care, 2018',
    { ...ward, clinicalArea: 'cognitive' },
    'no',
    { clause: 'i', on, basis: { ibc: 2018 } },
  ],
  [
    'memory care, NFPA 101 alone',
    { ...ward, clinicalArea: 'cognitive' },
    'no',
    { clause: 'i', on, basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['psychiatric ward, 2021', { ...ward, clinicalArea: 'psychiatric' }, 'no', { clause: 'i', on }],
  [
    'cabinet',
    { ...ward, egressRole: 'noOccupiedSpace', clinicalArea: 'cognitive' },
    'no',
    { clause: 'i', on },
  ],
  ['area not known', without(ward, 'clinicalArea'), 'unknown', { clause: 'i', on }],
  ['a free lever', { ...ward, clinicalArea: 'cognitive' }, 'no', { clause: 'i', on: free }],
  [
    'memory care, 2018',
    { clinicalArea: 'cognitive' },
    'yes',
    { clause: 'j', on, basis: { ibc: 2018 }, does: 'caution' },
  ],
  ['memory care, 2021', { clinicalArea: 'cognitive' }, 'no', { clause: 'j', on }],
  [
    'psychiatric ward, 2018',
    { clinicalArea: 'psychiatric' },
    'no',
    { clause: 'j', on, basis: { ibc: 2018 } },
  ],
  ['area not known', {}, 'unknown', { clause: 'j', on, basis: { ibc: 2018 } }],
  ['a free lever', { clinicalArea: 'cognitive' }, 'no', { clause: 'j', on: free, basis: { ibc: 2018 } }],
);
