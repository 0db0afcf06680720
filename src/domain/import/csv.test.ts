import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import { projectSchema } from '../model/project.ts';
import { importRows } from '../testing/tables.ts';
import { importEdits } from './again.ts';
import { findTable } from './layout.ts';
import { roomUseOf } from './rooms.ts';

function read(header: string, ...rows: readonly string[]) {
  let count = 0;
  const cells = (line: string) => line.split('|').map((cell) => cell.trim());
  return importRows(cells(header), rows.map(cells), { newId: () => `id${(count += 1)}` });
}
const says = (result: ReturnType<typeof read>) => result.problems.map((one) => one.says);

describe('our own columns', () => {
  it('takes keys, labels, units and yes or no as known', () => {
    const result = read(
      'mark|floor|from|to|doorType|leafMaterial|leafWidthIn|fireRatingMin|panicPresent|Security need',
      `101|Ground|Corridor|Office|single|hollow metal|3'-0"|1.5 h|Yes|High`,
    );
    expect(result.problems).toEqual([]);
    expect(result.openings[0]?.facts).toEqual({
      doorType: { is: 'known', value: 'single' },
      leafMaterial: { is: 'known', value: 'hollowMetal' },
      leafWidthIn: { is: 'known', value: 36 },
      fireRatingMin: { is: 'known', value: 90 },
      panicPresent: { is: 'known', value: true },
      securityNeed: { is: 'known', value: 'high' },
    });
    expect(result.spaces.map((space) => [space.name, space.kind])).toEqual([
      ['Office', 'room'],
      ['Corridor', 'corridor'],
    ]);
    const [corridor] = result.spaces.filter((space) => space.name === 'Corridor');
    expect(result.openings[0]?.fromSpaceId).toBe(corridor?.id);
  });

  it('keeps "unknown", assumptions with their source, and empty cells apart', () => {
    const result = read('mark|latch|wallRatingMin|handing', '101|unknown|60 min (assumed: plan A-601)|');
    expect(result.openings[0]?.facts).toEqual({
      latch: { is: 'unknown' },
      wallRatingMin: { is: 'assumed', value: 60, from: 'plan A-601' },
    });
  });

  it('leaves a fact open whose cell cannot be read, says why and keeps the words', () => {
    const result = read(
      'mark|occupantLoad|doorType|panicPresent|fireRatingMin',
      '101|-3|single|yes|45',
      '102|3|barn door|yes|45',
      '103|3|single|perhaps|45',
      '104|3.5|single|yes|45',
      '105|3|single|yes|45 bananas',
      '106|3|single|yes|75',
    );
    expect(result.openings).toHaveLength(6);
    expect(result.refused).toEqual([]);
    expect(result.openings[0]?.facts.occupantLoad).toBeUndefined();
    expect(result.openings[0]?.facts.fireRatingMin).toEqual({ is: 'known', value: 45 });
    expect(result.openings[0]?.notes).toBe('occupantLoad: -3');
    expect(result.problems[0]).toEqual({
      row: 2,
      column: 'occupantLoad',
      says: 'Occupant load served cannot be below 0 people.',
      refuses: false,
    });
    expect(says(result)[1]).toMatch(
      /^Door type cannot be “barn door”; it may be Single swinging leaf; Pair of leaves; /,
    );
    expect(says(result)[2]).toBe('Panic hardware present is answered by yes or no, not by “perhaps”.');
    expect(says(result)[3]).toBe('Occupant load served must be a whole number.');
    expect(says(result)[4]).toBe(
      'Fire rating of the door cannot be read from “45 bananas”; write it in min.',
    );
  });

  it('puts facts of the building aside and says where rows disagree', () => {
    const result = read('mark|sprinklered', '101|yes', '102|no');
    expect(result.building).toEqual({ sprinklered: { is: 'known', value: true } });
    expect(result.openings[0]?.facts).toEqual({});
    expect(says(result)[0]).toContain('row 2 says otherwise');
  });
});

