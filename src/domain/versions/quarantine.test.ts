import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { known } from '../testing/facts.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import { aProject } from '../testing/arbitraries.ts';
import { openProjectData, openProjectText, saveProjectText } from './file.ts';
import { newestFormat } from './migrations.ts';

const closet = {
  id: 'k',
  name: 'IDF 1',
  floorId: 'f',
  spaceId: null,
  linePower: true,
  temperatureC: null,
  notes: '',
};
const supply = {
  id: 'u',
  name: 'PS-1',
  closetId: 'k',
  volts: 24,
  current: 'dc',
  amps: 6,
  peakAmps: null,
  outputs: 8,
  class2: true,
  batteryAh: 7,
  holdsVolts: false,
  fedBy: 'linePower',
};

/** P8: what cannot be read is set aside and shown, as small a part as possible, and never dropped in silence. */
type Loose = Record<string, unknown>;

function house(): Loose {
  return JSON.parse(
    JSON.stringify({
      ...newProject('p', 'House'),
      floors: { f: { id: 'f', name: 'Ground', level: 0 } },
      spaces: {
        s: { ...newSpace('s', 'Hall'), floorId: 'f', kind: 'corridor', occupantLoad: 4, areaFt2: 80 },
      },
      closets: { k: { ...closet } },
      supplies: { u: { ...supply } },
      runs: { a: { id: 'a', lengthFt: { value: 120 }, closetId: { value: 'k' }, supplyId: null } },
      hardwareSets: {
        bored: { id: 'bored', number: 'HS-01', name: '', revision: 0, members: {}, content: '' },
      },
      building: { sprinklered: known(true) },
      openings: {
        a: { ...newOpening('a', '101'), facts: { latch: known('mortise'), leafWidthIn: known(36) } },
        b: newOpening('b', '102'),
      },
    }),
  ) as Loose;
}

/** Opens the house with the value at a path replaced. */
function openWith(path: readonly string[], damage: unknown) {
  const project = house();
  let inside = project;
  for (const key of path.slice(0, -1)) inside = inside[key] as Loose;
  // Defined, not assigned: assigning __proto__ would not make an entry.
  Object.defineProperty(inside, path.at(-1) ?? '', { value: damage, enumerable: true, configurable: true });
  const opened = openProjectText(
    JSON.stringify({ format: 'latchward-project', formatVersion: newestFormat, project }),
  );
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
  return opened;
}

