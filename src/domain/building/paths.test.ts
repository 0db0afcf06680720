import { expect, test } from 'vitest';
import { decideAll } from '../decide/decide.ts';
import { known } from '../testing/facts.ts';
import type { FactValues } from '../model/fields.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { CodeBasis } from '../codes/basis.ts';
import type { Opening, Project, Space } from '../model/project.ts';
import { pathFindings } from './paths.ts';

type Room = [id: string, kind: Space['kind']];
type Door = [mark: string, secure: string, egress: string, facts: FactValues, level?: number];

/** A door that is settled as what the test needs, in an office building with sprinklers and alarm. */
const officeDoor: FactValues = {
  doorType: 'single',
  leafMaterial: 'hollowMetal',
  frameMaterial: 'hollowMetal',
  latch: 'rimExit',
  panicPresent: true,
  fireRatingMin: 0,
  wallRatingMin: 0,
  wallKind: 'none',
  egressRole: 'exitAccess',
  roomUse: 'office',
  occupancyGroup: 'B',
  occupantLoad: 20,
  readerSides: 'secure',
  operator: 'none',
  workStatus: 'new',
  exitDirection: 'towardSecure',
};
const delayed: FactValues = { ...officeDoor, wishDelayedEgress: true, delayedDoorsOnPath: 0 };
const stairDoor: FactValues = {
  ...officeDoor,
  egressRole: 'stairEntry',
  stairLockWanted: 'stairSide',
  stairStories: 8,
  stairReleasePoint: 'mainEntrance',
  reentryFloorTraps: false,
};

function building(rooms: readonly Room[], doors: readonly Door[], basis: Partial<CodeBasis> = {}): Project {
  const project = newProject('p', 'Test');
  const facts = (values: FactValues) =>
    Object.fromEntries(Object.entries(values).map(([key, value]) => [key, known(value)])) as Opening['facts'];
  const levels = [...new Set(doors.map((door) => door[4] ?? 1))];
  return {
    ...project,
    basis: { ...project.basis, ...basis },
    building: facts({
      sprinklered: true,
      fireAlarm: true,
      detectionThroughout: true,
      highRise: false,
      basisConfirmed: true,
      amendmentsReviewed: true,
      powerAtDoor: true,
      cablePath: true,
      cityKeepsFourStoryLimit: false,
    }),
    floors: Object.fromEntries(
      levels.map((level) => [`f${level}`, { id: `f${level}`, name: `Floor ${level}`, level }]),
    ),
    spaces: Object.fromEntries(rooms.map(([id, kind]) => [id, { ...newSpace(id, id), kind }])),
    openings: Object.fromEntries(
      doors.map(([mark, secure, egress, values, level]) => [
        mark,
        {
          ...newOpening(mark, mark),
          fromSpaceId: secure,
          toSpaceId: egress,
          floorId: `f${level ?? 1}`,
          facts: facts(values),
        },
      ]),
    ),
  };
}
const findings = (project: Project) => pathFindings(project, decideAll(project));
const rules = (project: Project) =>
  findings(project).map((one) => `${one.ruleId} ${one.openingIds.join('+')} ${one.grade}`);
const rooms: readonly Room[] = [
  ['street', 'outside'],
  ['corridor', 'corridor'],
  ['suite', 'room'],
];

test('two delayed doors in a row with no other way: R-68, must be signed', () => {
  const project = building(rooms, [
    ['D1', 'corridor', 'suite', delayed],
    ['D2', 'street', 'corridor', { ...delayed, egressRole: 'exteriorExit' }],
  ]);
  expect([...decideAll(project).values()].map((one) => one.chosen?.candidate.release)).toEqual([
    'delayed',
    'delayed',
  ]);
  expect(rules(project)).toEqual(['R-68 D1+D2 must']);
});

test('one delayed door on the path is no finding', () => {
  const project = building(rooms, [
    ['D1', 'corridor', 'suite', delayed],
    ['D2', 'street', 'corridor', { ...officeDoor, egressRole: 'exteriorExit' }],
  ]);
  expect(rules(project)).toEqual([]);
});

test('a second delayed door with a free way beside it is looked at, not refused', () => {
  const project = building(rooms, [
    ['D1', 'corridor', 'suite', delayed],
    ['D2', 'street', 'corridor', { ...delayed, egressRole: 'exteriorExit' }],
    ['D3', 'street', 'corridor', { ...officeDoor, egressRole: 'exteriorExit' }],
  ]);
  expect(rules(project)).toEqual(['R-68 D1+D2 should']);
});

test('NFPA 101 alone has no general count', () => {
  const project = building(
    rooms,
    [
      ['D1', 'corridor', 'suite', delayed],
      ['D2', 'street', 'corridor', { ...delayed, egressRole: 'exteriorExit' }],
    ],
    { ibc: null, nfpa101: 2021 },
  );
  expect(rules(project).every((one) => one.startsWith('R-87') && one.endsWith('should'))).toBe(true);
});