describe('marks', () => {
  it('refuses a mark that stands twice and names both rows', () => {
    const result = read('Mark|Notes', '101|a', '102|b', '101|c');
    expect(result.openings).toHaveLength(2);
    expect(result.problems).toEqual([
      { row: 4, column: 'Mark', says: 'Mark 101 stands in row 2 and again in row 4.', refuses: true },
    ]);
    expect(result.refused[0]?.cells).toEqual(['101', 'c']);
  });

  it('meets a mark of the project, refuses an empty mark and a missing column', () => {
    const into = { ...newProject('p', 'P'), openings: { x: newOpening('x', '101') } };
    const result = importRows(
      ['mark', 'notes'],
      [
        ['101', ''],
        ['', 'no mark'],
      ],
      { newId: () => 'n', into },
    );
    expect([...result.meets.values()]).toEqual(['x']);
    expect(says(result)).toEqual(['An opening needs a mark.']);
    expect(says(read('width|height', '36|84'))[0]).toContain('No column holds the door mark');
  });

  it('counts rows as the file does, blank ones included', () => {
    const result = importRows(
      ['mark', 'occupantLoad'],
      [
        ['', ''],
        ['1', '-1'],
      ],
      { newId: () => 'n', firstRow: 5 },
    );
    expect(result.problems[0]?.row).toBe(6);
  });

  it('a row that stands for several doors comes in as one, and says so', () => {
    const result = read('Mark|Count', '101|3');
    expect(says(result)).toEqual([
      'The row stands for 3 doors and comes in as one. Give each of the others a mark of its own.',
    ]);
    expect(result.openings).toMatchObject([{ mark: '101', notes: 'Count: 3' }]);
    expect(result.refused).toEqual([]);
  });
});

const architect =
  'Door No.|Level|Room No.|Room Name|Adjoining Room Name|Door Description|Width (mm)|Door Material|Frame|Fire Rating|Hardware Set|Threshold|Notes';

