import { describe, expect, it } from 'vitest';
import { importTable } from './csv.ts';
import type { GridRow } from './grid.ts';
import { classifyRows, findTable } from './layout.ts';

function grid(...lines: readonly string[]): { readonly rows: readonly GridRow[] } {
  return { rows: lines.map((line, index) => ({ number: index + 1, cells: line.split('|') })) };
}
function read(
  of: { readonly rows: readonly GridRow[] },
  more: Partial<Parameters<typeof importTable>[1]> = {},
) {
  const table = findTable(of);
  if (!table) throw new Error('no heading');
  let count = 0;
  return importTable(table, { newId: () => `id${(count += 1)}`, ...more });
}
const marks = (result: ReturnType<typeof read>) => result.openings.map((one) => one.mark);

const twoRows = grid(
  'SAMPLE BUILDING|||||||',
  '|DOOR|||FRAME||FIRE|',
  'MARK|WIDTH|HEIGHT|MATL|TYPE|MATL|RATING|REMARKS',
  'FIRST FLOOR|||||||',
  `101|3'-0"|7'-0"|SCWD|F1|HM|20 MIN|`,
  'MARK|WIDTH|HEIGHT|MATL|TYPE|MATL|RATING|REMARKS',
  '|||||||',
  `102|3'-0"|7'-0"|HM|F1|HM|90 MIN|NOT USED`,
  `102|3'-0"|7'-0"|HM|F1|HM|90 MIN|`,
  'SECOND FLOOR|||||||',
  `101|3'-0"|7'-0"|HM|F1|HM|B|`,
  'NOTE: VERIFY ALL SIZES|||||||',
  'GRAND TOTAL: 3|||||||',
);

describe('a schedule with two rows of headings', () => {
  it('takes the doors and nothing else; every other row says why', () => {
    const result = read(twoRows);
    expect(marks(result)).toEqual(['101', '102', '101 (SECOND FLOOR)']);
    expect(result.refused).toEqual([]);
    expect(result.skipped.map(({ row, is }) => `${row.number} ${is}`)).toEqual([
      '4 floor',
      '6 repeated',
      '7 blank',
      '8 notUsed',
      '10 floor',
      '12 note',
      '13 total',
    ]);
  });
  it('reads the parts under their groups and floors from their headings', () => {
    const result = read(twoRows);
    expect(result.openings[0]?.facts).toMatchObject({
      leafWidthIn: { is: 'known', value: 36 },
      leafMaterial: { is: 'assumed', value: 'woodSolidCore' },
      frameMaterial: { is: 'assumed', value: 'hollowMetal' },
      fireRatingMin: { is: 'known', value: 20 },
    });
    expect(result.openings[0]?.notes).toContain('FRAME TYPE: F1');
    expect(result.floors.map((floor) => [floor.name, floor.level])).toEqual([
      ['FIRST FLOOR', 1],
      ['SECOND FLOOR', 2],
    ]);
    expect(result.openings[2]?.facts.fireRatingMin).toBeUndefined();
  });
  it('accounts for every row: in is out', () => {
    const { openings, refused, skipped } = read(twoRows);
    expect(openings.length + refused.length + skipped.length).toBe(twoRows.rows.length - 3);
  });
  it('goes by what a person says of a row', () => {
    const corrected = read(twoRows, { rows: new Map([[5, 'omit' as const]]) });
    expect(marks(corrected)).toEqual(['102', '101']);
  });
});

