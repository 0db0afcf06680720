import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone, protectiveUnit } from '../special/conditions.ts';

export const R123 = defineRule({
  id: 'R-123',
  title: 'Clinical lock that only staff open',
  family: 'health',
  book: 'ibc',
  cites: [under('clinicalLocks'), under('controlledEgressNfpa')],
  confidence: 'read',
  note: 'IBC item read in part. The NFPA 101 lists are second-hand and from general knowledge; that the board-and-care chapter of NFPA 101 may allow such a lock as well is from general knowledge, so Group I-1, Condition 2, goes to a reviewer there. Newborn, pediatric and emergency units are refused the lock, because their list asks automatic release.',
  why: 'For some patients staff with a key are the safest egress, and only there may nothing else open the door.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: not(all(any(ibc({ from: 2021, readTo: 2024 }), nfpaAlone), is('occupancyGroup', 'I-1.2', 'I-2'))),
      of: { release: ['clinical'] },
      says: 'The adopted code has no provision in this group for a lock that only staff open.',
    },
    {
      key: 'h',
      effect: 'signOff',
      grade: 'must',
      when: all(nfpa101(), is('occupancyGroup', 'I-1.2')),
      of: { release: ['clinical'] },
      says: 'NFPA 101 treats this group as board and care, not health care; a reviewer reads that chapter before a lock that only staff open is used.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is('clinicalNeed', 'none'),
      of: { release: ['clinical'] },
      says: 'No clinical need and no threat by a patient is recorded, so no one may be locked in.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: no('staffCanUnlock'),
      of: { release: ['clinical'] },
      says: 'Not all clinical staff carry the key or know the code, and they are the only means of egress.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(nfpa101(), protectiveUnit),
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
      says: 'A reviewer signs for the need and for the staff who open; full controlled egress, which also opens by itself in a fire, remains the safer choice.',
    },
    {
      key: 'g',
      effect: 'caution',
      when: all(no('fullSprinklers'), no('detectionThroughout')),
      of: { release: ['clinical'] },
      says: 'Without sprinklers or detection throughout, a fire may not be noticed in time to open this lock; better not to use it.',
    },
  ],
});
