import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultBasis } from '../codes/basis.ts';
import { decide } from '../decide/decide.ts';
import { valueIn } from '../logic/slots.ts';
import { known } from '../testing/facts.ts';
import type { FactKey, FactValues } from '../model/fields.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Opening, Project, Space } from '../model/project.ts';
import { impliedFor } from './implied.ts';
import { mustPass, waysOf } from './ways.ts';

/** `[mark, from, to, facts]`: people leave from the second space to the first. */
type Door = readonly [mark: string, from: string, to: string, facts?: FactValues];

function building(spaces: Readonly<Record<string, Partial<Space>>>, doors: readonly Door[]): Project {
  return {
    ...newProject('p', 'Plan'),
    basis: defaultBasis,
    spaces: Object.fromEntries(
      Object.entries(spaces).map(([id, more]) => [id, { ...newSpace(id, id), ...more }]),
    ),
    openings: Object.fromEntries(
      doors.map(([mark, fromSpaceId, toSpaceId, facts = {}]) => [
        mark,
        {
          ...newOpening(mark, mark),
          fromSpaceId,
          toSpaceId,
          facts: Object.fromEntries(Object.entries(facts).map(([key, value]) => [key, known(value)])),
        },
      ]),
    ),
  };
}
const at = (project: Project, mark: string): Opening => {
  const opening = project.openings[mark];
  if (!opening) throw new Error(`There is no ${mark}.`);
  return opening;
};
const implied = (project: Project, mark: string, key: FactKey) =>
  impliedFor(project, at(project, mark)).facts.find((fact) => fact.key === key)?.value;
const differs = (project: Project, mark: string) => impliedFor(project, at(project, mark)).differs;

const street = { kind: 'outside' } as const;
const corridor = { kind: 'corridor' } as const;

describe('a crowd that can leave only through another room', () => {
  const through = (load: number, group: 'A-3' | 'H-3' | 'I-2' = 'A-3', more: readonly Door[] = []) =>
    building({ street, hall: { occupantLoad: load }, office: { occupantLoad: 6 } }, [
      ['1', 'office', 'hall', { occupancyGroup: group }],
      ['2', 'street', 'office', { occupancyGroup: 'B', occupantLoad: 6 }],
      ...more,
    ]);

  test('takes its group along to the door it must pass, as it takes its load', () => {
    const hall = through(60);
    expect(implied(hall, '2', 'occupancyGroup')).toBe('A-3');
    expect(implied(hall, '2', 'occupantLoad')).toBe(66);
    expect(differs(hall, '2')).toContain('planGroupStricter');
    expect(valueIn(decide(hall, at(hall, '2')).slots, 'occupancyGroup')).toBe('A-3');
  });

  test.each([
    ['fewer than make a crowd', through(49)],
    ['another door of the hall', through(60, 'A-3', [['3', 'street', 'hall']])],
    ['high hazard', through(60, 'H-3')],
    ['care', through(60, 'I-2')],
  ])('and does not with %s', (_name, project) => {
    expect(implied(project, '2', 'occupancyGroup')).toBeUndefined();
  });

  test.each([1, 60, null])(
    'of high hazard, %s people, is a reviewer’s at the next door, and stays its own',
    (load) => {
      const hall = building({ street, hall: { occupantLoad: load }, office: { occupantLoad: 6 } }, [
        ['1', 'office', 'hall', { occupancyGroup: 'H-3' }],
        ['2', 'street', 'office', { occupancyGroup: 'B', doorType: 'single', egressRole: 'exteriorExit' }],
      ]);
      expect(differs(hall, '2')).toContain('planHighHazardLeaves');
      const signed = decide(hall, at(hall, '2')).signOffs.map(
        ({ rule, clause }) => `${rule.id}${clause.key}`,
      );
      expect(signed).toContain('R-70g');
      expect(differs(hall, '1')).not.toContain('planHighHazardLeaves');
      expect(differs(through(60), '2')).not.toContain('planHighHazardLeaves');
    },
  );

  test('nor in a corridor that has another exit', () => {
    const exits = (more: readonly Door[]) =>
      building({ street, corridor, hall: { occupantLoad: 60 } }, [
        ['1', 'corridor', 'hall', { occupancyGroup: 'E' }],
        ['2', 'street', 'corridor', { occupancyGroup: 'B', occupantLoad: 60 }],
        ...more,
      ]);
    expect(implied(exits([]), '2', 'occupancyGroup')).toBe('E');
    expect(implied(exits([['3', 'street', 'corridor']]), '2', 'occupancyGroup')).toBeUndefined();
  });
});