describe('columns', () => {
  it('are mapped by hand, over every guess', () => {
    const of = grid('Mark|Portal|Rating', '1|OFFICE|Hall 7');
    const result = read(of, { columns: { portal: 'room', rating: 'unused' } });
    expect(result.spaces.map((space) => space.name)).toEqual(['OFFICE']);
    expect(result.problems).toEqual([]);
    expect(result.openings[0]?.notes).toBe('Rating: Hall 7');
  });

  it('that contradict each other are both kept and neither believed', () => {
    for (const header of [
      'Mark|Fire Rating|fireRatingMin',
      'Mark|fireRatingMin|fireRatingMin',
      'Mark|Rating|Fire Label',
    ]) {
      const result = read(grid(header, '1|20|90', '2|90|90'));
      expect(result.openings[0]?.facts.fireRatingMin).toBeUndefined();
      expect(result.openings[0]?.notes).toMatch(/20|90/);
      expect(result.problems.map((one) => one.says).join()).toContain(
        'say different things about Fire rating',
      );
      expect(result.openings[1]?.facts.fireRatingMin).toEqual({ is: 'known', value: 90 });
    }
  });
});

describe('damage', () => {
  it('says short rows, and refuses the halves of one that a line break cut', () => {
    const short = read({ rows: [...grid('Mark|Width|Rating').rows, { number: 2, cells: ['1'] }] });
    expect(short.problems.map((one) => one.says).join()).toContain('1 cell under 3 headings');
    const cut = read(
      grid('Mark|Room Name|Width|Rating', '101|Conference', `Room A|36"|20`, `102|Lab|36"|20`),
    );
    expect(marks(cut)).toEqual(['102']);
    expect(cut.refused.map((one) => one.row)).toEqual([2, 3]);
  });
  it.each(['1\u200b', '1\n2', '101"', ' \u200b ', '1\u0000'])('refuses the mark %j', (mark) => {
    expect(read(grid('Mark|Width', `${mark}|36"`)).openings).toEqual([]);
  });
  it('leaves the width open that is too wide for one leaf', () => {
    for (const size of ['6070', '7-0 x 3-0']) {
      expect(read(grid('Mark|Size', `1|${size}`)).openings[0]?.facts.leafWidthIn).toBeUndefined();
    }
  });
  it('refuses a mark that its format may have changed', () => {
    const rows = [
      ...grid('Mark| Width ').rows,
      { number: 2, cells: ['122', '36"'], doubts: new Map([[0, 'An exponent.']]) },
      {
        number: 3,
        cells: ['123', '36"'],
        doubts: new Map([
          [1, 'A date.'],
          [2, 'A formula.'],
        ]),
      },
    ];
    const { problems, openings } = read({ rows });
    expect(problems).toEqual([
      { row: 2, column: 'Mark', says: 'An exponent.', refuses: true },
      { row: 3, column: 'Width', says: 'A date.', refuses: false },
      { row: 3, column: null, says: 'A formula.', refuses: false },
    ]);
    expect(openings.map(({ mark }) => mark)).toEqual(['123']);
  });
});

