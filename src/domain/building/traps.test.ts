import { describe, expect, test } from 'vitest';
import { decideAll } from '../decide/decide.ts';
import type { Decision } from '../decide/decision.ts';
import { signOffReasons } from '../words/signOff.ts';
import type { FactValues } from '../model/fields.ts';
import { known } from '../testing/facts.ts';
import type { Project, Space } from '../model/project.ts';
import {
  building,
  type Door,
  keyLock as key,
  lever,
  lobbyTrap,
  type Room,
} from '../testing/smallBuilding.ts';
import { allFindings, severeByOpening, withBuilding } from './alongTheWay.ts';
import { assessBuilding } from './building.ts';
import type { BuildingFinding } from './finding.ts';
import { pathFindings } from './paths.ts';
import { spaceEgress } from './spaceEgress.ts';

/** Small buildings that shut people in, or that only look as if they did. */
function found(project: Project): readonly BuildingFinding[] {
  const decisions = decideAll(project);
  const answer = assessBuilding(project, decisions);
  return allFindings(answer, pathFindings(project, decisions), spaceEgress(answer));
}
const kinds = (all: readonly BuildingFinding[], space: string) =>
  all.filter((one) => one.spaceId === space).map((one) => `${one.severity} ${one.kind}`);

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
    const project = lobbyTrap();
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

describe('a yard that must itself be left', () => {
  const rooms = (publicWay: boolean | null, more: Partial<Space> = {}): Room[] => [
    ['Hall', 'room', 40],
    ['Yard', 'outside', null, { publicWay, ...more }],
    ['Street', 'outside'],
  ];
  const gate: FactValues = {
    doorType: 'gateSwing',
    egressRole: 'dischargeGate',
    wishKeyLock: true,
    occupantLoad: 40,
  };
  const doors = (facts: FactValues, chosen: string): Door[] => [
    ['D', 'Yard', 'Hall', { egressRole: 'exteriorExit' }, lever],
    ['G', 'Street', 'Yard', { ...gate, ...facts }, chosen],
  ];
  const gateKey = 'gateLock/secure/keyInside';

  test('a locked gate shuts in the yard and everybody who leaves through it', () => {
    const shut = found(building(rooms(false), doors({}, gateKey)));
    expect(kinds(shut, 'Yard')).toContain('severe trapped');
    expect(kinds(shut, 'Hall')).toContain('severe trapped');
    expect(severeByOpening(shut).has('G')).toBe(true);
    const free = found(building(rooms(false), doors({}, 'gateLock/secure/free')));
    expect(
      kinds(free, 'Yard')
        .concat(kinds(free, 'Hall'))
        .filter((one) => one.startsWith('severe')),
    ).toEqual([]);
  });

  test('whether outside is a public way is asked, and seriously where a gate leads out of it', () => {
    const asked = found(building(rooms(null), doors({}, gateKey)));
    expect(kinds(asked, 'Yard')).toContain('serious publicWayAsked');
    expect(kinds(asked, 'Yard')).not.toContain('severe trapped');
    const street: Room[] = [
      ['Hall', 'room', 40],
      ['Street', 'outside', null, { publicWay: null }],
    ];
    expect(kinds(found(building(street, [['D', 'Street', 'Hall', {}, lever]])), 'Street')).toEqual([
      'note publicWayAsked',
    ]);
    expect(kinds(found(building(rooms(true), doors({}, gateKey))), 'Yard')).not.toContain(
      'serious publicWayAsked',
    );
  });

  test('an accepted dispersal area holds the people at 5 ft² each, and not with a square foot less', () => {
    const at = (areaFt2: number | null) =>
      kinds(
        found(
          building(rooms(false, { areaFt2, occupantLoad: 0 }), doors({ safeDispersalArea: true }, gateKey)),
        ),
        'Hall',
      ).filter((one) => !/exits|planDiffers/.test(one));
    expect(at(200)).toEqual(['note dispersal']);
    expect(at(199)).toEqual(['severe dispersal']);
    expect(at(null)).toEqual(['serious dispersal']);
  });
});

