import { describe, expect, it } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { newProject, newSpace } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { loadOf } from '../egress/spaceLoad.ts';
import { importEdits, usualChoices } from './again.ts';
import { importTable } from './csv.ts';
import type { GivenSpace, SaidOfRoom } from './grid.ts';
import { roomUsesInWords, takingAll } from './roomProposals.ts';

const given = (
  name: string,
  said: readonly SaidOfRoom[] = [],
  more: Partial<GivenSpace> = {},
): GivenSpace => ({
  number: '',
  name,
  floor: 'Level 1',
  areaFt2: null,
  netFt2: null,
  said: [...said, { where: 'name', text: name }],
  people: null,
  ...more,
});

function read(spaces: readonly GivenSpace[], into: Project = newProject('p', 'P')) {
  let count = 0;
  return importTable(
    {
      header: ['Mark'],
      headerRows: [],
      rows: [{ number: 2, cells: ['101'], isDoor: true }],
      places: { floors: [], spaces },
    },
    { newId: () => `n${(count += 1)}`, into },
  );
}

function after(
  imported: ReturnType<typeof read>,
  rooms: Readonly<Record<string, boolean>>,
  into = newProject('p', 'P'),
) {
  const applied = applyEdits(into, importEdits(into, imported, { ...usualChoices, rooms }));
  if (!applied.ok) throw new Error(applied.problem.kind);
  return applied;
}
const spaceOf = (project: Project, name: string) =>
  Object.values(project.spaces).find((space) => space.name === name);

describe('the rooms of a model', () => {
  const office = given('File storage', [{ where: 'class', text: '13-15 11 34 11: Office' }], {
    areaFt2: 300,
  });
  const hall = given('Class room', [], { areaFt2: 500, netFt2: 420, people: 12 });
  const rooms = () => read([office, hall, given('Flur'), given('Corridor')]);

  it('propose a use, and nothing comes in unless it is taken', () => {
    const imported = rooms();
    expect(imported.rooms.proposals.map(({ room, reads, doubt }) => [room, reads, doubt !== ''])).toEqual([
      ['File storage', 'Business', true],
      ['Class room', 'Classroom, by the net area of 420 ft²', false],
      ['Class room', '12 people', true],
    ]);
    expect(imported.rooms.proposals[0]?.doubt).toBe(
      'Its name “File storage” means Accessory storage, mechanical.',
    );
    expect(imported.rooms.unread).toEqual([
      { words: 'name “Flur”', why: 'These words are not known here.', rooms: ['Flur'] },
    ]);
    expect(roomUsesInWords(imported.rooms)).toBe(
      'A use can be read for 2 rooms, 1 of them in doubt; 1 number of occupants proposed; 1 room not read; 1 space people only pass through. Nothing of it comes in unless you take it.',
    );
    expect(
      Object.values(after(imported, {}).project.spaces).map(({ use, occupantLoad }) => [use, occupantLoad]),
    ).toEqual([1, 2, 3, 4].map(() => [null, null]));
  });

  it('come in with what was taken, where it is from, and the larger load governs', () => {
    const imported = rooms();
    const { project, inverse } = after(imported, takingAll(imported.rooms.proposals, true));
    const room = spaceOf(project, 'Class room');
    expect(room).toMatchObject({
      use: 'classroom',
      areaFt2: 420,
      occupantLoad: 12,
      useFrom: 'building model: name “Class room”',
      occupantLoadFrom: 'building model: number of occupants 12',
    });
    if (!room) throw new Error('no room');
    const load = loadOf(room, project.basis);
    expect(load.people).toBe(21);
    expect(load.reasons[0]?.says).toBe('The use was read from the building model: name “Class room”.');
    const undone = applyEdits(project, inverse);
    expect(undone.ok && undone.project).toEqual(newProject('p', 'P'));
  });

  it('leave what is in doubt when only the rest is taken', () => {
    const imported = rooms();
    const { project } = after(imported, takingAll(imported.rooms.proposals, false));
    expect([spaceOf(project, 'File storage')?.use, spaceOf(project, 'Class room')?.use]).toEqual([
      null,
      'classroom',
    ]);
    expect(spaceOf(project, 'Class room')?.occupantLoad).toBeNull();
  });

  it('never write over what the project says: it is named beside the proposal', () => {
    const into: Project = {
      ...newProject('p', 'P'),
      floors: { f: { id: 'f', name: 'Level 1', level: 1 } },
      spaces: {
        s: { ...newSpace('s', 'File storage'), floorId: 'f', use: 'accessoryStorage', areaFt2: 280 },
        t: { ...newSpace('t', 'Class room'), floorId: 'f', use: 'classroom', occupantLoad: 12 },
      },
    };
    const again = read([office, hall], into);
    expect(again.rooms.proposals.map(({ room, doubt }) => [room, doubt])).toEqual([
      [
        'File storage',
        'Its name “File storage” means Accessory storage, mechanical. The project says Accessory storage, mechanical.',
      ],
    ]);
    const { project } = after(again, { 'use Level 1 File storage': true }, into);
    expect(project.spaces['s']).toMatchObject({ use: 'business', areaFt2: 280 });
  });

  it('of one name and number are one space, without a size or a use anybody could trust', () => {
    const alike = read([given('Office', [], { areaFt2: 100 }), given('Office', [], { areaFt2: 900 })]);
    expect(alike.rooms.proposals).toEqual([]);
    expect(alike.spaces.map(({ name, areaFt2 }) => [name, areaFt2])).toEqual([['Office', null]]);
    expect(alike.problems.map(({ says }) => says)).toEqual([
      '2 rooms of the model on Level 1 are called Office. They come in as one space without area and use; give them names of their own.',
    ]);
  });
});
