import { describe, expect, it } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { importRows } from '../testing/tables.ts';
import { againInWords, type AgainChoices, compareAgain, importEdits, usualChoices } from './again.ts';

const at = '2026-03-01T08:00:00Z';
const withOpenings = (...openings: readonly Opening[]): Project => ({
  ...newProject('p', 'P'),
  openings: Object.fromEntries(openings.map((opening) => [opening.id, opening])),
});
const project = withOpenings(
  // The width was entered by a person, the height came with an earlier list.
  {
    ...newOpening('a', '101'),
    facts: {
      leafWidthIn: { is: 'known', value: 36, at, by: 'Kim' },
      leafHeightIn: { is: 'known', value: 84 },
    },
  },
  { ...newOpening('b', '102'), notes: 'Seen.', facts: { fireRatingMin: { is: 'known', value: 20 } } },
  newOpening('c', '103'),
);

function against(into: Project, head: readonly string[], ...rows: readonly (readonly string[])[]) {
  let count = 0;
  return importRows(head, rows, { newId: () => `n${(count += 1)}`, into });
}
function after(into: Project, imported: ReturnType<typeof against>, choices?: AgainChoices) {
  const applied = applyEdits(into, importEdits(into, imported, choices));
  if (!applied.ok) throw new Error(applied.problem.kind);
  return applied;
}

describe('a newer list over a project', () => {
  const head = ['Mark', 'Width', 'Height', 'Fire rating'];
  const newer = () =>
    against(project, head, ['101', '34 in', '80 in', ''], ['102', '', '', '20'], ['104', '36 in', '', '']);

  it('says what comes, what changes, what is the same and what it does not list', () => {
    const again = compareAgain(project, newer());
    expect(again.added.map(({ mark }) => mark)).toEqual(['104']);
    expect(again.same).toBe(1);
    expect(again.gone.map(({ mark }) => mark)).toEqual(['103']);
    expect(again.changed.map(({ what, mine, theirs, stays }) => [what, mine, theirs, stays])).toEqual([
      ['Leaf width', '36 in', '34 in', 'surveyed here'],
      ['Leaf height', '84 in', '80 in', ''],
      ['Door type', '', 'Single swinging leaf, assumed', ''],
    ]);
    expect(againInWords(again)).toBe(
      'Against the project: 1 opening added, 1 changed, 1 the same, 1 not in the file.',
    );
  });

  it('leaves what was surveyed, takes what was imported before, and keeps every door', () => {
    const { openings } = after(project, newer()).project;
    expect(openings['a']?.facts.leafWidthIn).toEqual(project.openings['a']?.facts.leafWidthIn);
    expect(openings['a']?.facts.leafHeightIn).toEqual({ is: 'known', value: 80 });
    expect(Object.values(openings).map(({ mark }) => mark)).toEqual(['101', '102', '103', '104']);
  });

  it('takes the surveyed one too where a person says so, and removes what is gone only then', () => {
    const choices = {
      takes: { 'a leafWidthIn': true, 'a leafHeightIn': false },
      removeGone: true,
      rooms: {},
    };
    const { openings } = after(project, newer(), choices).project;
    expect(openings['a']?.facts.leafWidthIn).toMatchObject({ value: 34 });
    expect(openings['a']?.facts.leafHeightIn).toMatchObject({ value: 84 });
    expect(openings['c']).toBeUndefined();
  });

  it('is one step that is taken back whole', () => {
    const applied = after(project, newer(), { ...usualChoices, removeGone: true, rooms: {} });
    const back = applyEdits(applied.project, applied.inverse, true);
    expect(back.ok && back.project).toEqual(project);
  });

  it('says nothing new the second time', () => {
    const once = after(project, newer(), { takes: {}, removeGone: true, rooms: {} }).project;
    const rows = [
      ['101', '34 in', '80 in', ''],
      ['102', '', '', '20'],
      ['104', '36 in', '', ''],
    ];
    const second = compareAgain(once, against(once, head, ...rows));
    expect(second.changed.filter(({ stays }) => stays === '')).toEqual([]);
    expect([second.added, second.gone]).toEqual([[], []]);
  });
});

describe('doors with a GlobalId', () => {
  const model = withOpenings(
    { ...newOpening('a', 'A104'), externalId: 'G1' },
    { ...newOpening('b', 'B1'), externalId: 'G2' },
  );

  it('are met under another mark, and keep the one they have', () => {
    const imported = against(model, ['Mark', 'GlobalId'], ['Door Type A-1', 'G1']);
    expect([...imported.meets.values()]).toEqual(['a']);
    const { openings } = after(model, imported).project;
    expect(Object.values(openings).map(({ mark }) => mark)).toEqual(['A104', 'B1']);
    expect(compareAgain(model, imported).changed).toMatchObject([
      { what: 'Mark', stays: 'stands here already' },
    ]);
  });

  it('are not mixed up with another door of the same mark', () => {
    const imported = against(model, ['Mark', 'GlobalId'], ['A104', 'G9']);
    expect(imported.meets.size).toBe(0);
    expect(imported.openings[0]?.mark).toBe('A104 (2)');
  });

  it('gain it where only the mark was known', () => {
    const plain = withOpenings(newOpening('a', '101'));
    const imported = against(plain, ['Mark', 'GlobalId'], ['101', 'G7']);
    expect(after(plain, imported).project.openings['a']?.externalId).toBe('G7');
  });
});

