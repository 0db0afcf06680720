import { text, under } from '../../codes/sections.ts';
import { all, is, no, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B43 = defineRule({
  id: 'B-43',
  title: 'A key on the egress side of a door that is not the main one',
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
      says: 'A lock keyed from inside is wanted on a door that people leave by and that is not the main door; drop the wish, or check what the door is.',
    },
  ],
  cases: cases(
    [
      'side door of a shop',
      { wishKeyLock: true, mainDoor: false, egressRole: 'exitAccess', occupancyGroup: 'M', roomUse: 'other' },
      'yes',
    ],
    [
      'side door of a shop',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'exteriorExit',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'yes',
    ],
    [
      'side door of a shop',
      { wishKeyLock: true, mainDoor: false, egressRole: 'stairEntry', occupancyGroup: 'M', roomUse: 'other' },
      'yes',
    ],
    [
      'side door of a shop',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'stairDischarge',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'yes',
    ],
    [
      'side door of a shop',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'horizontalExit',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'yes',
    ],
    [
      'side door of a shop',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'crossCorridor',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'yes',
    ],
    [
      'side door of a shop',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'dischargeGate',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'yes',
    ],
    [
      'side door of a shop',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'egressCourt',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'yes',
    ],
    [
      'side door of a shop',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'convenience',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'yes',
    ],
    [
      'side door of a shop',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'elevatorLobby',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'yes',
    ],
    [
      'main door',
      {
        wishKeyLock: true,
        mainDoor: true,
        egressRole: 'exteriorExit',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'no',
    ],
    [
      'not wanted',
      {
        wishKeyLock: false,
        mainDoor: false,
        egressRole: 'exteriorExit',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'no',
    ],
    [
      'terrace that leads back inside',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'exteriorSpace',
        occupancyGroup: 'M',
        roomUse: 'other',
      },
      'no',
    ],
    [
      'care or detention',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'exitAccess',
        occupancyGroup: 'I-1.2',
        roomUse: 'other',
      },
      'no',
    ],
    [
      'care or detention',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'exitAccess',
        occupancyGroup: 'I-2',
        roomUse: 'other',
      },
      'no',
    ],
    [
      'care or detention',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'exitAccess',
        occupancyGroup: 'I-3',
        roomUse: 'other',
      },
      'no',
    ],
    [
      'judged by its room',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'exitAccess',
        occupancyGroup: 'B',
        roomUse: 'detention',
      },
      'no',
    ],
    [
      'judged by its room',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'exitAccess',
        occupancyGroup: 'B',
        roomUse: 'unitBalcony',
      },
      'no',
    ],
    [
      'judged by its room',
      {
        wishKeyLock: true,
        mainDoor: false,
        egressRole: 'exitAccess',
        occupancyGroup: 'B',
        roomUse: 'officeTerrace',
      },
      'no',
    ],
    [
      'main door not known',
      { wishKeyLock: true, egressRole: 'exteriorExit', occupancyGroup: 'M', roomUse: 'other' },
      'unknown',
    ],
  ),
});
