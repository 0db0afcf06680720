import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R02 = defineRule({
  id: 'R-02',
  title: 'Unlocking on fire alarm or power loss is not egress',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('freeEgressNfpa')],
  confidence: 'secondary',
  note: 'The short list of permitted containment (controlled egress, clinical and security-needs locks, elevator lobby, detention) has release methods of its own with their own rules.',
  why: 'Most emergencies set off no alarm, and a door that opens only on alarm traps people in all of them.',
  clauses: [
    {
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { release: ['alarmOnly'] },
      says: 'This lock lets people out only when the fire alarm sounds or the power fails; they must be able to leave at any time.',
    },
  ],
});
