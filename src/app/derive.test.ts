import { describe, expect, test } from 'vitest';
import { applyEdits, type Edit } from '../domain/commands/command.ts';
import { newOpening, newProject, newSpace } from '../domain/model/newProject.ts';
import { openingsInOrder, type Project } from '../domain/model/project.ts';
import { rememberByIdentity, rememberForAll } from './derive.ts';
import { rememberOrder } from './order.ts';
import { rememberLast } from './rememberLast.ts';

function house(): Project {
  return {
    ...newProject('p', 'House'),
    openings: { a: newOpening('a', '101'), b: newOpening('b', '102') },
  };
}

function after(project: Project, ...edits: Edit[]): Project {
  const applied = applyEdits(project, edits);
  if (!applied.ok) throw new Error(applied.problem.kind);
  return applied.project;
}

function counted() {
  const asked: string[] = [];
  const all = rememberForAll(
    rememberByIdentity((project, opening) => {
      asked.push(opening.id);
      return `${project.name} ${opening.mark}`;
    }),
  );
  return { asked, all };
}

describe('answers remembered by identity', () => {
  test('P12: one edited door is judged again, the others are looked up', () => {
    const { asked, all } = counted();
    const before = house();
    all(before);
    all(before);
    expect(asked).toEqual(['a', 'b']);
    const edited = after(before, { kind: 'setOpening', id: 'b', field: 'notes', value: 'sticks' });
    all(edited);
    expect(asked).toEqual(['a', 'b', 'b']);
  });

  const shared: readonly [string, Edit][] = [
    ['code basis', { kind: 'setBasis', value: { ibc: 2024, nfpa101: null, nec: 2020, nfpa72: 2019 } }],
    [
      'amendments',
      {
        kind: 'putAmendment',
        id: 'm',
        value: {
          id: 'm',
          says: 'No magnets.',
          source: 'Letter',
          effect: 'prohibit',
          when: {},
          devices: [],
          releases: [],
          failModes: [],
        },
      },
    ],
    ['building facts', { kind: 'setBuildingFact', fact: 'sprinklered', value: { is: 'known', value: true } }],
    ['weights', { kind: 'setWeights', value: { ...house().weights, cost: 90 } }],
    [
      'spaces',
      {
        kind: 'putSpace',
        id: 's',
        value: { ...newSpace('s', 'Hall'), kind: 'corridor' },
      },
    ],
    ['floors', { kind: 'putFloor', id: 'f', value: { id: 'f', name: 'Ground', level: 0 } }],
  ];
  test.each(shared)('a change of the %s has every door judged again', (_part, edit) => {
    const { asked, all } = counted();
    const before = house();
    all(before);
    all(after(before, edit));
    expect(asked).toEqual(['a', 'b', 'a', 'b']);
  });

  test('an answer of undefined is remembered too', () => {
    let asked = 0;
    const answer = rememberByIdentity(() => {
      asked += 1;
      return undefined;
    });
    const project = house();
    const opening = newOpening('a', '101');
    answer(project, opening);
    answer(project, opening);
    expect(asked).toBe(1);
  });

  test('the last answer stays the same object while the project does', () => {
    const list = rememberLast((project: Project) => Object.keys(project.openings));
    const project = house();
    expect(list(project)).toBe(list(project));
    expect(list({ ...project })).not.toBe(list(house()));
  });
});

test('the remembered order of openings is the order they would be sorted into, whatever is edited', () => {
  const ordered = rememberOrder();
  const steps: readonly Edit[] = [
    { kind: 'setOpening', id: 'b', field: 'notes', value: 'sticks' },
    { kind: 'setOpening', id: 'a', field: 'mark', value: '110' },
    { kind: 'putFloor', id: 'f', value: { id: 'f', name: 'Ground', level: 0 } },
    { kind: 'setOpening', id: 'a', field: 'floorId', value: 'f' },
    { kind: 'putFloor', id: 'f', value: null },
    { kind: 'putOpening', id: 'c', value: { ...newOpening('c', '9') } },
    { kind: 'putOpening', id: 'b', value: null },
  ];
  let project = house();
  for (const step of steps) {
    ordered(project);
    project = after(project, step);
    expect(ordered(project)).toEqual(openingsInOrder(project));
  }
});