describe('P8: damage and what is set aside for it', () => {
  const goodReview = {
    verdict: 'approved',
    by: 'K',
    on: '2026-01-01',
    reason: '',
    saw: { candidate: null, basis: '', facts: {} },
  };
  test.each<[string, string[], unknown, string, number]>([
    [
      'a fact out of range',
      ['openings', 'a', 'facts', 'leafWidthIn'],
      known(9000),
      'Opening 101, leafWidthIn',
      2,
    ],
    ['a fact that is a bare value', ['openings', 'a', 'facts', 'latch'], 'mortise', 'Opening 101, latch', 2],
    [
      'a review with an impossible day',
      ['openings', 'a', 'review'],
      { ...goodReview, on: '2026-02-31' },
      'Opening 101, review',
      2,
    ],
    [
      'a choice without a reason',
      ['openings', 'a', 'override'],
      { candidate: 'x' },
      'Opening 101, choice',
      2,
    ],
    ['an opening that is text', ['openings', 'a'], 'door', 'Opening a', 1],
    ['an opening without a mark', ['openings', 'a', 'mark'], '', 'Opening a', 1],
    ['an opening whose facts are a list', ['openings', 'a', 'facts'], [], 'Opening 101', 1],
    ['an opening under the id of another', ['openings', 'a', 'id'], 'b', 'Opening 101', 1],
    [
      'an opening under an id that copying drops',
      ['openings', '__proto__'],
      newOpening('x', '109'),
      'project.openings.__proto__',
      2,
    ],
    [
      'an opening under an id that all objects have',
      ['openings', 'constructor'],
      newOpening('constructor', '109'),
      'Opening 109',
      2,
    ],
    [
      'a fact whose name copying drops',
      ['openings', 'a', 'facts', '__proto__'],
      known(1),
      'project.openings.a.facts.__proto__',
      2,
    ],
    ['a history that is none', ['history'], { seen: 'all' }, 'History', 2],
    ['a floor without a level', ['floors', 'f', 'level'], null, 'Floor Ground', 2],
    ['a space of no known kind', ['spaces', 's', 'kind'], 'cave', 'Space Hall', 2],
    ['a use that no table lists', ['spaces', 's', 'use'], 'smithy', 'Space Hall, use', 2],
    ['an area below nothing', ['spaces', 's', 'areaFt2'], -1, 'Space Hall, area', 2],
    ['a common path in words', ['spaces', 's', 'commonPathFt'], 'short', 'Space Hall, common path', 2],
    ['a closet at no temperature', ['closets', 'k', 'temperatureC'], 900, 'Closet IDF 1, temperature', 2],
    ['a supply without a rating', ['supplies', 'u', 'amps'], 0, 'Supply PS-1', 2],
    ['a battery below nothing', ['supplies', 'u', 'batteryAh'], -7, 'Supply PS-1, battery', 2],
    [
      'a product with current 0',
      ['productBook', 'r'],
      { id: 'r', of: 'magnet', part: 'M', steadyA: 0 },
      'Product r',
      2,
    ],
    ['a run below nothing', ['runs', 'a', 'lengthFt'], { value: -20 }, 'Run a, length', 2],
    ['a set number that is a number', ['hardwareSets', 'bored', 'number'], 3, 'Hardware set bored', 2],
    [
      'a set under what every object has',
      ['hardwareSets', 'constructor'],
      { id: 'constructor', number: 'HS-02', name: '' },
      'Hardware set constructor',
      2,
    ],
    [
      'a building fact of the wrong kind',
      ['building', 'sprinklered'],
      known('yes'),
      'Building, sprinklered',
      2,
    ],
    ['an amendment that says nothing', ['amendments'], [{ id: 'm', says: '' }], 'Amendment 1', 2],
  ])('%s', (_what, path, damage, where, openingsLeft) => {
    const opened = openWith(path, damage);
    expect(opened.setAside.map((one) => one.where)).toEqual([where]);
    expect(opened.setAside[0]?.says).not.toBe('');
    expect(JSON.stringify(opened.setAside[0]?.raw)).toContain(JSON.stringify(damage).slice(1, -1));
    expect(Object.keys(opened.project.openings)).toHaveLength(openingsLeft);
  });

  test('the rest of a damaged opening stays', () => {
    const opened = openWith(['openings', 'a', 'facts', 'leafWidthIn'], known(9000));
    expect(opened.project.openings['a']).toMatchObject({ mark: '101', facts: { latch: known('mortise') } });
    expect(opened.project.openings['a']?.facts.leafWidthIn).toBeUndefined();
  });

  test('the rest of a damaged space stays, so that openings keep the space they join', () => {
    const opened = openWith(['spaces', 's', 'use'], 'smithy');
    expect(opened.project.spaces['s']).toMatchObject({ use: null, areaFt2: 80, occupantLoad: 4 });
    expect(Object.keys(openWith(['hardwareSets', 'rim'], 3).project.hardwareSets)).toEqual(['bored']);
  });

  test.each<[string, string[], unknown, string]>([
    ['a weight above its range', ['weights', 'cost'], 101, 'Weights, cost'],
    ['weights that are a list', ['weights'], [], 'Weights'],
    ['notes that are a number', ['notes'], 7, 'Project, notes'],
    ['a name that is missing', ['name'], null, 'Project, name'],
    ['an id that cannot be one', ['id'], '', 'Project, id'],
    ['amendments that are text', ['amendments'], 'none', 'Amendments'],
    ['a building that is a list', ['building'], [1], 'project.building'],
    ['hardware sets that are text', ['hardwareSets'], 'HS-01', 'project.hardwareSets'],
    ['floors that are a list', ['floors'], [], 'project.floors'],
    ['an edition nobody knows', ['basis', 'nfpa101'], 1903, 'Code basis, nfpa101'],
    ['a basis that is text', ['basis'], 'IBC', 'Code basis'],
    ['a name without an end', ['name'], 'x'.repeat(5000), 'Project, name'],
    [
      'a floor with a name without an end',
      ['floors', 'f', 'name'],
      'x'.repeat(500),
      `Floor ${'x'.repeat(114)}`,
    ],
    ['an opening on a floor that is a number', ['openings', 'a', 'floorId'], 4, 'Opening 101, floor'],
    ['an opening with notes that are a list', ['openings', 'a', 'notes'], ['x'], 'Opening 101, notes'],
  ])('the rest of a file stays with %s', (_what, path, damage, where) => {
    const opened = openWith(path, damage);
    expect(opened.setAside.map((one) => one.where.replace(/, name$/, ''))).toEqual([
      where.replace(/, name$/, ''),
    ]);
    expect(opened.setAside[0]?.raw).toEqual(damage);
    expect(opened.setAside[0]?.says).not.toMatch(/invalid input|received/i);
    expect(Object.keys(opened.project.openings)).toHaveLength(2);
  });

  test('a book in an edition nobody knows stays adopted', () => {
    expect(openWith(['basis', 'nfpa101'], 1903).project.basis.nfpa101).toBe(2024);
  });

  test('what is set aside names its opening, travels with the file and is not set aside twice', () => {
    const { project } = openWith(['openings', 'a', 'facts', 'leafWidthIn'], known(9000));
    expect(project.setAside).toMatchObject([{ openingId: 'a', raw: known(9000) }]);
    const text = saveProjectText(project);
    const again = openProjectText(text);
    if (!again.ok) throw new Error('refused');
    expect(again.setAside).toEqual([]);
    expect(saveProjectText(again.project)).toBe(text);
  });

  test('nesting of any depth is kept as text, and the file can be saved again', () => {
    const deep = `${'['.repeat(20_000)}1${']'.repeat(20_000)}`;
    const text = JSON.stringify({
      format: 'latchward-project',
      formatVersion: newestFormat,
      project: house(),
    });
    const opened = openProjectText(text.replace('"notes":""', `"notes":"","more":${deep}`));
    if (!opened.ok) throw new Error('refused');
    expect(opened.setAside).toHaveLength(1);
    expect(opened.setAside[0]?.raw).toBe(deep.slice(64, -64));
    expect(saveProjectText(opened.project)).toContain('"[[[[');
  });

  test('of a name that stands twice the earlier entry is kept and named', () => {
    const text = JSON.stringify({
      format: 'latchward-project',
      formatVersion: newestFormat,
      project: house(),
    });
    const twice = text
      .replace('"openings":{', '"openings":{"b":{"mark":"999"},')
      .replace('"latch":', '"latch":{"is":"known","value":"rim \\" {x"},"latch":');
    const opened = openProjectText(twice);
    if (!opened.ok) throw new Error('refused');
    expect(opened.setAside).toMatchObject([
      { where: 'project.openings.a.facts.latch', openingId: 'a' },
      { where: 'project.openings.b', raw: '{"mark":"999"}' },
    ]);
    expect(opened.project.openings['b']?.mark).toBe('102');
    expect(openProjectText(text)).toMatchObject({ ok: true, setAside: [] });
  });

  test('a file without a single table is refused', () => {
    const opened = openProjectData({ format: 'latchward-project', formatVersion: 1, project: { name: 'x' } });
    expect(opened.ok ? 'opened' : opened.problem.kind).toBe('invalid');
  });
});

test('P8: for any project with one opening damaged anyhow: opened with the others whole, and the damage shown', () => {
  fc.assert(
    fc.property(
      aProject.filter((project) => Object.keys(project.openings).length > 1),
      fc.jsonValue({ maxDepth: 2 }),
      fc.constantFrom('mark', 'facts', 'notes', 'floorId', 'override', 'review', 'id', null),
      (project, damage, part) => {
        const file = JSON.parse(saveProjectText(project)) as { project: { openings: Record<string, Loose> } };
        const [victim, ...others] = Object.keys(file.project.openings);
        if (victim === undefined) return;
        if (part === null) file.project.openings[victim] = damage as unknown as Loose;
        else file.project.openings[victim] = { ...file.project.openings[victim], [part]: damage };
        const opened = openProjectData(file);
        if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
        const sameAgain = isDeepStrictEqual(opened.project.openings[victim], file.project.openings[victim]);
        expect(opened.setAside.length > 0 || sameAgain).toBe(true);
        for (const id of others) {
          expect(opened.project.openings[id]).toEqual(file.project.openings[id]);
        }
      },
    ),
    { numRuns: 500 },
  );
});
