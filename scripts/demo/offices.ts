import { door, type DoorRow } from './kit.ts';
import { aluminiumEntrance, frameless, metalRoom, ratedRoom, stairDoor, woodOffice } from './presets.ts';

/** Second floor: offices. */
export const officeDoors: readonly DoorRow[] = [
  { mark: '201', floor: '2', from: 'corridor2', to: 'office201', facts: door(woodOffice) },
  {
    mark: '202',
    floor: '2',
    from: 'corridor2',
    to: 'office202',
    facts: door(woodOffice, { readerSides: 'none', securityNeed: 'low', lockFunction: 'office' }),
  },
  {
    mark: '203',
    floor: '2',
    from: 'corridor2',
    to: 'director',
    facts: door(woodOffice, {
      latch: 'mortise',
      appearance: 'visible',
      leafRaceway: true,
      workStatus: 'new',
    }),
  },
  {
    mark: '204',
    floor: '2',
    from: 'corridor2',
    to: 'board',
    facts: door(frameless, { occupantLoad: 24, roomUse: 'conference' }),
  },
  {
    mark: '205',
    floor: '2',
    from: 'corridor2',
    to: 'comms',
    facts: door(ratedRoom, { roomUse: 'serverRoom', securityNeed: 'high', occupantLoad: 1 }),
  },
  {
    mark: '206',
    floor: '2',
    from: 'corridor2',
    to: 'personnel',
    facts: door(metalRoom, { powerAtDoor: false, cablePath: false, distanceToSupplyFt: undefined }),
  },
  {
    mark: '207',
    floor: '2',
    from: 'corridor2',
    to: 'suite',
    facts: door(aluminiumEntrance, { occupantLoad: 30 }),
  },
  {
    mark: '208',
    floor: '2',
    from: 'corridor2',
    to: 'vault',
    facts: door(metalRoom, { leafRaceway: true, securityNeed: 'high', roomUse: 'storage' }),
    override: {
      candidate: 'mortiseLock/secure/credentialOut',
      reason: 'Owner asks for a record of everybody who leaves.',
    },
    notes: 'Only door of the room. Kept in the demo to show what a card for leaving does.',
  },
  {
    mark: 'S1-2',
    floor: '2',
    from: 'stairA',
    to: 'corridor2',
    facts: door(stairDoor, { readerSides: 'secure', stairLockWanted: 'stairSide', securityNeed: 'high' }),
  },
  {
    mark: 'S2-2',
    floor: '2',
    from: 'stairB',
    to: 'corridor2',
    facts: door(stairDoor),
  },
];
