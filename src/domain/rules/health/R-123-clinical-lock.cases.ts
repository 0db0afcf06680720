import { onEach } from '../onEach.ts';
import { cases } from '../rule.ts';

const on = 'mortiseLock/secure/clinical';

const free = 'mortiseLock/secure/free';

const ward = { egressRole: 'exitAccess', occupancyGroup: 'I-2', clinicalNeed: 'containment' } as const;

const alone = { ibc: null, nfpa101: 2021 } as const;

export const R123Cases = cases(
  ['hospital, IBC 2021', ward, 'no', { clause: 'a', on }],
  ['hospital, IBC 2024', ward, 'no', { clause: 'a', on, basis: { ibc: 2024 } }],
  ['hospital, IBC 2018', ward, 'yes', { clause: 'a', on, basis: { ibc: 2018 }, does: 'prohibit' }],
  [
    'condition 2, IBC 2018',
    { ...ward, occupancyGroup: 'I-1.2' },
    'yes',
    { clause: 'a', on, basis: { ibc: 2018 } },
  ],
  ['condition 2, IBC 2021', { ...ward, occupancyGroup: 'I-1.2' }, 'no', { clause: 'a', on }],
  ['condition 1, IBC 2021', { ...ward, occupancyGroup: 'I-1.1' }, 'yes', { clause: 'a', on }],
  ['office, IBC 2021', { ...ward, occupancyGroup: 'B' }, 'yes', { clause: 'a', on }],
  ['hospital, NFPA 101 alone', ward, 'no', { clause: 'a', on, basis: alone }],
  [
    'condition 2, NFPA 101 alone',
    { ...ward, occupancyGroup: 'I-1.2' },
    'no',
    { clause: 'a', on, basis: alone },
  ],
  [
    'condition 1, NFPA 101 alone',
    { ...ward, occupancyGroup: 'I-1.1' },
    'yes',
    { clause: 'a', on, basis: alone },
  ],
  ['hospital, both books', ward, 'no', { clause: 'a', on, basis: { nfpa101: 2021 } }],
  [
    'condition 2, both books',
    { ...ward, occupancyGroup: 'I-1.2' },
    'no',
    { clause: 'a', on, basis: { nfpa101: 2021 } },
  ],
  ['hospital, IBC 2018 and NFPA 101', ward, 'yes', { clause: 'a', on, basis: { ibc: 2018, nfpa101: 2021 } }],
  ['hospital, no book', ward, 'yes', { clause: 'a', on, basis: { ibc: null } }],
  ['group not known', {}, 'unknown', { clause: 'a', on }],
  ['a free lever in an office', { ...ward, occupancyGroup: 'B' }, 'no', { clause: 'a', on: free }],
  ...onEach(
    ['batteryLock/asIs/clinical', 'mechanicalLock/none/clinical'],
    'office',
    { occupancyGroup: 'B' },
    'yes',
    'a',
  ),
  [
    'condition 2, both books',
    { ...ward, occupancyGroup: 'I-1.2' },
    'yes',
    { clause: 'h', on, basis: { nfpa101: 2021 }, does: 'signOff must' },
  ],
  ['condition 2, IBC only', { ...ward, occupancyGroup: 'I-1.2' }, 'no', { clause: 'h', on }],
  ['hospital, both books', ward, 'no', { clause: 'h', on, basis: { nfpa101: 2021 } }],
  ['group not known', {}, 'unknown', { clause: 'h', on, basis: { nfpa101: 2021 } }],
  [
    'a free lever',
    { ...ward, occupancyGroup: 'I-1.2' },
    'no',
    { clause: 'h', on: free, basis: { nfpa101: 2021 } },
  ],
  ['no need', { ...ward, clinicalNeed: 'none' }, 'yes', { clause: 'b', on, does: 'prohibit' }],
  ['containment', ward, 'no', { clause: 'b', on }],
  ['threat', { ...ward, clinicalNeed: 'securityThreat' }, 'no', { clause: 'b', on }],
  ['need not recorded', {}, 'unknown', { clause: 'b', on }],
  ['a free lever', { ...ward, clinicalNeed: 'none' }, 'no', { clause: 'b', on: free }],
  ['some staff without a key', { staffCanUnlock: false }, 'yes', { clause: 'c', on, does: 'prohibit' }],
  ['all staff with a key', { staffCanUnlock: true }, 'no', { clause: 'c', on }],
  ['not asked', {}, 'unknown', { clause: 'c', on }],
  ['a free lever', { staffCanUnlock: false }, 'no', { clause: 'c', on: free }],
  [
    'nursery, both books',
    { clinicalArea: 'nurseryObstetric' },
    'yes',
    { clause: 'd', on, basis: { nfpa101: 2021 }, does: 'prohibit' },
  ],
  [
    'children’s ward, both books',
    { clinicalArea: 'pediatric' },
    'yes',
    { clause: 'd', on, basis: { nfpa101: 2021 } },
  ],
  ['emergency, NFPA 101 alone', { clinicalArea: 'emergency' }, 'yes', { clause: 'd', on, basis: alone }],
  [
    'psychiatric, both books',
    { clinicalArea: 'psychiatric' },
    'no',
    { clause: 'd', on, basis: { nfpa101: 2021 } },
  ],
  ['nursery, IBC only', { clinicalArea: 'nurseryObstetric' }, 'no', { clause: 'd', on }],
  ['area not known', {}, 'unknown', { clause: 'd', on, basis: { nfpa101: 2021 } }],
  [
    'controlled egress',
    { clinicalArea: 'pediatric' },
    'no',
    { clause: 'd', on: 'magnet/safe/controlled', basis: { nfpa101: 2021 } },
  ],
  ['ward exit', ward, 'yes', { clause: 'e', on, does: ['staffMeans'] }],
  ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'e', on }],
  ['role not known', {}, 'unknown', { clause: 'e', on }],
  ['a free lever', ward, 'no', { clause: 'e', on: free }],
  ['ward exit', ward, 'yes', { clause: 'f', on, does: 'signOff must' }],
  ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'f', on }],
  ['role not known', {}, 'unknown', { clause: 'f', on }],
  ['a free lever', ward, 'no', { clause: 'f', on: free }],
  [
    'neither sprinklers nor detection',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'yes',
    { clause: 'g', on, does: 'caution' },
  ],
  [
    'sprinklers',
    { sprinklered: true, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
    { clause: 'g', on },
  ],
  [
    'detection',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: true },
    'no',
    { clause: 'g', on },
  ],
  ['detection not asked', { sprinklered: false, sprinklerKind: 'nfpa13' }, 'unknown', { clause: 'g', on }],
  [
    'a free lever',
    { sprinklered: false, sprinklerKind: 'nfpa13', detectionThroughout: false },
    'no',
    { clause: 'g', on: free },
  ],
);
