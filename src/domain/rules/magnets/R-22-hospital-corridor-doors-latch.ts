import { under } from '../../codes/sections.ts';
import { all, any, is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';
import { magnetDevices, oneOfEachMagnet } from './magnets.ts';

const ward = {
  occupancyGroup: 'I-2',
  roomUse: 'patientRoom',
  suiteDoor: 'none',
  wallKind: 'none',
  latch: 'roller',
} as const;
const other = { ...ward, roomUse: 'office' } as const;
const on = 'magnet/safe/sensor';

export const R22 = defineRule({
  id: 'R-22',
  title: 'A magnet is no latch on a hospital corridor door',
  family: 'magnets',
  book: 'ibc',
  cites: [under('hospitalCorridorDoors'), under('hospitalCorridorDoorsNfpa')],
  confidence: 'read',
  note: 'The clause speaks of corridor doors in general, so every corridor wall of the group is meant, not patient rooms alone.',
  why: 'Patients stay in their rooms behind these doors, and smoke pushes open a leaf that no latch holds.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(
        is('occupancyGroup', 'I-2'),
        any(is('roomUse', 'patientRoom'), is('suiteDoor', 'perimeter'), is('wallKind', 'corridor')),
        is('latch', 'pushPull', 'roller'),
      ),
      of: { device: magnetDevices },
      says: 'This corridor door must latch by itself, and today nothing latches it; a magnet cannot take the place of the latch.',
    },
  ],
  cases: cases(
    ...onEach(oneOfEachMagnet, 'patient room with a roller latch', ward, 'yes'),
    ['patient room, push/pull', { ...ward, latch: 'pushPull' }, 'yes', { on, does: 'prohibit' }],
    ['patient room that latches', { ...ward, latch: 'bored' }, 'no', { on }],
    ['suite entrance', { ...other, suiteDoor: 'perimeter' }, 'yes', { on }],
    ['inside the suite', { ...other, suiteDoor: 'inside' }, 'no', { on }],
    ['office on the corridor', { ...other, wallKind: 'corridor' }, 'yes', { on }],
    ['office elsewhere', other, 'no', { on }],
    ['clinic in group B', { ...ward, occupancyGroup: 'B' }, 'no', { on }],
    ['latch not known', { occupancyGroup: 'I-2', roomUse: 'patientRoom' }, 'unknown', { on }],
    ...onEach(['mortiseLock/safe/free', 'delayedExitDevice/safe/delayed'], 'no magnet', ward, 'no'),
  ),
});
