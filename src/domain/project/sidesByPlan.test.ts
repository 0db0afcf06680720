import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Opening, Project, Space } from '../model/project.ts';
import { recordInWords } from '../merge/words.ts';
import { newPlan, notPinned, pinnedAt, pinnedOn, planOfFloor } from './floorPlans.ts';
import { sidesByPlan, sidesOnPlan } from './sidesByPlan.ts';

const stamp = { at: '2026-03-02T12:00:00.000Z', by: 'A. Surveyor' };
const floor = { id: 'f', name: 'Second floor', level: 2 };
const picture = { sha256: 'c'.repeat(64), widthPx: 2000, heightPx: 1000, bytes: 9 };

type Kind = Space['kind'];
interface Drawn {
  readonly spaces: Readonly<Record<string, readonly [kind: Kind, x?: number, y?: number]>>;
  /** Secure side, egress side, and where the pin is. */
  readonly doors: Readonly<Record<string, readonly [string | null, string | null, number?, number?]>>;
}

/** A corridor along the middle of the drawing, rooms above it. */
function drawn({ spaces, doors }: Drawn): Project {
  let project: Project = {
    ...newProject('p', 'House'),
    floors: { f: floor },
    spaces: Object.fromEntries(
      Object.entries(spaces).map(([id, [kind]]) => [id, { ...newSpace(id, id), kind }]),
    ),
    openings: Object.fromEntries(
      Object.entries(doors).map(([id, [fromSpaceId, toSpaceId]]) => [
        id,
        { ...newOpening(id, id), fromSpaceId, toSpaceId },
      ]),
    ),
  };
  const edit = (edits: Parameters<typeof applyEdits>[1]) => {
    const applied = applyEdits(project, edits);
    if (!applied.ok) throw new Error(applied.problem.kind);
    project = applied.project;
  };
  edit([newPlan(floor, 'A-102', picture, { id: 'plan', ...stamp })]);
  const plan = planOfFloor(project, 'f');
  if (!plan) throw new Error('no plan');
  const spots = [
    ...Object.entries(spaces).map(([id, [, x, y]]) => [id, x, y] as const),
    ...Object.entries(doors).map(([id, [, , x, y]]) => [id, x, y] as const),
  ];
  for (const [id, x, y] of spots)
    if (x !== undefined && y !== undefined) edit(pinnedAt(project, plan, id, { x, y }, stamp));
  return project;
}
const door = (project: Project, id: string) => project.openings[id] as Opening;
const offered = (project: Project, id: string) => sidesByPlan(project, door(project, id));
const labels = (project: Project, id: string) => offered(project, id)?.choices.map(({ label }) => label);

const rooms = { R1: ['room', 0.2, 0.3], R2: ['room', 0.3, 0.3], R3: ['room', 0.4, 0.3] } as const;

test('a door between two pinned spaces is offered both, the corridor as the side where a credential is read', () => {
  const project = drawn({
    spaces: { ...rooms, Hall: ['corridor', 0.25, 0.6] },
    doors: { D: [null, null, 0.2, 0.4] },
  });
  expect(offered(project, 'D')?.says).toBe('By the pins on the plan, this door is between R1 and Hall.');
  expect(labels(project, 'D')).toEqual(['Hall → R1', 'R1 → Hall']);
  // Nothing is stored before it is taken; taken, both sides stand and nothing more is offered.
  expect(door(project, 'D')).toMatchObject({ fromSpaceId: null, toSpaceId: null, floorId: 'f' });
  const taken = applyEdits(project, offered(project, 'D')?.choices[0]?.edits ?? []);
  if (!taken.ok) throw new Error('refused');
  expect(door(taken.project, 'D')).toMatchObject({ fromSpaceId: 'Hall', toSpaceId: 'R1' });
  expect(offered(taken.project, 'D')).toBeUndefined();
});

test('a long corridor is as near as its nearest door, pinned or not, and its rooms are not', () => {
  const project = drawn({
    spaces: { ...rooms, Hall: ['corridor'] },
    doors: {
      A: ['Hall', 'R1', 0.2, 0.4],
      B: ['Hall', 'R2', 0.3, 0.4],
      C: [null, null, 0.4, 0.4],
      far: [null, null, 0.9, 0.9],
    },
  });
  expect(labels(project, 'C')?.[0]).toBe('Hall → R3');
  expect(offered(project, 'far')).toBeUndefined();
  expect(sidesOnPlan(project, planOfFloor(project, 'f') as never).map(({ opening }) => opening.id)).toEqual([
    'C',
  ]);
});

