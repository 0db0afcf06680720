// The building as a whole, held against a second implementation that tries everything: random small buildings,
// random states of every opening. Then the demo building, whose two faults have to be found by name.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { inRoot } from '../../scripts/lib/repo.mjs';
import { assessBuilding, type BuildingAnswer } from '../../src/domain/building/building.ts';
import { crowdIn } from '../../src/domain/building/crowd.ts';
import { closings, reachedWithoutCredential } from '../../src/domain/building/exposure.ts';
import { leavingIn, shutWays } from '../../src/domain/building/leave.ts';
import { AFTER, FREE, NOT_SAID, type Passages, SHUT } from '../../src/domain/building/passage.ts';
import { type Plan, planOf } from '../../src/domain/building/plan.ts';
import type { DoorCapacity } from '../../src/domain/building/width.ts';
import { decideAll } from '../../src/domain/decide/decide.ts';
import { newProject, newSpace } from '../../src/domain/model/newProject.ts';
import type { Opening, Project, SecurityLevel, Space } from '../../src/domain/model/project.ts';

interface Made {
  readonly plan: Plan;
  readonly passages: Passages;
  readonly capacities: readonly DoorCapacity[];
}

const aSpace = fc.record({
  outside: fc.boolean(),
  level: fc.constantFrom<SecurityLevel | null>('public', 'general', 'staff', 'critical', null),
  load: fc.integer({ min: 0, max: 30 }),
});
/** Space −1 is "not stated". */
const aDoor = fc.record({
  from: fc.integer({ min: -1, max: 4 }),
  to: fc.integer({ min: -1, max: 4 }),
  out: fc.constantFrom(0, 0, 1, 2, 3, 4, 4),
  into: fc.constantFrom(0, 3, 4, 4),
  people: fc.option(fc.integer({ min: 0, max: 25 })),
});

const aBuilding: fc.Arbitrary<Made> = fc
  .tuple(fc.array(aSpace, { minLength: 2, maxLength: 5 }), fc.array(aDoor, { maxLength: 7 }))
  .map(([spaceRows, doorRows]) => {
    const spaces: Record<string, Space> = {};
    spaceRows.forEach(({ outside, level, load }, index) => {
      spaces[`s${index}`] = {
        ...newSpace(`s${index}`, `Space ${index}`),
        kind: outside ? 'outside' : 'room',
        securityLevel: level,
        occupantLoad: load,
      };
    });
    const openings: Record<string, Opening> = {};
    const kept: (typeof doorRows)[number][] = [];
    const idOf = (place: number) => (place < 0 || place >= spaceRows.length ? null : `s${place}`);
    doorRows.forEach((row, index) => {
      const [from, to] = [idOf(row.from), idOf(row.to)];
      const id = `o${index}`;
      openings[id] = {
        id,
        mark: id,
        floorId: null,
        fromSpaceId: from,
        toSpaceId: to,
        facts: {},
        notes: '',
        override: null,
      };
      if (from !== to) kept.push(row);
    });
    const project: Project = { ...newProject('p', 'Made up'), spaces, openings };
    const plan = planOf(project, new Map());
    return {
      plan,
      passages: {
        out: Uint8Array.from(kept, (row) => row.out),
        into: Uint8Array.from(kept, (row) => row.into),
        key: '',
      },
      capacities: kept.map(({ people }) =>
        people === null
          ? { known: false, missing: '' }
          : {
              known: true,
              people,
              clearIn: people / 5,
              oneLeafIn: people / 5,
              estimated: false,
              factors: [],
            },
      ),
    };
  });

/** Every directed step: from, to, its grade, its edge, whether it is the way people leave. */
function steps({ plan, passages }: Made) {
  return plan.edges.flatMap((edge, index) => [
    { a: edge.to, b: edge.from, grade: passages.out[index] as number, index, leaves: true },
    { a: edge.from, b: edge.to, grade: passages.into[index] as number, index, leaves: false },
  ]);
}

/** Grows a set of places until nothing changes. */
function grown(start: readonly number[], more: (known: ReadonlySet<number>) => readonly number[]) {
  const known = new Set(start);
  for (let before = -1; before !== known.size; ) {
    before = known.size;
    for (const one of more(known)) known.add(one);
  }
  return known;
}

