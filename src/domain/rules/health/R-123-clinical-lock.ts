import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { nfpaAlone } from '../special/conditions.ts';

const on = 'mortiseLock/secure/clinical';
const free = 'mortiseLock/secure/free';
const ward = { egressRole: 'exitAccess', occupancyGroup: 'I-2', clinicalNeed: 'containment' } as const;
const alone = { ibc: null, nfpa101: 2021 } as const;

export const R123 = defineRule({
  id: 'R-123',
  title: 'Clinical lock that only staff open',
  family: 'health',
  book: 'ibc',
  cites: [under('clinicalLocks'), under('controlledEgressNfpa')],
  confidence: 'read',
  note: 'IBC item read in part. The NFPA 101 lists are second-hand and from general knowledge; under NFPA 101 only Group I-2 counts as health care here, and newborn, pediatric and emergency units are refused the lock, because their list asks automatic release.',
  why: 'For some patients staff with a key are the safest way out, and only there may nothing else open the door.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: not(
        any(
          all(any(ibc({ from: 2021 }), nfpaAlone), is('occupancyGroup', 'I-2')),
          // NFPA 101 counts only Group I-2 as health care here, and with both books the stricter governs.
          all(ibc({ from: 2021 }), not(nfpa101()), is('occupancyGroup', 'I-1.2')),
        ),
      ),
      of: { release: ['clinical'] },
      says: 'The adopted code does not know a lock that only staff open in this group.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is('clinicalNeed', 'none'),
      of: { release: ['clinical'] },
      says: 'No clinical need and no threat by a patient is recorded, so nobody may be locked in.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: no('staffCanUnlock'),
      of: { release: ['clinical'] },
      says: 'Not all clinical staff carry the key or know the code, and they are the only way out.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(nfpa101(), is('clinicalArea', 'nurseryObstetric', 'pediatric', 'emergency')),
      of: { release: ['clinical'] },
      says: 'Under NFPA 101 a lock in this unit must also open by itself on smoke, sprinkler flow and power loss; use controlled egress.',
    },
    {
      key: 'e',
      effect: 'require',
      when: yes('isEgress'),
      of: { release: ['clinical'] },
      items: ['staffMeans'],
      says: 'Every member of the clinical staff carries the key or knows the code at all times; on a rated or corridor door the lock still latches.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'must',
      when: yes('isEgress'),
      of: { release: ['clinical'] },
      says: 'A reviewer signs for the need and for the staff who open; full controlled egress, which also opens by itself in a fire, stays the safer choice.',
    },
    {
      key: 'g',
      effect: 'caution',
      when: all(no('sprinklered'), no('detectionThroughout')),
      of: { release: ['clinical'] },
      says: 'Without sprinklers or detection throughout nobody may notice a fire in time to open this lock; better refuse it.',
    },
  ],
  cases: cases(
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
      'yes',
      { clause: 'a', on, basis: alone },
    ],
    ['hospital, both books', ward, 'no', { clause: 'a', on, basis: { nfpa101: 2021 } }],
    [
      'condition 2, both books',
      { ...ward, occupancyGroup: 'I-1.2' },
      'yes',
      { clause: 'a', on, basis: { nfpa101: 2021 } },
    ],
    [
      'hospital, IBC 2018 and NFPA 101',
      ward,
      'yes',
      { clause: 'a', on, basis: { ibc: 2018, nfpa101: 2021 } },
    ],
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
      { sprinklered: false, detectionThroughout: false },
      'yes',
      { clause: 'g', on, does: 'caution' },
    ],
    ['sprinklers', { sprinklered: true, detectionThroughout: false }, 'no', { clause: 'g', on }],
    ['detection', { sprinklered: false, detectionThroughout: true }, 'no', { clause: 'g', on }],
    ['detection not asked', { sprinklered: false }, 'unknown', { clause: 'g', on }],
    ['a free lever', { sprinklered: false, detectionThroughout: false }, 'no', { clause: 'g', on: free }],
  ),
});