test('what is stated is not offered again: the other side is', () => {
  const spaces = { ...rooms, Hall: ['corridor', 0.25, 0.6] } as const;
  const project = drawn({
    spaces,
    doors: { D: [null, 'R1', 0.2, 0.4], E: ['Hall', null, 0.3, 0.4], F: ['Hall', 'R3', 0.4, 0.4] },
  });
  expect(labels(project, 'D')).toEqual(['Secure side: Hall']);
  expect(labels(project, 'E')).toEqual(['Egress side: R2']);
  expect(offered(project, 'F')).toBeUndefined();
});

test('the street comes before the stair, and the stair before the room', () => {
  const at = (one: Kind, other: Kind) =>
    labels(
      drawn({
        spaces: { one: [one, 0.5, 0.5], other: [other, 0.5, 0.6] },
        doors: { D: [null, null, 0.5, 0.55] },
      }),
      'D',
    )?.[0];
  expect(at('room', 'outside')).toBe('other → one');
  expect(at('stair', 'corridor')).toBe('one → other');
  expect(at('lobby', 'stair')).toBe('other → one');
});

test('one space alone is offered for one side; none where the door is not on the plan of its floor', () => {
  const project = drawn({
    spaces: { R1: ['room', 0.2, 0.3] },
    doors: { D: [null, null, 0.2, 0.4], X: [null, null] },
  });
  expect(offered(project, 'D')?.says).toBe('By the pins on the plan, R1 is on one side of this door.');
  expect(labels(project, 'D')).toEqual(['Egress side: R1', 'Secure side: R1']);
  expect(offered(project, 'X')).toBeUndefined();
  const elsewhere = { ...door(project, 'D'), floorId: null };
  expect(sidesByPlan(project, elsewhere)).toBeUndefined();
});

test('spaces wait to be placed after openings and closets, and take the floor of the plan', () => {
  const project = drawn({ spaces: { R1: ['room'], R2: ['room', 0.5, 0.5] }, doors: { D: [null, null] } });
  const plan = planOfFloor(project, 'f');
  if (!plan) throw new Error('no plan');
  expect(notPinned(project, plan).map(({ id, is }) => [id, is])).toEqual([
    ['D', 'opening'],
    ['R1', 'space'],
  ]);
  expect(pinnedOn(project, plan.id)).toMatchObject([{ id: 'R2', is: 'space' }]);
  expect(project.spaces['R2']?.floorId).toBe('f');
  expect(recordInWords('pins/R2', [project])).toBe('Place on the plan of R2');
});

test('whatever is pinned where: only spaces of the plan are offered, never one for both sides, and taking it ends it', () => {
  const spot = fc.tuple(
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  );
  const names = ['S1', 'S2', 'S3'] as const;
  const side = fc.constantFrom(null, ...names);
  fc.assert(
    fc.property(
      fc.array(spot, { minLength: 3, maxLength: 3 }),
      fc.array(fc.tuple(side, side, spot), { minLength: 1, maxLength: 5 }),
      (s, d) => {
        const project = drawn({
          spaces: Object.fromEntries(names.map((id, at) => [id, ['room', s[at]?.[0] ?? 0, s[at]?.[1] ?? 0]])),
          doors: Object.fromEntries(d.map(([from, to, [x, y]], at) => [`D${at}`, [from, to, x, y]])),
        });
        for (const opening of Object.values(project.openings)) {
          for (const { edits } of sidesByPlan(project, opening)?.choices ?? []) {
            const taken = applyEdits(project, edits);
            if (!taken.ok) throw new Error('refused');
            const after = door(taken.project, opening.id);
            expect(after.fromSpaceId ?? 'secure').not.toBe(after.toSpaceId ?? 'egress');
            // What somebody stated stays.
            expect(opening.fromSpaceId ?? after.fromSpaceId).toBe(after.fromSpaceId);
            expect(opening.toSpaceId ?? after.toSpaceId).toBe(after.toSpaceId);
          }
        }
      },
    ),
    { numRuns: 60 },
  );
});