describe('an architect’s schedule', () => {
  it('assumes with the words it read, and knows what is written as a value', () => {
    const result = read(
      architect,
      '101|First Floor|1A3|MECH. RM.|CORRIDOR|Flush Solid Core Wood|915|Wood|STEEL|45 MIN|101|IT|CARD READER',
    );
    const [opening] = result.openings;
    expect(opening?.facts).toMatchObject({
      leafWidthIn: { is: 'known', value: 36.02 },
      fireRatingMin: { is: 'known', value: 45 },
      doorType: { is: 'assumed', value: 'single', from: 'column Width (mm): 915; no word of a pair' },
      leafMaterial: {
        is: 'assumed',
        value: 'woodSolidCore',
        from: 'column Door Description: Flush Solid Core Wood',
      },
      frameMaterial: { is: 'assumed', value: 'hollowMetal', from: 'column Frame: STEEL' },
      roomUse: { is: 'assumed', value: 'equipment', from: 'column Room Name: MECH. RM.' },
      readerSides: { is: 'assumed', value: 'secure', from: 'column Notes: CARD READER' },
    });
    expect(opening?.notes).toBe(
      'CARD READER\nDoor Description: Flush Solid Core Wood; Hardware Set: 101; Threshold: IT',
    );
    expect(result.floors).toMatchObject([{ name: 'First Floor', level: 1 }]);
    expect(result.spaces.map((one) => one.name)).toEqual(['MECH. RM. 1A3', 'CORRIDOR']);
  });

  it('leaves open what can mean two things, and keeps the text', () => {
    const result = read(architect, '101|||||Pair|1830|Wood|KD|B|9||');
    const [opening] = result.openings;
    expect(opening?.facts).toEqual({
      doorType: { is: 'assumed', value: 'pair', from: 'column Door Description: Pair' },
    });
    expect(says(result)).toEqual([
      'The width may mean one leaf or all of them; enter the width of a leaf.',
      'Wood alone does not say which core; the leaf stays open.',
      '“KD” does not say what the frame is; it stays open.',
      expect.stringContaining('“B” is a class of opening, not a time'),
    ]);
    for (const text of ['Width (mm): 1830', 'Door Material: Wood', 'Frame: KD', 'Fire Rating: B']) {
      expect(opening?.notes).toContain(text);
    }
  });

  it('takes no width without a unit, and reads one that has it', () => {
    expect(says(read('Door No.|Width', '101|36'))[0]).toContain('has no unit');
    expect(read('Door No.|Width', `101|3'-0"`).openings[0]?.facts.leafWidthIn).toEqual({
      is: 'known',
      value: 36,
    });
  });

  it('takes 4 ft for the widest single leaf, also when written 1220 mm', () => {
    const type = (width: string) => read('Door No.|Width (mm)', `1|${width}`).openings[0]?.facts.doorType;
    expect(type('1220')).toMatchObject({ is: 'assumed', value: 'single' });
    expect(type('1250')).toBeUndefined();
  });

  it('reads a size column, but not the width of a pair', () => {
    const single = read('Door No.|Size', `1|3'-0" x 7'-0"`).openings[0]?.facts;
    expect(single).toMatchObject({ leafWidthIn: { value: 36 }, leafHeightIn: { value: 84 } });
    const pair = read('Door No.|Size', '1|PR 6070');
    expect(pair.openings[0]?.facts.leafWidthIn).toBeUndefined();
    expect(pair.openings[0]?.facts).toMatchObject({
      doorType: { is: 'assumed', value: 'pair' },
      leafHeightIn: { value: 84 },
    });
    expect(pair.openings[0]?.notes).toBe('Size: PR 6070');
  });

  it('never puts two floors on one level', () => {
    const result = read('Door No.|Level', '1|First Floor', '2|Level 1', '3|Mezzanine', '4|Basement');
    const levels = result.floors.map((floor) => floor.level);
    expect(new Set(levels).size).toBe(4);
    expect(levels[0]).toBe(1);
    expect(levels[3]).toBe(-1);
  });

  it('sees a contradiction between description and width column', () => {
    const result = read(architect, '101|||||Flush Steel - 1830 x 2134mm|915||||||');
    expect(result.openings[0]?.facts.doorType).toBeUndefined();
    expect(says(result)[0]).toContain('it may be a pair');
  });

  it('takes a low leaf for a partition and assumes nothing', () => {
    const result = read(architect, '101|||||0865 x 1500mm||||||| ');
    expect(result.openings[0]?.facts).toEqual({});
    expect(says(result)[0]).toContain('too low for a door');
  });

  it('turns a way named first and a room named beside it, but never columns called from and to', () => {
    const name = (result: ReturnType<typeof read>, side: 'fromSpaceId' | 'toSpaceId') =>
      result.spaces.find((space) => space.id === result.openings[0]?.[side])?.name;
    const turned = read('Door No.|Room Name|Adjoining Room Name', '1|CORRIDOR|OFFICE');
    expect([name(turned, 'fromSpaceId'), name(turned, 'toSpaceId')]).toEqual(['CORRIDOR', 'OFFICE']);
    const told = read('mark|from|to', '1|Office|Corridor');
    expect([name(told, 'fromSpaceId'), name(told, 'toSpaceId')]).toEqual(['Office', 'Corridor']);
    const stair = read('Door No.|Room Name|Adjoining Room Name', '1|STAIR|CORRIDOR');
    expect([name(stair, 'fromSpaceId'), name(stair, 'toSpaceId')]).toEqual(['STAIR', 'CORRIDOR']);
    expect(stair.openings[0]?.facts.egressRole).toMatchObject({ is: 'assumed', value: 'stairEntry' });
  });

  it('never assumes a rating, nor a role that lets a door off', () => {
    const gentle = ['noOccupiedSpace', 'sealedOff', 'convenience'];
    fc.assert(
      fc.property(
        fc.array(
          fc.constantFrom(
            '-',
            'N/A',
            '',
            'STAIR',
            'CORRIDOR',
            'JAN. CL.',
            'SHAFT',
            'ROOF',
            'OFFICE',
            'Exterior',
            'Wood',
            'PR',
          ),
          { minLength: 13, maxLength: 13 },
        ),
        (cells) => {
          const result = importRows(architect.split('|'), [['1', ...cells.slice(1)]], { newId: () => 'n' });
          const facts = result.openings[0]?.facts;
          expect(facts?.fireRatingMin).toBeUndefined();
          expect(facts?.wallRatingMin).toBeUndefined();
          const role = facts?.egressRole;
          expect(role === undefined || (role.is === 'assumed' && !gentle.includes(role.value))).toBe(true);
        },
      ),
    );
  });
});

describe('room names', () => {
  it('says one use or none', () => {
    expect(roomUseOf('JAN. CL.', false)).toBe('closet');
    expect(roomUseOf('W. TOILET', false)).toBe('multiToilet');
    expect(roomUseOf('TOILET', true)).toBeUndefined();
    expect(roomUseOf('COMM. RM', true)).toBe('serverRoom');
    expect(roomUseOf('PHARM.', true)).toBe('pharmacy');
    expect(roomUseOf('LAB / OFFICE', true)).toBeUndefined();
    expect(roomUseOf('W. STAFF LOCKER/TOILET', true)).toBeUndefined();
  });

  it('takes uses that a rule treats gently for single leaves only', () => {
    expect(roomUseOf('ELEC. CL.', true)).toBe('electricalRoom');
    expect(roomUseOf('ELEC. CL.', false)).toBeUndefined();
    expect(roomUseOf('STORAGE', false)).toBeUndefined();
  });
});

