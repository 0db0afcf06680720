import { under } from '../../codes/sections.ts';
import { all, any, is, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { magnetDevices } from './magnets.ts';

const corridorDoor = all(
  is('occupancyGroup', 'I-2'),
  any(
    is('roomUse', 'patientRoom'),
    is('suiteDoor', 'perimeter'),
    is('wallKind', 'corridor', 'smokePartition'),
  ),
);
const nothingLatches = is('latch', 'pushPull', 'roller');
/** Patient rooms and suite entrances are signed for by R-107. */
const elsewhere = all(not(is('roomUse', 'patientRoom')), not(is('suiteDoor', 'perimeter')));

export const R22 = defineRule({
  id: 'R-22',
  title: 'A magnet is not a latch on a hospital corridor door',
  family: 'magnets',
  book: 'ibc',
  cites: [under('hospitalCorridorDoors'), under('hospitalCorridorDoorsNfpa')],
  confidence: 'read',
  note: 'The clause speaks of corridor doors in general, so every corridor wall of the group is meant, not patient rooms alone. Corridor walls of this group are smoke partitions (407.3), so a wall entered as one counts; where it bounds no corridor the reviewer says so.',
  why: 'Patients stay in their rooms behind these doors, and smoke pushes open a leaf that is not latched.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(corridorDoor, nothingLatches),
      of: { device: magnetDevices },
      says: 'This corridor door must latch by itself, and today nothing latches it; a magnet cannot take the place of the latch.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(
        is('occupancyGroup', 'I-2'),
        is('wallKind', 'corridor', 'smokePartition'),
        elsewhere,
        nothingLatches,
      ),
      says: 'This corridor door of a hospital has no latch today: a reviewer decides how it is made to latch, or which exception lets it go without.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'should',
      when: all(
        is('occupancyGroup', 'I-2'),
        is('wallKind', 'none'),
        is('egressRole', 'exitAccess'),
        elsewhere,
        not(is('suiteDoor', 'inside')),
        nothingLatches,
      ),
      says: 'The wall is entered as ordinary. Where it bounds a corridor of this hospital the door must latch, and it does not: have someone confirm the wall.',
    },
  ],
});
