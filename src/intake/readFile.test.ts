import { workbookOf } from '../exporting/xlsx/workbook.ts';
import { zipSync } from 'fflate';
import { writeXlsx } from 'hucre/xlsx';
import { describe, expect, it } from 'vitest';
import { bestTable } from '../domain/import/sheets.ts';
import { readSchedule } from './readFile.ts';
import { zipRefusal } from './zip.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

describe('door lists as text', () => {
  it('reads line ends of every kind in one file', async () => {
    const read = await readSchedule(bytes('Title\r\n\r\nmark,notes\n1,a\r2,b\r\n3,c\n'));
    const table = read.ok && bestTable(read.grids);
    expect(table && table.ok && table.table.rows.map((row) => row.cells)).toEqual([
      ['1', 'a'],
      ['2', 'b'],
      ['3', 'c'],
    ]);
  });
  it('refuses a row in which a quote took in others', async () => {
    const read = await readSchedule(bytes('mark,notes,x\n1,a,b\n2,"a\n3,b,c\n4,d",e\n5,a,b\n'));
    expect(read.ok && read.grids[0]?.rows.map((row) => row.broken !== undefined)).toEqual([
      false,
      false,
      true,
      false,
    ]);
  });
  it.each(['utf16le', 'latin1'] as const)('reads %s', async (encoding) => {
    const text = `${encoding === 'utf16le' ? '\uFEFF' : ''}mark,notes\n1,Caf\u00e9\n`;
    const read = await readSchedule(new Uint8Array(Buffer.from(text, encoding)));
    expect(read.ok && read.grids[0]?.rows[1]?.cells).toEqual(['1', 'Caf\u00e9']);
  });
});

describe('workbooks', () => {
  it('gives merged cells their text, and says what is hidden, struck, a date or an exponent', async () => {
    const book = await writeXlsx({
      sheets: [
        {
          name: 'Doors',
          rows: [
            ['Mark', 'DOOR', null],
            [null, 'Width', 'Height'],
            ['101', '36"', 84],
            ['102', '36"', new Date(Date.UTC(2026, 2, 6))],
          ],
          merges: [{ startRow: 0, startCol: 1, endRow: 0, endCol: 2 }],
          rowDefs: new Map([[3, { hidden: true }]]),
        },
        { name: 'Old', rows: [['Mark', 'Width']], hidden: true },
      ],
    });
    const read = await readSchedule(book);
    if (!read.ok) throw new Error(read.says);
    expect(read.grids.map((grid) => grid.hidden)).toEqual([false, true]);
    expect(read.grids[0]?.rows.map((row) => row.cells)).toEqual([
      ['Mark', 'DOOR', 'DOOR'],
      ['', 'Width', 'Height'],
      ['101', '36"', '84'],
      ['102', '36"', '2026-03-06'],
    ]);
    expect(read.grids[0]?.rows[3]).toMatchObject({ hidden: true });
    expect([...(read.grids[0]?.rows[3]?.doubts?.keys() ?? [])]).toEqual([2]);
  });

  it.each<[string, (book: Uint8Array) => Uint8Array]>([
    ['cut off', (book) => book.slice(0, book.length / 2)],
    ['only its first letters', () => bytes('PK')],
    ['an old workbook', () => Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0)],
  ])('%s is refused with a sentence', async (_name, damage) => {
    const book = await writeXlsx({ sheets: [{ name: 'A', rows: [['Mark'], ['1']] }] });
    expect(await readSchedule(damage(book))).toMatchObject({ ok: false, says: expect.stringMatching(/\.$/) });
  });

  it.each<[string, string, string]>([
    ['a path out of it', '../../x', 'points outside'],
    ['a program', 'xl/vbaProject.bin', 'macros'],
  ])('an archive with %s is not opened', (_name, name, says) => {
    expect(zipRefusal(zipSync({ [name]: bytes('x') }))).toContain(says);
    expect(zipRefusal(zipSync({ 'xl/sheet.xml': bytes('x') }))).toBeUndefined();
  });
});

it('reads a workbook whole that only has sheets called as those of COBie', async () => {
  const sheets = ['Component', 'Type', 'Space', 'Doors'].map((name) => ({
    name,
    head: ['Mark', 'Width'],
    rows: [[`${name} 1`, '36 in']],
  }));
  const read = await readSchedule(await workbookOf(sheets));
  expect(read.ok && read.grids.map(({ name }) => name)).toEqual(sheets.map(({ name }) => name));
});