describe('an opening that is left alone', () => {
  const rooms: Room[] = [
    ['Office', 'room', 6],
    ['Street', 'outside'],
  ];
  const door = (facts: FactValues): Project =>
    building(rooms, [['D', 'Street', 'Office', { control: 'asToday', workStatus: 'existing', ...facts }]]);
  const at = (facts: FactValues) => kinds(found(door(facts)), 'Office');

  test('is a way out as it hangs today', () => {
    for (const existingArrangement of ['none', 'freeLever', 'freeBar', 'slideBolt'] as const) {
      expect(at({ existingArrangement })).not.toContain('serious notSaid');
      expect(at({ existingArrangement })).not.toContain('severe trapped');
    }
    expect(found(door({ existingArrangement: 'freeLever' })).map((one) => one.kind)).not.toContain(
      'undecided',
    );
    expect(at({ existingArrangement: 'magnetFullSet', latch: 'pushPull' })).not.toContain('severe trapped');
  });

  test('shuts people in where what hangs there does', () => {
    for (const existingArrangement of [
      'doubleCylinder',
      'padlock',
      'cardToExit',
      'magnetAlarmOnly',
    ] as const) {
      expect(at({ existingArrangement })).toContain('severe trapped');
    }
    const project = door({ existingArrangement: 'cardToExit' });
    const decision = withBuilding(decideAll(project), found(project)).get('D');
    expect(decision?.state).toBe('severe');
    expect(signOffReasons(decision as Decision).map((one) => one.grade)).toContain('must');
  });

  test('is told nothing of where the survey leaves open what lets people out', () => {
    expect(at({ existingArrangement: 'electricBolt' })).toContain('serious notSaid');
  });
});