describe('random small buildings against a second implementation', () => {
  test('the best way out of every space', () => {
    fc.assert(
      fc.property(aBuilding, (made) => {
        const { plan, passages } = made;
        const { grade } = leavingIn(plan, passages);
        plan.spaces.forEach((_space, space) => {
          const best = [0, 1, 2, 3].find((allowed) => {
            const ends = allowed === NOT_SAID ? [...plan.outside, plan.nowhere] : plan.outside;
            return grown(ends, (known) =>
              steps(made)
                .filter(({ a, b, grade: at }) => at <= allowed && known.has(b) && a !== plan.nowhere)
                .map(({ a }) => a),
            ).has(space);
          });
          expect(grade[space]).toBe(best ?? SHUT);
        });
      }),
      { seed: 1, numRuns: 400 },
    );
  });

  test('the fewest shut openings on the way of who cannot leave', () => {
    fc.assert(
      fc.property(aBuilding, (made) => {
        const { plan, passages } = made;
        const way = shutWays(plan, passages);
        const cost = new Map<number, number>(plan.outside.map((node) => [node, 0]));
        for (let round = 0; round <= plan.spaces.length; round++) {
          for (const { a, b, grade, leaves } of steps(made)) {
            if (a === plan.nowhere || b === plan.nowhere || (grade >= NOT_SAID && !leaves)) continue;
            const known = cost.get(b);
            if (known === undefined) continue;
            cost.set(
              a,
              Math.min(cost.get(a) ?? Number.POSITIVE_INFINITY, known + (grade < NOT_SAID ? 0 : 1)),
            );
          }
        }
        plan.spaces.forEach((_space, space) => {
          expect(way(space)?.shut.length).toBe(cost.get(space));
        });
      }),
      { seed: 2, numRuns: 400 },
    );
  });

  test('what a person without a credential reaches', () => {
    fc.assert(
      fc.property(aBuilding, (made) => {
        const { plan, passages } = made;
        const { reached } = reachedWithoutCredential(plan, passages);
        const brute = reachedBrute(made, new Set());
        plan.spaces.forEach((_space, space) => {
          expect(reached[space] === 1).toBe(brute.has(space));
        });
      }),
      { seed: 3, numRuns: 400 },
    );
  });

  test('the fewest openings whose locking closes a space', () => {
    fc.assert(
      fc.property(aBuilding, (made) => {
        const { plan, passages } = made;
        const closing = closings(plan, passages);
        plan.spaces.forEach((space, index) => {
          if (space.securityLevel === 'public' || space.kind === 'outside') return;
          const found = closing(index);
          const all = plan.edges.map((_edge, edge) => edge);
          const fewest = subsets(all)
            .filter((shut) => !reachedBrute(made, new Set(shut)).has(index))
            .map((shut) => shut.length)
            .toSorted((a, b) => a - b)[0];
          if (!found.possible) expect(fewest).toBeUndefined();
          else {
            expect(found.edges.length).toBe(fewest);
            expect(reachedBrute(made, new Set(found.edges)).has(index)).toBe(false);
          }
        });
      }),
      { seed: 4, numRuns: 150 },
    );
  });

  test('people through doors, and through all doors but one', () => {
    fc.assert(
      fc.property(aBuilding, (made) => {
        const { plan, passages, capacities } = made;
        const leaving = leavingIn(plan, passages);
        const crowd = crowdIn(plan, passages, leaving, capacities);
        expect(crowd.passed).toBe(flowBrute(made, leaving.grade, new Set()));
        for (const { edge, passed } of crowd.losses) {
          expect(passed).toBe(flowBrute(made, leaving.grade, new Set([edge])));
        }
        if (crowd.passed < crowd.people) expect(crowd.narrow.length).toBeGreaterThan(0);
      }),
      { seed: 5, numRuns: 300 },
    );
  });
});

function subsets<T>(of: readonly T[]): T[][] {
  return of.reduce<T[][]>((all, one) => [...all, ...all.map((set) => [...set, one])], [[]]);
}

/** Reached with the lock of some openings put right: that shuts the way in, never the way people leave. */
function reachedBrute(made: Made, locked: ReadonlySet<number>): ReadonlySet<number> {
  const { plan } = made;
  const start = plan.spaces.flatMap((space, index) =>
    space.securityLevel === 'public' || (space.kind === 'outside' && space.securityLevel === null)
      ? [index]
      : [],
  );
  return grown(start, (known) =>
    steps(made)
      .filter(
        ({ a, b, grade, leaves, index }) =>
          known.has(a) &&
          b !== plan.nowhere &&
          (leaves ? grade <= AFTER : grade === FREE && !locked.has(index)),
      )
      .map(({ b }) => b),
  );
}

