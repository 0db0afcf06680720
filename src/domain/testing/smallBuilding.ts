import type { CodeBasis } from '../codes/basis.ts';
import { known } from '../testing/facts.ts';
import type { FactValues } from '../model/fields.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Opening, Project, Space } from '../model/project.ts';

export type Room = readonly [id: string, kind: Space['kind'], load?: number | null, more?: Partial<Space>];
export type Door = readonly [
  mark: string,
  secure: string,
  egress: string,
  facts?: FactValues,
  chosen?: string,
];

/** Enough of a survey that a lever door is settled, or a test over such buildings would prove nothing. */
const plain: FactValues = {
  doorType: 'single',
  leafMaterial: 'hollowMetal',
  frameMaterial: 'hollowMetal',
  latch: 'mortise',
  lockFunction: 'passage',
  panicPresent: false,
  existingArrangement: 'none',
  fireRatingMin: 0,
  wallRatingMin: 0,
  wallKind: 'none',
  closing: 'selfClosing',
  egressRole: 'exitAccess',
  exitDirection: 'towardSecure',
  roomUse: 'office',
  occupancyGroup: 'B',
  occupantLoad: 5,
  readerSides: 'none',
  operator: 'none',
  workStatus: 'new',
  clearWidthIn: 34,
  swingsWithEgress: true,
  publicEntrance: false,
  exterior: false,
  handing: 'RHR',
  leafThicknessIn: 1.75,
};

/** Rooms and doors as rows; every door is an ordinary office door but for what its row says. */
export function building(
  rooms: readonly Room[],
  doors: readonly Door[],
  basis: Partial<CodeBasis> = {},
): Project {
  const project = newProject('p', 'Test');
  const facts = (values: FactValues) =>
    Object.fromEntries(Object.entries(values).map(([key, value]) => [key, known(value)])) as Opening['facts'];
  return {
    ...project,
    basis: { ...project.basis, nfpa101: null, ibc: 2021, ...basis },
    building: facts({
      sprinklered: true,
      fireAlarm: true,
      detectionThroughout: true,
      highRise: false,
      basisConfirmed: true,
      amendmentsReviewed: true,
      buildingOccupantLoad: 60,
      federalHealthCare: false,
    }),
    spaces: Object.fromEntries(
      rooms.map(([id, kind, load = null, more = {}]) => [
        id,
        {
          ...newSpace(id, id),
          kind,
          occupantLoad: load,
          publicWay: kind === 'outside' ? true : null,
          ...more,
        },
      ]),
    ),
    openings: Object.fromEntries(
      doors.map(([mark, from, to, more = {}, chosen]) => [
        mark,
        {
          ...newOpening(mark, mark),
          fromSpaceId: from,
          toSpaceId: to,
          facts: facts({ ...plain, ...more }),
          override: chosen === undefined ? null : { candidate: chosen, reason: 'test', by: 'test', at: '' },
        },
      ]),
    ),
  };
}

export const keyLock = 'mechanicalLock/none/keyInside';
export const lever = 'mechanicalLock/none/free';

/** A lobby whose people have one door alone, and that one locked: by itself each door is in order. */
export function lobbyTrap(): Project {
  const rooms: Room[] = [
    ['Lobby', 'lobby'],
    ['Office', 'room', 5],
    ['Street', 'outside'],
  ];
  const storeroom: FactValues = { lockFunction: 'storeroom', readerSides: 'secure' };
  return building(rooms, [
    ['1', 'Lobby', 'Office', storeroom, 'batteryLock/asIs/free'],
    ['2', 'Street', 'Office', {}, lever],
  ]);
}

/** A stair that may be left at the street alone, whose doors are in order one by one. */
export function stairTrap(): Project {
  const rooms: Room[] = [
    ['Stair', 'stair', 0],
    ['F2', 'corridor'],
    ['F3', 'corridor'],
    ['Street', 'outside'],
  ];
  return building(rooms, [
    ['S-2', 'Stair', 'F2', { lockFunction: 'storeroom' }, lever],
    ['S-3', 'Stair', 'F3', { lockFunction: 'storeroom' }, lever],
    ['S-1', 'Street', 'Stair', { egressRole: 'stairDischarge' }, lever],
  ]);
}