describe('what the plan implies for an opening', () => {
  const cafe = building({ street, corridor, cafe: { occupantLoad: 60, use: 'assemblyTables' } }, [
    ['1', 'corridor', 'cafe', { occupantLoad: 12, occupancyGroup: 'B' }],
    ['2', 'street', 'cafe', { occupantLoad: 80, occupancyGroup: 'A-2' }],
    ['3', 'street', 'corridor'],
  ]);

  test('the larger load governs, and a smaller one at the opening is a contradiction', () => {
    expect(implied(cafe, '1', 'occupantLoad')).toBe(60);
    expect(differs(cafe, '1')).toContain('planLoadLarger');
    expect(implied(cafe, '2', 'occupantLoad')).toBeUndefined();
    expect(differs(cafe, '2')).toEqual([]);
    const decision = decide(cafe, at(cafe, '1'));
    expect(valueIn(decision.slots, 'occupantLoad')).toBe(60);
    expect(decision.findings.map((step) => `${step.rule.id}${step.clause.key}`)).toContain('B-95b');
    expect(decision.assumed.get('occupantLoad')).toMatch(/^from the plan: the load of cafe, 60 people/);
  });

  test('the group of the space governs where another door names a stricter one', () => {
    expect(implied(cafe, '1', 'occupancyGroup')).toBe('A-2');
    expect(differs(cafe, '1')).toContain('planGroupStricter');
  });

  test('an assembly use is Group A from 50 people on and not at 49', () => {
    const room = (occupantLoad: number) =>
      building({ street, hall: { occupantLoad, use: 'assemblyChairs' } }, [
        ['1', 'street', 'hall', { occupancyGroup: 'B' }],
      ]);
    expect(implied(room(50), '1', 'occupancyGroup')).toBe('A-3');
    expect(implied(room(49), '1', 'occupancyGroup')).toBeUndefined();
  });

  test('people of rooms behind the room are counted with it, and those with another way are not', () => {
    const roof = building(
      {
        street,
        stair: { kind: 'stair' },
        roof: { kind: 'roof', occupantLoad: 49 },
        pavilion: { occupantLoad: 30 },
      },
      [
        ['R1', 'stair', 'roof', { occupantLoad: 49 }],
        ['R3', 'roof', 'pavilion'],
        ['S', 'street', 'stair'],
      ],
    );
    expect(implied(roof, 'R1', 'occupantLoad')).toBe(79);
    const second = building(
      {
        street,
        stair: { kind: 'stair' },
        roof: { kind: 'roof', occupantLoad: 49 },
        pavilion: { occupantLoad: 30 },
      },
      [
        ['R1', 'stair', 'roof', { occupantLoad: 49 }],
        ['R3', 'roof', 'pavilion'],
        ['R9', 'stair', 'pavilion'],
        ['S', 'street', 'stair'],
      ],
    );
    expect(implied(second, 'R1', 'occupantLoad')).toBeUndefined();
  });

  test('one door of a room is its only door until another is there', () => {
    const court = (more: readonly Door[]) =>
      building({ street, corridor, court: { occupantLoad: 40 } }, [
        ['408', 'corridor', 'court'],
        ['1', 'street', 'corridor'],
        ...more,
      ]);
    expect(differs(court([]), '408')).toContain('planOnlyDoor');
    expect(differs(court([['409', 'street', 'court']]), '408')).not.toContain('planOnlyDoor');
    // Not a door that people count on.
    expect(differs(court([['409', 'street', 'court', { doorType: 'overhead' }]]), '408')).toContain(
      'planOnlyDoor',
    );
    expect(differs(court([['409', 'street', 'court', { egressRole: 'sealedOff' }]]), '408')).toContain(
      'planOnlyDoor',
    );
  });

  test('an elevator lobby has no other exit where the plan shows none, and an elevator is none', () => {
    const lobby = (more: readonly Door[]) =>
      building(
        { street, corridor, stair: { kind: 'stair' }, lobby: { kind: 'lobby' }, car: { kind: 'elevator' } },
        [
          ['301', 'corridor', 'lobby', { egressRole: 'elevatorLobby', lobbyHasOtherExit: true }],
          ['E', 'car', 'lobby', { exitDirection: 'both' }],
          ['1', 'street', 'corridor'],
          ['2', 'street', 'stair'],
          ...more,
        ],
      );
    expect(implied(lobby([]), '301', 'lobbyHasOtherExit')).toBe(false);
    expect(differs(lobby([]), '301')).toContain('planNoLobbyExit');
    expect(implied(lobby([['S', 'stair', 'lobby']]), '301', 'lobbyHasOtherExit')).toBeUndefined();
  });

  test('a door with the people of a lobby on its locked side is a door of that lobby, whatever it was entered as', () => {
    const office = (more: readonly Door[]) =>
      building({ street, lobby: { kind: 'lobby' }, office: { occupantLoad: 30 } }, [
        ['301', 'lobby', 'office', { egressRole: 'exitAccess' }],
        ['1', 'street', 'office'],
        ...more,
      ]);
    expect(implied(office([]), '301', 'egressRole')).toBe('elevatorLobby');
    expect(implied(office([]), '301', 'lobbyHasOtherExit')).toBe(false);
    expect(differs(office([]), '301')).toContain('planNoLobbyExit');
    expect(implied(office([['X', 'street', 'lobby']]), '301', 'egressRole')).toBeUndefined();
  });

  test('nobody can be inside, says the survey, and the plan counts people: refused', () => {
    const garage = building({ street, garage: { occupantLoad: 60 } }, [
      ['P01', 'street', 'garage', { egressRole: 'noOccupiedSpace', doorType: 'overhead' }],
    ]);
    expect(decide(garage, at(garage, 'P01')).state).toBe('refused');
  });

  test('a door for vehicles needs another door for the people', () => {
    const dock = (more: readonly Door[]) =>
      building({ street, dock: { occupantLoad: 12 } }, [
        ['D1', 'street', 'dock', { egressRole: 'vehicleDoor', doorType: 'overhead' }],
        ...more,
      ]);
    expect(differs(dock([]), 'D1')).toContain('planNoOtherDoor');
    expect(decide(dock([]), at(dock([]), 'D1')).state).toBe('refused');
    expect(differs(dock([['D2', 'street', 'dock']]), 'D1')).toEqual([]);
  });

  test('two areas: the larger, said where they are more than a tenth apart', () => {
    const plant = (roomAreaFt2: number) =>
      building({ street, plant: { areaFt2: 560, use: 'accessoryStorage' } }, [
        ['510', 'street', 'plant', { roomAreaFt2 }],
      ]);
    expect(implied(plant(1200), '510', 'roomAreaFt2')).toBe(1200);
    expect(differs(plant(1200), '510')).toContain('planAreaDiffers');
    expect(implied(plant(200), '510', 'roomAreaFt2')).toBe(560);
    expect(differs(plant(570), '510')).not.toContain('planAreaDiffers');
  });

  test('the same edit of another door is seen by what is remembered', () => {
    const moved = {
      ...cafe,
      openings: { ...cafe.openings, 2: { ...at(cafe, '2'), fromSpaceId: null, facts: {} } },
    };
    expect(differs(cafe, '1')).toContain('planGroupStricter');
    expect(implied(moved, '1', 'occupancyGroup')).toBe('A-3');
    expect(differs(moved, '1')).toContain('planOnlyDoor');
    expect(differs(cafe, '1')).not.toContain('planOnlyDoor');
  });
});

