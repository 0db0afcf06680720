import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R108 = defineRule({
  id: 'R-108',
  title: 'Exit of a behavioral-health unit',
  family: 'rooms',
  book: 'ibc',
  cites: [under('controlledEgress'), under('controlledEgressNfpa'), under('interveningRooms')],
  confidence: 'secondary',
  why: 'Patients may be kept in for their care, but office staff and visitors next door may not.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: all(is('roomUse', 'patientUnit'), is('clinicalArea', 'psychiatric')),
      says: 'A reviewer signs for the exit of this unit: controlled egress, a clinical lock or free egress.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(
        is('roomUse', 'patientUnit'),
        is('clinicalArea', 'psychiatric'),
        yes('othersLeaveThroughRoom'),
      ),
      says: 'Others leave through this unit; give them their own exit before this one is locked.',
    },
  ],
});
