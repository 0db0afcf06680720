import { text, under } from '../../codes/sections.ts';
import { all, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B43 = defineRule({
  id: 'B-43',
  title: 'A keyed lock on the egress side of a door that is not the main door',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('locksAndLatches')],
  confidence: 'project',
  why: 'Only the main door of some uses, some outdoor spaces and places of care or detention may be keyed from inside.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishKeyLock',
      severity: 'warn',
      when: all(
        yes('wishKeyLock'),
        no('mainDoor'),
        is(
          'egressRole',
          'exitAccess',
          'exteriorExit',
          'stairEntry',
          'stairDischarge',
          'horizontalExit',
          'crossCorridor',
          'dischargeGate',
          'egressCourt',
          'convenience',
          'elevatorLobby',
        ),
        not(is('occupancyGroup', 'I-1.2', 'I-2', 'I-3')),
        not(is('roomUse', 'detention', 'unitBalcony', 'officeTerrace')),
      ),
      says: 'A lock keyed from inside is wanted on a door that people leave by and that is not the main door; withdraw the request, or check what the door is.',
    },
  ],
});