describe('what fails behind the wall', () => {
  const trap: Room[] = [
    ['Hall', 'room', 6],
    ['Trap', 'room', 0],
    ['Street', 'outside'],
  ];
  const between = (facts: FactValues, chosen: string): Door[] => [
    ['A', 'Street', 'Trap', { readerSides: 'secure', wishInterlock: true, ...facts }, chosen],
    ['B', 'Trap', 'Hall', { readerSides: 'secure', wishInterlock: true, ...facts }, chosen],
  ];

  test('an interlock that can hold people shuts in whoever stands between its doors when it fails', () => {
    const magnets = found(building(trap, between({ interlockHoldsEgress: true }, 'magnet/safe/sensor')));
    const shutIn = magnets.find((one) => one.spaceId === 'Trap' && one.kind === 'trapped');
    expect([shutIn?.severity, shutIn?.conditions, shutIn?.openingIds]).toEqual([
      'severe',
      ['interlockFailed'],
      ['A'],
    ]);
    const notSaid = found(building(trap, between({}, 'magnet/safe/sensor')));
    expect(kinds(notSaid, 'Trap')).toContain('severe trapped');
  });

  test.each([
    [true, 'mortiseLock/secure/free'],
    [false, 'mortiseLock/secure/free'],
    [false, 'magnet/safe/sensor'],
  ] as const)('an interlock that holds people: %s, %s: nobody is shut in', (interlockHoldsEgress, chosen) => {
    expect(kinds(found(building(trap, between({ interlockHoldsEgress }, chosen))), 'Trap')).not.toContain(
      'severe trapped',
    );
  });

  test('sensor and button both failed is told as what the way rests on, not as a trap', () => {
    const room: Room[] = [
      ['Office', 'room', 6],
      ['Street', 'outside'],
    ];
    const magnet: Door = [
      'M',
      'Street',
      'Office',
      { readerSides: 'secure', latch: 'pushPull' },
      'magnet/safe/sensor',
    ];
    const all = found(building(room, [magnet]));
    expect(kinds(all, 'Office')).toContain('note restsOnTwo');
    expect(kinds(all, 'Office')).not.toContain('severe trapped');
    const lone: Door = ['L', 'Street', 'Office', {}, lever];
    expect(kinds(found(building(room, [lone])), 'Office')).not.toContain('note restsOnTwo');
  });

  test('sensor and button both failed is serious where no alarm frees a door, and a door with no release is a trap', () => {
    const room: Room[] = [
      ['Office', 'room', 6],
      ['Hall', 'corridor', 0],
      ['Street', 'outside'],
    ];
    const glass: FactValues = { readerSides: 'secure', latch: 'pushPull' };
    const inner: Door = ['M', 'Hall', 'Office', glass, 'magnet/safe/sensor'];
    const outer = (chosen: string): Door => ['X', 'Street', 'Hall', glass, chosen];
    const released = building(room, [inner, outer('magnet/safe/sensor')]);
    expect(kinds(found(released), 'Office')).toContain('note restsOnTwo');
    const oneNot = found(building(room, [inner, outer('magnet/safe/credentialOut')]));
    expect(kinds(oneNot, 'Office')).not.toContain('note restsOnTwo');
    expect(kinds(oneNot, 'Office')).toContain('severe trapped');
    const no = known(false);
    const quiet = { ...released.building, fireAlarm: no, detectionThroughout: no, sprinklered: no };
    const noAlarm = found({ ...released, building: quiet });
    expect(kinds(noAlarm, 'Office')).toContain('serious restsOnTwo');
    expect(kinds(noAlarm, 'Office')).not.toContain('severe trapped');
  });

  test('controlled egress that nobody can open is severe at every hour, and open questions say so', () => {
    const rooms: Room[] = [
      ['Unit', 'room', 8],
      ['Street', 'outside'],
    ];
    const unit = (more: FactValues, chosen = 'magnet/safe/controlled') => {
      const facts: FactValues = {
        occupancyGroup: 'I-2',
        egressRole: 'exteriorExit',
        clinicalArea: 'other',
        clinicalNeed: 'containment',
        latch: 'pushPull',
        readerSides: 'both',
        ...more,
      };
      return found(building(rooms, [['W', 'Street', 'Unit', facts, chosen]])).filter(
        (one) => one.spaceId === 'Unit' && one.kind === 'staffOnly' && one.conditions.includes('lockedHours'),
      );
    };
    expect(unit({ staffCanUnlock: false }).map((one) => one.severity)).toEqual(['severe']);
    expect(unit({}).map((one) => one.severity)).toEqual(['serious']);
    expect(unit({ staffCanUnlock: true }).map((one) => one.severity)).toEqual(['note']);
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

  test('a lawful key lock of a shop is serious for whoever comes to it by a stair', () => {
    const shop: Door = [
      'X',
      'Street',
      'Shop',
      { mainDoor: true, occupancyGroup: 'M', wishKeyLock: true },
      key,
    ];
    const rooms: Room[] = [
      ['Day care', 'room', 14],
      ['Stock', 'room', 2],
      ['Stair', 'stair', 0],
      ['Shop', 'room', 20],
      ['Street', 'outside'],
    ];
    const all = found(
      building(rooms, [
        ['D', 'Stair', 'Day care', { egressRole: 'stairEntry' }, lever],
        ['S', 'Shop', 'Stair', { egressRole: 'stairDischarge' }, lever],
        ['T', 'Shop', 'Stock', {}, lever],
        shop,
      ]),
    );
    const keyed = (space: string) => kinds(all, space).filter((one) => one.endsWith('keyed'));
    expect([keyed('Day care'), keyed('Stair')]).toEqual([['serious keyed'], ['serious keyed']]);
    expect([keyed('Shop'), keyed('Stock')]).toEqual([['note keyed'], ['note keyed']]);
    expect(all.find((one) => one.spaceId === 'Day care' && one.kind === 'keyed')?.says).toMatch(
      /people from upstairs leave by X/,
    );
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