/** Whether everybody in `from` passes `by`: nothing outside is reached without it. */
function allPass(project: Project, from: number, by: number): boolean {
  const { spaces, leaving } = waysOf(project);
  const seen = new Set([from]);
  const queue = [from];
  for (let node = queue.shift(); node !== undefined; node = queue.shift()) {
    if (spaces[node]?.kind === 'outside') return false;
    for (const { to } of leaving[node] ?? []) {
      if (to === by || seen.has(to)) continue;
      seen.add(to);
      queue.push(to);
    }
  }
  return true;
}

test('who must pass which space agrees with a search that leaves the space out', () => {
  const count = 9;
  const ids = Array.from({ length: count }, (_one, index) => `s${index}`);
  const plans = fc.array(fc.tuple(fc.constantFrom(...ids), fc.constantFrom(...ids)), { maxLength: 22 });
  fc.assert(
    fc.property(plans, (pairs) => {
      const project = building(
        Object.fromEntries(ids.map((id, index) => [id, index === 0 ? street : {}])),
        pairs.map(([from, to], index) => [`d${index}`, from, to]),
      );
      const next = mustPass(waysOf(project));
      const passes = (from: number): Set<number> => {
        const found = new Set<number>();
        for (let node = next[from] as number; node >= 0; node = next[node] as number) found.add(node);
        return found;
      };
      const leaves = (from: number) => !allPass(project, from, -1);
      for (let from = 1; from < count; from++) {
        if (!leaves(from)) continue;
        for (let by = 1; by < count; by++) {
          if (by === from) continue;
          expect(passes(from).has(by)).toBe(allPass(project, from, by));
        }
      }
    }),
    { numRuns: 300 },
  );
});
