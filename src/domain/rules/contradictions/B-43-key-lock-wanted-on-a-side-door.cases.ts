import { cases } from '../rule.ts';

export const B43Cases = cases(
  [
    'side door of a shop',
    { wishKeyLock: true, mainDoor: false, egressRole: 'exitAccess', occupancyGroup: 'M', roomUse: 'other' },
    'yes',
    { does: 'warn wishKeyLock' },
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
);
