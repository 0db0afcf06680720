import ExcelJS from 'exceljs';
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { billOf } from '../../domain/bid/bill.ts';
import { decideAll } from '../../domain/decide/decide.ts';
import { openProjectText } from '../../domain/versions/file.ts';
import { coverSheet } from '../sheets/coverSheet.ts';
import { draftOf } from '../sheets/stamp.ts';
import { projectParts } from './projectParts.ts';
import { type Part, workbookOf } from './workbook.ts';

/** Read by a library that did not write it. */
async function readBack(bytes: Uint8Array) {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
  );
  return book.worksheets;
}
const valuesOf = (sheet: ExcelJS.Worksheet) => {
  const rows: unknown[][] = [];
  sheet.eachRow({ includeEmpty: true }, (row) => {
    rows.push(
      Array.from({ length: sheet.columnCount }, (_, column) => row.getCell(column + 1).value ?? null),
    );
  });
  return rows;
};
const nasty = [
  '=1+2',
  '+1',
  '-1',
  '@SUM(A1)',
  '\tx',
  'a\nb',
  '＝1',
  "'=1",
  "''x",
  ' lead',
  '1E5',
  '3-6',
  '0012',
];

describe('workbook', () => {
  it('comes back cell by cell, whatever is typed, and holds no formula', async () => {
    const part: Part = {
      name: 'Rows',
      head: ['Text', 'Number'],
      rows: nasty.map((text, index) => [text, index + 0.5]),
    };
    const [sheet] = await readBack(await workbookOf([part]));
    if (!sheet) throw new Error('no sheet');
    const rows = valuesOf(sheet);
    expect(rows[0]).toEqual(['Text', 'Number']);
    expect(rows.slice(1).map((row) => row[1])).toEqual(nasty.map((_, index) => index + 0.5));
    expect(rows.slice(1).map((row) => row[0])).toEqual(nasty);
    sheet.eachRow((row) => row.eachCell((cell) => expect(cell.type).not.toBe(ExcelJS.ValueType.Formula)));
  });

  it('has a frozen head that prints on every page, widths, and number formats', async () => {
    const part: Part = {
      name: 'A/B',
      head: ['Name', 'Price'],
      rows: [['a long name that needs room', 1234.5]],
      formats: { Price: '#,##0.00' },
    };
    const [sheet] = await readBack(await workbookOf([part]));
    expect(sheet?.name).toBe('A B');
    expect(sheet?.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
    expect(sheet?.pageSetup.printTitlesRow).toMatch(/^\$?1:\$?1$/);
    expect(sheet?.getColumn(1).width).toBeGreaterThan(20);
    expect(sheet?.getCell('B2').numFmt).toBe('#,##0.00');
  });
});

describe('workbook of the small office', () => {
  let parts: readonly Part[];
  let bidders: readonly Part[];
  beforeAll(() => {
    const opened = openProjectText(readFileSync('demo-data/small-office.json', 'utf8'));
    if (!opened.ok) throw new Error('The office does not open.');
    const decisions = decideAll(opened.project);
    const bare = billOf(opened.project, decisions);
    const prices = Object.fromEntries(bare.rows.map((row) => [row.key, { id: row.key, amount: 98_765.43 }]));
    const project = { ...opened.project, prices };
    const bill = billOf(project, decisions);
    const cover = coverSheet(project, decisions, bill, draftOf('2026-03-02'), new Set(['schedule']));
    parts = projectParts(project, decisions, bill, cover, true);
    bidders = projectParts(project, decisions, bill, cover, false);
  }, 60_000);

  it('has a sheet for every part, and every cell comes back', async () => {
    const sheets = await readBack(await workbookOf(parts));
    expect(sheets.map((sheet) => sheet.name)).toEqual(parts.map((part) => part.name));
    for (const [index, sheet] of sheets.entries()) {
      const { head = [], rows = [] } = parts[index] ?? {};
      const wanted = [head, ...rows].map((row) => head.map((_, column) => row[column] ?? null));
      const blank = (cell: unknown) => (cell === '' ? null : cell);
      expect(valuesOf(sheet).map((row) => row.map(blank))).toEqual(wanted.map((row) => row.map(blank)));
    }
  });

  it('shows no figure of money on the copy for bidders', () => {
    expect(JSON.stringify(parts)).toContain('98765.43');
    expect(JSON.stringify(bidders)).not.toMatch(/98765|Unit price|Amount/);
  });
});