test('an elevator lobby behind locked doors only: R-94; with a free stair beside it: none', () => {
  const held: FactValues = { ...officeDoor, latch: 'pushPull', panicPresent: false, securityNeed: 'low' };
  const lobby: readonly Room[] = [...rooms, ['lobby', 'elevator'], ['stair', 'stair']];
  const locked = building(lobby, [['L1', 'lobby', 'suite', officeDoor]]);
  expect(rules(locked)).toEqual(['R-94 L1 must']);
  const free = building(lobby, [
    ['L1', 'lobby', 'suite', officeDoor],
    [
      'S1',
      'stair',
      'lobby',
      { ...held, ...officeDoor, egressRole: 'stairEntry', stairLockWanted: 'none', readerSides: 'none' },
    ],
  ]);
  expect(rules(free)).toEqual([]);
});

test('locked stair doors that name different places of release: R-55', () => {
  const stair: readonly Room[] = [...rooms, ['stair', 'stair']];
  const together = building(stair, [
    ['S2', 'stair', 'corridor', stairDoor, 2],
    ['S3', 'stair', 'corridor', stairDoor, 3],
  ]);
  expect(rules(together)).toEqual([]);
  const apart = building(stair, [
    ['S2', 'stair', 'corridor', stairDoor, 2],
    ['S3', 'stair', 'corridor', { ...stairDoor, stairReleasePoint: 'fireCommandCenter' }, 3],
  ]);
  expect(rules(apart)).toEqual(['R-55 S2+S3 must']);
});

test('selected re-entry: not more than four stories between, top or next-to-top among them', () => {
  const stair: readonly Room[] = [...rooms, ['stair', 'stair']];
  const at = (level: number, open: boolean): Door => [
    `S${level}`,
    'stair',
    'corridor',
    {
      ...stairDoor,
      selectedReentry: true,
      stairLockWanted: open ? 'none' : 'stairSide',
      readerSides: open ? 'none' : 'secure',
    },
    level,
  ];
  const levels = [1, 2, 3, 4, 5, 6, 7, 8];
  const plan = (open: readonly number[]) =>
    findings(
      building(
        stair,
        levels.map((level) => at(level, open.includes(level))),
        { ibc: null, nfpa101: 2021 },
      ),
    )
      .filter((one) => one.ruleId === 'R-129')
      .map((one) => one.sentence);
  expect(plan([2, 7])).toEqual([]);
  expect(plan([1, 7])[0]).toContain('more than 4 stories');
  expect(plan([1, 6])[0]).toContain('neither the top');
  expect(plan([7])[0]).toContain('fewer than two');
});

test('R-94 names the ways out of the lobby alone, and an undecided one as undecided', () => {
  const lobby: readonly Room[] = [...rooms, ['lobby', 'lobby'], ['office', 'room'], ['stair', 'stair']];
  const out: FactValues = { ...officeDoor, egressRole: 'elevatorLobby', lobbyHasOtherExit: false };
  const into: Door = ['L2', 'lobby', 'office', officeDoor];
  // People leave the lobby through the suite; the reader stands in the suite, and the lock lets the lobby out free.
  const free = building(lobby, [
    ['L1', 'suite', 'lobby', { ...officeDoor, latch: 'mortise', panicPresent: false }],
    ['S1', 'stair', 'suite', { ...officeDoor, readerSides: 'none' }],
    into,
  ]);
  expect(rules(free)).toEqual([]);
  const undecided = building(lobby, [
    ['L1', 'suite', 'lobby', { egressRole: 'elevatorLobby', lobbyHasOtherExit: false }],
    ['S1', 'stair', 'suite', { ...officeDoor, readerSides: 'none' }],
    into,
  ]);
  expect(rules(undecided)).toEqual(['R-94 L1 should']);
  const sign = (project: Project) => rules(project).filter((one) => one.startsWith('R-94'));
  const locked = building(lobby, [['L1', 'suite', 'lobby', { ...out, readerSides: 'both' }], into]);
  const override = { candidate: 'magnet/safe/credentialOut', reason: 'test', by: 'test', at: '' };
  const L1 = { ...(locked.openings['L1'] as Opening), override };
  const shut = { ...locked, openings: { ...locked.openings, L1 } };
  expect(sign(shut)).toEqual(['R-94 L1 must']);
});

test('a lobby lock that the rules let stand is a way out of the lobby', () => {
  const lobby: readonly Room[] = [...rooms, ['lobby', 'lobby'], ['stair', 'stair']];
  const tenant: FactValues = {
    ...officeDoor,
    egressRole: 'elevatorLobby',
    lobbyHasOtherExit: false,
    latch: 'pushPull',
    panicPresent: false,
    exitDirection: 'both',
    attendedStation: true,
    sprinklerKind: 'nfpa13',
  };
  const at = (ibc: 2021 | 2024) =>
    building(
      lobby,
      [
        ['L1', 'lobby', 'suite', tenant],
        ['S1', 'stair', 'suite', { ...officeDoor, readerSides: 'none' }],
      ],
      { ibc, nfpa101: null },
    );
  const chosen = (project: Project) => decideAll(project).get('L1')?.chosen?.candidate.release;
  expect(chosen(at(2024))).toBe('lobby');
  expect(rules(at(2024))).toEqual([]);
  expect(rules(at(2021)).filter((one) => one.startsWith('R-94'))).toHaveLength(1);
});
