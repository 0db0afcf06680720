import type { ElkNode } from 'elkjs/lib/elk-api.js';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Plan } from '../../domain/building/plan.ts';
import { newOpening, newProject, newSpace } from '../../domain/model/newProject.ts';
import { type FloorGraph, floorGraphs } from './floors.ts';
import { LayoutRun } from './layout.ts';

const engine = vi.hoisted(() => ({
  asked: [] as ElkNode[],
  ended: 0,
  answer: (graph: ElkNode): Promise<ElkNode> => Promise.resolve(graph),
}));
vi.mock('elkjs/lib/elk-worker.min.js?url', () => ({ default: '' }));
vi.mock('elkjs/lib/elk-api.js', () => ({
  default: class {
    layout(graph: ElkNode) {
      engine.asked.push(graph);
      return engine.answer(graph);
    }
    terminateWorker() {
      engine.ended += 1;
    }
  },
}));

const names = ['Hall', 'Office of the building manager and of the engineer', 'a  b', '', 'Attic'];
const edge = (mark: string, from: number, to: number, floorId: string | null = null) => ({
  opening: { ...newOpening(mark, mark), floorId },
  from,
  to,
});
const plan = {
  project: {
    ...newProject('p', 'P'),
    floors: {
      u: { id: 'u', name: 'Upper', level: 2 },
      g: { id: 'g', name: 'Ground', level: 0 },
      e: { id: 'e', name: 'Attic', level: 3 },
      n: { id: 'n', name: 'Empty', level: 4 },
      o: { id: 'o', name: 'Openings', level: 5 },
    },
  },
  spaces: names.map((name, index) => ({
    ...newSpace(`s${index}`, name),
    floorId: [null, 'g', 'u', 'gone', 'e'][index] ?? null,
  })),
  nowhere: 5,
  edges: [
    edge('1', 0, 1),
    edge('22', 2, 0, 'u'),
    edge('3', 5, 1),
    edge('4', 2, 5),
    edge('5', 3, 5),
    edge('6', 5, 5, 'o'),
  ],
} as unknown as Plan;

/** What the engine gives back: the graph with places. */
const laid = (graph: ElkNode): ElkNode => ({
  ...graph,
  width: 300,
  height: 200,
  children: (graph.children ?? []).map((one, at) => ({ ...one, x: at * 10, y: at })),
  edges: (graph.edges ?? []).map((one) => ({
    ...one,
    labels: (one.labels ?? []).map((label) => ({ ...label, x: 1, y: 2 })),
    sections: [
      {
        id: 'a',
        startPoint: { x: 0, y: 1 },
        bendPoints: [{ x: 2, y: 3 }],
        endPoint: { x: 4, y: 5 },
        incomingShape: '',
        outgoingShape: '',
      },
    ],
  })),
});

beforeEach(() => {
  engine.asked.length = 0;
  engine.ended = 0;
});
afterEach(() => {
  engine.answer = (graph) => Promise.resolve(graph);
});

const floors = (): readonly FloorGraph[] => floorGraphs(plan);
const run = () => new LayoutRun(plan, floors());
const settled = (one: LayoutRun, state: string) =>
  vi.waitFor(() => {
    expect(one.snapshot().state).toBe(state);
  });

it('openings stand on their floor, else on that of a side; floors go up, what has none comes last', () => {
  expect(floors()).toEqual([
    { id: 'g', name: 'Ground', edges: [0, 2], spaces: [0, 1] },
    { id: 'u', name: 'Upper', edges: [1, 3], spaces: [2, 0] },
    { id: 'e', name: 'Attic', edges: [], spaces: [4] },
    { id: 'o', name: 'Openings', edges: [5], spaces: [] },
    { id: '', name: 'On no floor', edges: [4], spaces: [3] },
  ]);
});