describe('P7: bringing it in', () => {
  it('names each problem by row and column, and a mark that stands twice by both rows', () => {
    const result = read('mark|leafWidthIn', '1|36', '|36', '3|wide', '1|36');
    const told = result.problems.map(({ row, column, refuses }) => ({ row, column, refuses }));
    expect(told).toEqual([
      { row: 3, column: 'mark', refuses: true },
      { row: 4, column: 'leafWidthIn', refuses: false },
      { row: 5, column: 'mark', refuses: true },
    ]);
    expect(result.refused.map(({ row }) => row)).toEqual([3, 5]);
  });

  it('brings in all of it or nothing: one edit that no longer fits refuses the others', () => {
    const result = read('mark|leafWidthIn', '1|36', '2|36');
    const edits = importEdits(newProject('p', 'P'), result);
    const unfit = { kind: 'setFact', id: 'gone', fact: 'leafWidthIn', value: { is: 'unknown' } } as const;
    const project = newProject('p', 'P');
    const before = JSON.stringify(project);
    expect(applyEdits(project, [...edits, unfit]).ok).toBe(false);
    expect(JSON.stringify(project)).toBe(before);
  });

  it('makes edits that a project accepts and that leave a valid project', () => {
    const result = read(architect, '1|First Floor|1|OFFICE|CORRIDOR|||||||| ', '2|Roof||STAIR||||||||| ');
    const project = newProject('p', 'P');
    const applied = applyEdits(project, importEdits(project, result));
    expect(applied.ok && projectSchema.safeParse(applied.project).success).toBe(true);
    const levels = applied.ok ? Object.values(applied.project.floors).map((floor) => floor.level) : [];
    expect(new Set(levels).size).toBe(2);
  });

  it('brings the facts of the building, and writes over no answer', () => {
    const result = read('mark|sprinklered|highRise', '1|yes|no', '2|yes|no');
    const project = {
      ...newProject('p', 'P'),
      building: { sprinklered: { is: 'known', value: false } },
    } as const;
    const applied = applyEdits(project, importEdits(project, result));
    expect(applied.ok && applied.project.building).toEqual({
      sprinklered: { is: 'known', value: false },
      highRise: { is: 'known', value: false },
    });
  });

  it('uses the floors and spaces the project has', () => {
    const first = read('mark|floor|to', '1|Ground|Hall');
    const floors = Object.fromEntries(first.floors.map((one) => [one.id, one]));
    const spaces = Object.fromEntries(first.spaces.map((one) => [one.id, one]));
    const second = importRows(['mark', 'floor', 'to'], [['2', 'GROUND', 'hall']], {
      newId: () => 'new',
      into: { floors, spaces, openings: {} },
    });
    expect([second.floors, second.spaces]).toEqual([[], []]);
    expect(second.openings[0]?.toSpaceId).toBe(first.openings[0]?.toSpaceId);
  });

  it('finds the header below a title', () => {
    const rows = (...cells: string[][]) => ({
      rows: cells.map((one, index) => ({ number: index + 1, cells: one })),
    });
    const found = findTable(rows(['DOOR SCHEDULE'], [''], ['Door No.', 'Width'], ['1', '36']));
    expect(found?.rows.map((row) => row.number)).toEqual([4]);
    expect(findTable(rows(['a', 'b']))).toBeUndefined();
  });
});

it('says of a GlobalId that is too long that it stays in the notes', () => {
  const id = 'x'.repeat(121);
  const { openings, problems } = importRows(['mark', 'GlobalId'], [['1', id]], { newId: () => 'n' });
  expect(openings.map(({ externalId, notes }) => [externalId, notes])).toEqual([
    [undefined, `GlobalId: ${id}`],
  ]);
  expect(problems.map(({ column, says, refuses }) => [column, says, refuses])).toEqual([
    ['GlobalId', 'A GlobalId has at most 120 characters; it stays in the notes.', false],
  ]);
});

describe('our own survey table', () => {
  it('is given no place that it does not name, and keeps a name as long as a name may be', () => {
    let count = 0;
    const long = 'x'.repeat(120);
    const back = importRows(
      ['mark', 'floor', 'from', 'to', 'exterior'],
      [
        ['1', long, '', 'Hall', 'yes'],
        ['2', '', long, '', ''],
      ],
      { newId: () => `n${(count += 1)}` },
    );
    expect(back.problems).toEqual([]);
    expect(back.openings.map(({ fromSpaceId, notes }) => [fromSpaceId === null, notes])).toEqual([
      [true, ''],
      [false, ''],
    ]);
    expect(back.spaces.map(({ name }) => name)).toEqual(['Hall', long]);
  });
});
