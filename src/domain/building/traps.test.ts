import { describe, expect, test } from 'vitest';
import { decideAll } from '../decide/decide.ts';
import type { Decision } from '../decide/decision.ts';
import { signOffReasons } from '../decide/signOff.ts';
import { known } from '../model/fact.ts';
import type { FactValues } from '../model/fields.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { CodeBasis } from '../codes/basis.ts';
import type { Opening, Project, Space } from '../model/project.ts';
import { allFindings, severeByOpening, withBuilding } from './alongTheWay.ts';
import { assessBuilding } from './building.ts';
import type { BuildingFinding } from './finding.ts';
import { pathFindings } from './paths.ts';
import { spaceEgress } from './spaceEgress.ts';

/** Small buildings that shut people in, or that only look as if they did. */
type Room = readonly [id: string, kind: Space['kind'], load?: number | null];
type Door = readonly [mark: string, secure: string, egress: string, facts?: FactValues, chosen?: string];

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
};

function building(rooms: readonly Room[], doors: readonly Door[], basis: Partial<CodeBasis> = {}): Project {
  const project = newProject('p', 'Test');
  const facts = (values: FactValues) =>
    Object.fromEntries(Object.entries(values).map(([key, value]) => [key, known(value)])) as Opening['facts'];
  return {
    ...project,
    basis: { ...project.basis, nfpa101: null, ibc: 2021, ...basis },
    building: facts({ sprinklered: true, fireAlarm: true, detectionThroughout: true, highRise: false }),
    spaces: Object.fromEntries(
      rooms.map(([id, kind, load = null]) => [id, { ...newSpace(id, id), kind, occupantLoad: load }]),
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

function found(project: Project): readonly BuildingFinding[] {
  const decisions = decideAll(project);
  const answer = assessBuilding(project, decisions);
  return allFindings(answer, pathFindings(project, decisions), spaceEgress(answer));
}
const kinds = (all: readonly BuildingFinding[], space: string) =>
  all.filter((one) => one.spaceId === space).map((one) => `${one.severity} ${one.kind}`);

const key = 'mechanicalLock/none/keyInside';
const lever = 'mechanicalLock/none/free';

describe('people who cannot get out', () => {
  test('an elevator is no way out', () => {
    const rooms: Room[] = [
      ['Upper', 'lobby', 6],
      ['Lift', 'elevator'],
      ['Hall', 'room', 7],
      ['Street', 'outside'],
    ];
    const doors: Door[] = [
      ['L2', 'Lift', 'Upper', { exitDirection: 'both' }, lever],
      ['L1', 'Hall', 'Lift', { exitDirection: 'both' }, lever],
      ['X1', 'Street', 'Hall', {}, lever],
    ];
    expect(kinds(found(building(rooms, doors)), 'Upper')).toContain('severe trapped');
    const stair: Door = ['S', 'Street', 'Upper', {}, lever];
    expect(kinds(found(building(rooms, [...doors, stair])), 'Upper')).not.toContain('severe trapped');
  });

  test.each(['stair', 'corridor', 'lobby'] as const)(
    'a %s counts as occupied whatever its load says',
    (kind) => {
      const rooms = (load: number | null): Room[] => [
        ['Way', kind, load],
        ['Street', 'outside'],
      ];
      for (const load of [0, 5, null]) {
        const all = found(
          building(rooms(load), [
            ['X', 'Street', 'Way', { readerSides: 'both' }, 'magnet/safe/credentialOut'],
          ]),
        );
        expect(kinds(all, 'Way')).toContain('severe trapped');
      }
    },
  );

  test('a stair from which no floor can be entered again', () => {
    const rooms: Room[] = [
      ['Stair', 'stair', 0],
      ['F2', 'corridor'],
      ['F3', 'corridor'],
      ['Street', 'outside'],
    ];
    const floors = (lockFunction: NonNullable<FactValues['lockFunction']>): Door[] => [
      ['S-2', 'Stair', 'F2', { egressRole: 'exitAccess', lockFunction: 'storeroom' }, lever],
      ['S-3', 'Stair', 'F3', { egressRole: 'exitAccess', lockFunction }, lever],
      ['S-1', 'Street', 'Stair', { egressRole: 'stairDischarge' }, lever],
    ];
    const shut = found(building(rooms, floors('storeroom')));
    expect(kinds(shut, 'Stair')).toContain('severe noReentry');
    expect([...severeByOpening(shut).keys()].toSorted()).toEqual(expect.arrayContaining(['S-2', 'S-3']));
    expect(kinds(found(building(rooms, floors('passage'))), 'Stair')).not.toContain('severe noReentry');
  });

  test('a lobby of any kind whose people have a locked door alone', () => {
    const rooms: Room[] = [
      ['Lobby', 'lobby'],
      ['Office', 'room', 5],
      ['Street', 'outside'],
    ];
    const project = building(rooms, [
      ['1', 'Lobby', 'Office', { lockFunction: 'storeroom', readerSides: 'secure' }, 'batteryLock/asIs/free'],
      ['2', 'Street', 'Office', {}, lever],
    ]);
    const all = found(project);
    expect(all.some((one) => one.ruleId === 'R-94')).toBe(true);
    // The finding names the door, so that somebody can act there.
    const trapped = all.find((one) => one.kind === 'trapped' && one.spaceId === 'Lobby');
    expect(trapped?.openingIds).toEqual(['1']);
    expect(severeByOpening(all).get('1')?.[0]).toMatchObject({ from: 'building' });
    const alone = decideAll(project);
    expect(alone.get('2')?.severe).toEqual([]);
    const decision = withBuilding(alone, all).get('1');
    expect([decision?.state, decision?.stands]).toEqual(['severe', false]);
    expect(signOffReasons(decision as Decision).map((one) => one.grade)).toContain('must');
  });

  test('people held for staff in a fire is severe unless the code lets them be held and staff are there', () => {
    const rooms: Room[] = [
      ['Unit', 'room', 8],
      ['Street', 'outside'],
    ];
    const ward = (more: FactValues): Door => [
      'W',
      'Street',
      'Unit',
      { occupancyGroup: 'I-2', egressRole: 'exteriorExit', ...more },
      'mortiseLock/secure/clinical',
    ];
    expect(
      kinds(found(building(rooms, [ward({ clinicalArea: 'cognitive', staffCanUnlock: true })])), 'Unit'),
    ).toContain('severe staffOnly');
    expect(
      kinds(found(building(rooms, [ward({ clinicalArea: 'psychiatric', staffCanUnlock: false })])), 'Unit'),
    ).toContain('severe staffOnly');
    expect(
      kinds(found(building(rooms, [ward({ clinicalArea: 'psychiatric', staffCanUnlock: true })])), 'Unit'),
    ).toContain('serious staffOnly');
  });
});

describe('no false alarm', () => {
  test('a lawful key lock of a closed, empty shop is a note, and its door counts as an exit', () => {
    const rooms: Room[] = [
      ['Shop', 'room', 25],
      ['Street', 'outside'],
    ];
    const shop: FactValues = {
      occupancyGroup: 'M',
      mainDoor: true,
      wishKeyLock: true,
      egressRole: 'exteriorExit',
      occupantLoad: 25,
    };
    const all = found(building(rooms, [['F', 'Street', 'Shop', shop, key]]));
    expect(kinds(all, 'Shop')).toEqual(['note keyed']);
  });

  test('a key lock that nothing lets stand is a trap', () => {
    const rooms: Room[] = [
      ['Ward', 'room', 25],
      ['Street', 'outside'],
    ];
    const ward: FactValues = {
      occupancyGroup: 'I-2',
      mainDoor: true,
      wishKeyLock: true,
      egressRole: 'exteriorExit',
    };
    const all = found(building(rooms, [['F', 'Street', 'Ward', ward, key]]));
    expect(kinds(all, 'Ward')).toContain('severe trapped');
  });

  test('a double-egress pair is free each way', () => {
    const rooms: Room[] = [
      ['West', 'corridor'],
      ['East', 'corridor'],
      ['Street', 'outside'],
    ];
    const pair: FactValues = {
      doorType: 'doubleEgressPair',
      egressRole: 'crossCorridor',
      exitDirection: 'both',
      latch: 'verticalRods',
      panicPresent: true,
      lockFunction: 'storeroom',
    };
    const all = found(
      building(rooms, [
        ['P', 'West', 'East', pair, lever],
        ['X', 'Street', 'East', { egressRole: 'exteriorExit' }, lever],
      ]),
    );
    expect(kinds(all, 'West')).not.toContain('severe trapped');
  });
});