it('spaces and openings are asked for with room for their words, and drawn where they were placed', async () => {
  engine.answer = (graph) => Promise.resolve(laid(graph));
  const one = run();
  expect(one.snapshot()).toEqual({ state: 'running', placed: [], total: 5 });
  const told: string[] = [];
  const leave = one.subscribe(() => told.push(`${one.snapshot().state} ${one.snapshot().placed.length}`));
  one.start();
  await settled(one, 'done');
  expect(told).toEqual([
    'running 0',
    'running 1',
    'running 2',
    'running 3',
    'running 4',
    'running 5',
    'done 5',
  ]);
  expect(engine.ended).toBe(1);
  const [ground, upper] = engine.asked;
  expect(ground?.children).toEqual([
    { id: 's0', width: 114, height: 65 },
    { id: 's1', width: 164, height: 99 },
  ]);
  expect(upper?.edges).toMatchObject([
    { id: 'e1', sources: ['s0'], targets: ['s2'], labels: [{ text: '22', width: 50, height: 24 }] },
  ]);
  expect(ground?.edges?.map(({ id }) => id)).toEqual(['e0']);
  const [placed] = one.snapshot().placed;
  expect(placed).toMatchObject({
    width: 300,
    height: 200,
    spaces: [
      { index: 0, x: 0, y: 0, lines: ['Hall'] },
      { index: 1, x: 10, y: 1, lines: ['Office of the', 'building manager and', 'of the engineer'] },
    ],
    edges: [{ index: 0, path: 'M0 1L2 3L4 5', label: { x: 1, y: 2, width: 42, height: 24 } }],
  });
  expect(one.snapshot().placed[1]?.spaces[0]?.lines).toEqual(['a b']);
  leave();
  one.start();
  expect(one.snapshot()).toMatchObject({ state: 'running', placed: [] });
  await settled(one, 'done');
  expect(told.length).toBe(7);
});

const aMoment = () => new Promise((done) => setTimeout(done, 20));

it('what comes after the stop is not drawn', async () => {
  let late: (() => void) | undefined;
  engine.answer = (graph) =>
    new Promise((done) => {
      late = () => done(laid(graph));
    });
  const one = run();
  one.start();
  await vi.waitFor(() => expect(late).toBeDefined());
  one.stop();
  late?.();
  await aMoment();
  expect(one.snapshot()).toMatchObject({ state: 'stopped', placed: [] });
});

it('a long name ends after three lines', async () => {
  const long = { ...plan, spaces: [newSpace('s', `${'word '.repeat(20)}end`)] } as unknown as Plan;
  const one = new LayoutRun(long, [{ id: '', name: '', edges: [], spaces: [0] }]);
  one.start();
  await settled(one, 'done');
  expect(one.snapshot().placed[0]?.spaces[0]?.lines).toEqual([
    'word word word word',
    'word word word word',
    'word word word word…',
  ]);
});

it('what is stopped says so and keeps what was placed; what fails says so unless it was stopped', async () => {
  let fail: ((why: Error) => void) | undefined;
  engine.answer = (graph) =>
    engine.asked.length < 2
      ? Promise.resolve(laid(graph))
      : new Promise((_done, refuse) => {
          fail = refuse;
        });
  const stopped = run();
  stopped.start();
  await vi.waitFor(() => expect(stopped.snapshot().placed.length).toBe(1));
  await vi.waitFor(() => expect(fail).toBeDefined());
  stopped.stop();
  expect(engine.ended).toBe(1);
  fail?.(new Error('gone'));
  await aMoment();
  expect(stopped.snapshot()).toMatchObject({ state: 'stopped', placed: [{ width: 300 }] });

  engine.answer = () => Promise.reject(new Error('no room'));
  const failed = run();
  failed.start();
  await settled(failed, 'failed');
  failed.stop();
  expect(failed.snapshot().state).toBe('failed');
});

it('an opening without a line or a place for its mark is left out', async () => {
  engine.answer = (graph) =>
    Promise.resolve({
      ...laid(graph),
      edges: (laid(graph).edges ?? []).flatMap((one) => [
        { ...one, sections: [] },
        { ...one, labels: [] },
      ]),
    });
  const one = run();
  one.start();
  await settled(one, 'done');
  expect(one.snapshot().placed.flatMap(({ edges }) => edges)).toEqual([]);
});

it('is stopped before it began, and before the engine came', async () => {
  const never = run();
  never.stop();
  expect(never.snapshot().state).toBe('stopped');
  const early = run();
  early.start();
  early.stop();
  await aMoment();
  expect(engine.asked).toEqual([]);
  expect(early.snapshot()).toMatchObject({ state: 'stopped', placed: [] });
});
