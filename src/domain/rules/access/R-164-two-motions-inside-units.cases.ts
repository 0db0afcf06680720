import { cases } from '../rule.ts';

export const R164Cases = cases(
  [
    'latch and bolt',
    { roomUse: 'singleToilet', latch: 'boredPlusDeadbolt', existingArrangement: 'freeLever' },
    'yes',
    { clause: 'a', does: 'modify locksmith' },
  ],
  [
    'latch and bolt',
    { roomUse: 'dwellingBedroom', latch: 'boredPlusDeadbolt', existingArrangement: 'freeLever' },
    'yes',
    { clause: 'a' },
  ],
  [
    'two motions found',
    { roomUse: 'singleToilet', latch: 'bored', existingArrangement: 'deadboltPlusLatch' },
    'yes',
    { clause: 'a' },
  ],
  [
    'one lever draws both',
    { roomUse: 'singleToilet', latch: 'mortiseDeadbolt', existingArrangement: 'freeLever' },
    'no',
    { clause: 'a' },
  ],
  [
    'unit entrance',
    { roomUse: 'dwellingEntrance', latch: 'boredPlusDeadbolt', existingArrangement: 'deadboltPlusLatch' },
    'no',
    { clause: 'a' },
  ],
  [
    'NFPA 101 alone',
    { roomUse: 'singleToilet', latch: 'boredPlusDeadbolt', existingArrangement: 'deadboltPlusLatch' },
    'no',
    { clause: 'a', basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['latch not seen', { roomUse: 'singleToilet' }, 'unknown', { clause: 'a' }],
  [
    'bedroom',
    {
      roomUse: 'dwellingBedroom',
      latch: 'boredPlusDeadbolt',
      occupancyGroup: 'R-2',
      existingArrangement: 'freeLever',
    },
    'yes',
    { clause: 'b', does: 'signOff must' },
  ],
  [
    'bath of a unit',
    {
      roomUse: 'singleToilet',
      occupancyGroup: 'R-1',
      latch: 'bored',
      existingArrangement: 'deadboltPlusLatch',
    },
    'yes',
    { clause: 'b' },
  ],
  [
    'bath of a unit',
    {
      roomUse: 'singleToilet',
      occupancyGroup: 'R-2',
      latch: 'bored',
      existingArrangement: 'deadboltPlusLatch',
    },
    'yes',
    { clause: 'b' },
  ],
  [
    'bath of a unit',
    {
      roomUse: 'singleToilet',
      occupancyGroup: 'R-3',
      latch: 'bored',
      existingArrangement: 'deadboltPlusLatch',
    },
    'yes',
    { clause: 'b' },
  ],
  [
    'bath of a unit with a bolt',
    {
      roomUse: 'singleToilet',
      occupancyGroup: 'R-2',
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'freeLever',
    },
    'yes',
    { clause: 'b' },
  ],
  [
    'student bedroom in an odd group',
    {
      roomUse: 'dwellingBedroom',
      occupancyGroup: 'I-1.1',
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'freeLever',
    },
    'yes',
    { clause: 'b' },
  ],
  [
    'toilet of an office',
    {
      roomUse: 'singleToilet',
      occupancyGroup: 'B',
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'freeLever',
    },
    'no',
    { clause: 'b' },
  ],
  [
    'office of a hotel',
    {
      roomUse: 'office',
      occupancyGroup: 'R-1',
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'freeLever',
    },
    'no',
    { clause: 'b' },
  ],
  [
    'one motion',
    { roomUse: 'dwellingBedroom', occupancyGroup: 'R-2', latch: 'bored', existingArrangement: 'freeLever' },
    'no',
    { clause: 'b' },
  ],
  [
    'NFPA 101 alone',
    {
      roomUse: 'dwellingBedroom',
      occupancyGroup: 'R-2',
      latch: 'boredPlusDeadbolt',
      existingArrangement: 'freeLever',
    },
    'no',
    { clause: 'b', basis: { ibc: null, nfpa101: 2021 } },
  ],
  ['latch not seen', { roomUse: 'dwellingBedroom', occupancyGroup: 'R-2' }, 'unknown', { clause: 'b' }],
);