it('leaves a place out that only a change needs which is not taken', () => {
  const floors = { f: { id: 'f', name: 'Ground', level: 0 } };
  const there = { ...withOpenings({ ...newOpening('a', '101'), floorId: 'f' }), floors };
  const imported = against(there, ['Mark', 'Floor'], ['101', 'Attic']);
  expect(Object.keys(after(there, imported).project.floors)).toEqual(['f']);
  const taken = after(there, imported, {
    takes: { 'a floorId': true },
    removeGone: false,
    rooms: {},
  }).project;
  expect(Object.values(taken.floors).map(({ name }) => name)).toEqual(['Ground', 'Attic']);
});

type Facts = Opening['facts'];
const told = (into: Project, head: string, row: string) =>
  compareAgain(into, against(into, head.split('|'), row.split('|'))).changed.map(
    ({ what, mine, theirs, stays }) => `${what}: ${mine} → ${theirs}${stays === '' ? '' : `, ${stays}`}`,
  );

describe('a fact of the file beside one of the door', () => {
  const fact = (is: Facts['latch'] | undefined): Project =>
    withOpenings({
      ...newOpening('a', '101'),
      facts: is === undefined ? {} : ({ leafWidthIn: is } as Facts),
    });
  const known = { is: 'known', value: 36 } as unknown as Facts['latch'];
  const assumed = { is: 'assumed', value: 36, from: 'plan' } as unknown as Facts['latch'];
  const seen = { is: 'known', value: 36, at } as unknown as Facts['latch'];
  const guessed = { is: 'assumed', value: 36, from: 'plan', at } as unknown as Facts['latch'];
  const kept = 'known here, only assumed by the file';

  it.each<[string, Facts['latch'] | undefined, string, string]>([
    ['36 (assumed: x)', known, '', ''],
    ['34 (assumed: x)', known, '36 in → 34 in, assumed', kept],
    ['36', assumed, '36 in, assumed → 36 in', ''],
    ['36 (assumed: x)', assumed, '', ''],
    ['34 (assumed: x)', assumed, '36 in, assumed → 34 in, assumed', ''],
    ['unknown', known, '', ''],
    ['36', { is: 'unknown' }, 'unknown → 36 in', ''],
    ['unknown', { is: 'unknown' }, '', ''],
    ['unknown', undefined, ' → unknown', ''],
    ['36', seen, '', ''],
    ['34', seen, '36 in → 34 in', 'surveyed here'],
    ['36', guessed, '', ''],
  ])('%s beside %j', (cell, mine, change, stays) => {
    const expected = change === '' ? [] : [`Leaf width: ${change}${stays === '' ? '' : `, ${stays}`}`];
    expect(told(fact(mine), 'mark|leafWidthIn', `101|${cell}`)).toEqual(expected);
  });
});

describe('what else the file says of a door', () => {
  const by = { candidate: 'magnet/safe/sensor', reason: 'as built', by: '', at };
  const there: Project = {
    ...withOpenings(
      { ...newOpening('a', '101'), floorId: 'f', toSpaceId: 's', notes: ' seen ', override: by },
      newOpening('b', '102'),
    ),
    floors: { f: { id: 'f', name: 'Ground', level: 0 } },
    spaces: { s: { ...newSpace('s', 'Office'), floorId: 'f' } },
  };
  const choice = 'mark|Choice by hand|Reason of the choice|Chosen at';

  it.each<[string, string, readonly string[]]>([
    ['mark|floor|to|notes', '101|ground|OFFICE|seen', []],
    // A list without floors finds no space of a floor; the name is the same.
    ['mark|to', '101|office', []],
    ['mark|floor|to', '101||', []],
    ['mark|floor|to', '101|Attic|', ['Floor: Ground → Attic, stands here already']],
    ['mark|floor|to|notes', '102|Ground|Office|new', ['Notes:  → new', 'Floor:  → Ground', 'To:  → Office']],
    [choice, `101|magnet/safe/sensor|as built|${at}`, []],
    [choice, '101|||', []],
    [
      choice,
      `101|magnet/safe/sensor|why|${at}`,
      ['Choice by hand: magnet/safe/sensor: as built → magnet/safe/sensor: why, stands here already'],
    ],
    [choice, `102|magnet/safe/sensor|why|${at}`, ['Choice by hand:  → magnet/safe/sensor: why']],
  ])('%s: %s', (head, row, changes) => {
    expect(told(there, head, row)).toEqual(changes);
  });

  it.each([
    [undefined, ''],
    [{ is: 'unknown' }, ''],
    [{ is: 'known', value: true }, undefined],
    [{ is: 'known', value: false }, 'stands here already'],
    [{ is: 'known', value: false, at }, 'surveyed here'],
  ] as const)('the building: yes beside %j', (mine, stays) => {
    const into = { ...there, building: mine === undefined ? {} : { sprinklered: mine } } as Project;
    const again = compareAgain(into, against(into, ['mark', 'sprinklered'], ['101', 'yes']));
    expect(again.changed.map((one) => one.stays)).toEqual(stays === undefined ? [] : [stays]);
  });
});