describe('the heading of a table', () => {
  const found = (...lines: readonly string[]) => {
    const table = findTable(grid(...lines));
    return table && `${table.header.join('|')} over ${table.rows.length}`;
  };
  const title = (count: number) => Array.from({ length: count }, () => 'a|sheet');
  const long = (length: number) => 'w'.repeat(length);

  it.each<[string, readonly string[], string | undefined]>([
    ['names the mark', ['Level|Width|Height', '1|36"|84"'], undefined],
    [
      'is in the first forty rows or joined with them',
      [...title(41), 'Mark|Hand', '1|LH'],
      'Mark|Hand over 1',
    ],
    ['and not below them', [...title(42), 'Mark|Hand', '1|LH'], undefined],
    [
      'may be a few rows below a poorer one, whatever units that has',
      ['Mark|Width (in)', '1|36', '2|36', 'Mark|Width|Hand', '3|36"|LH'],
      'Mark|Width|Hand over 1',
    ],
    [
      'is not looked for among the doors',
      ['Mark|Width', '1|36"', '2|36"', '3|36"', 'Mark|Width|Hand|9', '4|36"|LH'],
      'Mark|Width over 5',
    ],
    [
      'takes units from the row below',
      ['Mark|Width|Hand', '|(in)|', '1|36|LH'],
      'Mark|Width (in)|Hand over 1',
    ],
    [
      'joins a group with what is below it, and a cell over two rows with itself',
      ['| DOOR ||ITEM|LEVEL|Width', 'NO.| MARK |PULL|Item| |Inside|(mm)', '1|101|x|y|2|36"|9'],
      'NO.|DOOR MARK|DOOR PULL|ITEM|LEVEL|Width Inside|Width (mm) over 1',
    ],
    ['reads a unit in words', ['Mark|Width|Item', '|mm|Main', '1|915|x'], 'Mark|Width (mm)|Item Main over 1'],
    [
      'leaves a unit under nothing',
      ['|Mark|Width|Hand', 'in||(in)|', '1|2|36|LH'],
      'in|Mark|Width (in)|Hand over 1',
    ],
    [
      'takes no note for a part of it',
      ['Item|Door|Width', 'Notes:| |', '1|101|36"'],
      'Item|Door|Width over 2',
    ],
    [
      'takes no row with a figure for a part of it',
      ['Item|Door|Width|Source', 'Remarks|||see 7', '1|101|36"|x'],
      'Item|Door|Width|Source over 2',
    ],
    [
      'takes no sentence for a part of it',
      ['Item|Door|Width|Source', `Remarks|||${long(60)}`, '1|101|36"|x'],
      'Item|Door|Width|Source over 2',
    ],
    [
      'takes a row of words for a part of it',
      ['Item|Door|Width|Source', `Remarks|||${long(59)}`, '1|101|36"|x'],
      `Remarks|Door|Width|Source ${long(59)} over 1`,
    ],
  ])('%s', (_name, lines, header) => {
    expect(found(...lines)).toBe(header);
  });
});

describe('rows below the heading', () => {
  const classes = (header: string, markAt: number | undefined, ...lines: readonly string[]) => {
    const table = { header: header.split('|'), headerRows: [], rows: grid(...lines).rows };
    return classifyRows(table, markAt).map(({ is }) => is);
  };

  it.each([
    [' | |', 'blank'],
    ['ROOF-1|36"|LH', 'opening'],
    ['MEZZ. FLOOR||', 'floor'],
    [`${'x'.repeat(54)} floor||`, 'floor'],
    [`${'x'.repeat(55)} floor||`, 'note'],
    ['Notes|see|x', 'note'],
    ['Suite 101 A||', 'opening'],
    ['A  1  B||', 'opening'],
    ['Suite 101 west wing||', 'note'],
    ['a b c d e f|36"|LH', 'opening'],
    ['a b c d e f g|36"|LH', 'note'],
    ['MARK| |', 'repeated'],
    ['MARK|||Width', 'opening'],
  ])('%s is %s', (line, is) => {
    expect(classes('Mark|Width|Hand', 0, line)).toEqual([is]);
  });

  it.each([
    ['NOTE A|101|LH', 'opening'],
    ['Legend||HM', 'note'],
    ['a b c d e f g|101|x', 'opening'],
    ['7', 'note'],
  ])('%s is %s where the mark stands second', (line, is) => {
    expect(classes('Item|Mark|Hand', 1, line)).toEqual([is]);
  });

  it('a figure by itself is no door where no column holds the mark', () => {
    expect(classes('Width|Height|Hand', undefined, '12||')).toEqual(['note']);
  });

  it.each<[string, readonly string[], readonly string[]]>([
    ['two halves', ['101|Room', 'A|36"|LH'], ['broken', 'broken']],
    ['short rows', ['101|Room', '102|Hall'], ['opening', 'opening']],
    ['a blank row and a short one', ['|', '101|36"|LH'], ['blank', 'opening']],
    ['a short row and a blank one', ['101|36"|LH', '|'], ['opening', 'blank']],
    ['a whole row and a mark', ['101|Room|36"|LH', '102'], ['opening', 'opening']],
    ['a mark and a whole row', ['101', '102|Room|36"|LH'], ['opening', 'opening']],
  ])('%s', (_name, lines, are) => {
    expect(classes('Mark|Room|Width|Hand', 0, ...lines)).toEqual(are);
  });
});