/** Maximum flow as the smallest of all cuts: every set of spaces that the crowd could be shut into. */
function flowBrute(made: Made, grade: Uint8Array, without: ReadonlySet<number>): number {
  const { plan, capacities } = made;
  const isOutside = (node: number) => plan.outside.includes(node);
  const load = (node: number) =>
    isOutside(node) || (grade[node] as number) > AFTER ? 0 : (plan.spaces[node]?.occupantLoad ?? 0);
  const inside = plan.spaces.flatMap((_space, index) => (isOutside(index) ? [] : [index]));
  const cuts = subsets(inside).map((side) => {
    const shut = new Set(side);
    let cut = inside.reduce((sum, node) => sum + (shut.has(node) ? 0 : load(node)), 0);
    for (const { a, b, grade: at, index } of steps(made)) {
      if (a === plan.nowhere || b === plan.nowhere || at > AFTER || without.has(index) || isOutside(a))
        continue;
      if (!shut.has(a) || shut.has(b)) continue;
      const capacity = capacities[index];
      cut += capacity?.known ? capacity.people : Number.POSITIVE_INFINITY;
    }
    return cut;
  });
  return Math.min(...cuts);
}

describe('the demo building', () => {
  let answer: BuildingAnswer;
  const { project } = JSON.parse(readFileSync(inRoot('demo-data/demo-building.json'), 'utf8')) as {
    project: Project;
  };
  const named = (part: string): Space => {
    const space = Object.values(project.spaces).find((one) => one.name.includes(part));
    if (!space) throw new Error(`The demo building has no space “${part}”.`);
    return space;
  };
  const [exposed, trapped] = [named('exposed when mains fail'), named('trapped')];

  beforeAll(() => {
    answer = assessBuilding(project, decideAll(project));
  });

  test('the room that opens when the mains fail is found, and how to close it', () => {
    const found = answer.findings.find((one) => one.kind === 'exposed' && one.spaceId === exposed.id);
    expect(found?.conditions).toContain('batterySpent');
    expect(found?.conditions).not.toContain('lockedHours');
    expect(found?.closing).toHaveLength(1);
    expect(found?.says).toContain('once 4 h of battery run down');
  });

  test('the room nobody gets out of without a card is found, in fire as well', () => {
    const found = answer.findings.find((one) => one.kind === 'trapped' && one.spaceId === trapped.id);
    expect(found?.severity).toBe('severe');
    expect(found?.conditions).toEqual(expect.arrayContaining(['lockedHours', 'fireAlarm']));
    expect(found?.openingIds).toHaveLength(1);
  });
});

describe('what the survey leaves out', () => {
  const outside: Space = {
    ...newSpace('out', 'Street'),
    kind: 'outside',
    securityLevel: 'public',
  };
  const room: Space = { ...outside, id: 'room', name: 'Store', kind: 'room', securityLevel: null };
  const opening = (id: string, from: string | null, to: string | null): Opening => ({
    id,
    mark: id,
    floorId: null,
    fromSpaceId: from,
    toSpaceId: to,
    facts: {},
    notes: '',
    override: null,
  });
  const kinds = (spaces: readonly Space[], openings: readonly Opening[]) => {
    const project: Project = {
      ...newProject('p', 'Gaps'),
      spaces: Object.fromEntries(spaces.map((one) => [one.id, one])),
      openings: Object.fromEntries(openings.map((one) => [one.id, one])),
    };
    return assessBuilding(project, new Map()).findings.map((one) => one.kind);
  };

  test('an empty project has nothing to say', () => {
    expect(kinds([], [])).toEqual([]);
  });
  test('no outside, no door, no level', () => {
    expect(kinds([room], [])).toEqual(['noOutside', 'noPublic', 'noDoors', 'noLevel']);
  });
  test('one side, no side, a side that was removed, the same side twice', () => {
    const found = kinds(
      [outside, room],
      [
        opening('a', 'out', null),
        opening('b', null, null),
        opening('c', 'gone', 'room'),
        opening('d', 'room', 'room'),
      ],
    );
    expect(found.filter((kind) => kind === 'oneSided')).toHaveLength(3);
    expect(found).toContain('sameSpace');
    // Where "c" leads was not stated: whether the store has a way out can not be said.
    expect(found).toContain('notSaid');
    expect(found).not.toContain('trapped');
  });
});
