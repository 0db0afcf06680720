import type { Cell, CellValue, MergeRange, Sheet } from 'hucre/xlsx';
import type { Grid, GridRow } from '../domain/import/grid.ts';
import { zipRefusal } from './zip.ts';

export type ReadWorkbook =
  | { readonly ok: true; readonly grids: readonly Grid[] }
  | { readonly ok: false; readonly says: string };

/** More than a thousand columns or a million cells is no door schedule, whatever the sheet says of its size. */
const mostColumns = 1_000;
const mostRows = 50_000;

/** Which sheets to read, by the names of all of them; undefined reads the whole workbook. */
export type PickSheets = (names: readonly string[]) => ReadonlySet<string> | undefined;

/**
 * Bytes of an XLSX workbook → one grid a sheet. The library is loaded when the first workbook comes. Sheets that are picked are
 * read for their values alone: what is struck out or shown as a date is told of whole workbooks only.
 */
export async function readWorkbook(bytes: Uint8Array, pick?: PickSheets): Promise<ReadWorkbook> {
  const refusal = zipRefusal(bytes);
  if (refusal !== undefined) return { ok: false, says: refusal };
  const { readXlsx } = await import('hucre/xlsx');
  try {
    const names: string[] = [];
    if (pick) await readXlsx(bytes, { sheets: ({ name }) => names.push(name) < 0 });
    const picked = pick?.(names);
    const { sheets } = await readXlsx(bytes, {
      readStyles: picked === undefined,
      maxRows: mostRows,
      ...(picked === undefined ? {} : { sheets: ({ name }: { readonly name: string }) => picked.has(name) }),
    });
    if (sheets.some((sheet) => sheet.rows.length >= mostRows)) {
      return { ok: false, says: `A sheet has ${mostRows} rows or more; save the door schedule by itself.` };
    }
    return { ok: true, grids: sheets.map(gridOf) };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, says: `The workbook cannot be read (${why}).` };
  }
}

function gridOf(sheet: Sheet): Grid {
  const merged = mergedTexts(sheet);
  // A sheet ends its rows at the last cell with something in it; they are all meant to be as wide as the widest.
  const width = Math.min(mostColumns, Math.max(0, ...sheet.rows.map((values) => values.length)));
  const rows = sheet.rows.map((values, row): GridRow => {
    const doubts = new Map<number, string>();
    const cells = Array.from({ length: width }, (_, column) => {
      const value = values[column] ?? null;
      const at = `${row},${column}`;
      const read = textOf(value, sheet.cells?.get(at));
      if (read.doubt !== undefined) doubts.set(column, read.doubt);
      return read.text === '' ? (merged.get(at) ?? '') : read.text;
    });
    const written = values.flatMap((value, column) =>
      value === null || value === ''
        ? []
        : [sheet.cells?.get(`${row},${column}`)?.style?.font?.strikethrough],
    );
    return {
      number: row + 1,
      cells,
      ...(sheet.rowDefs?.get(row)?.hidden ? { hidden: true } : {}),
      ...(written.length > 0 && written.every((one) => one === true) ? { struck: true } : {}),
      ...(doubts.size > 0 ? { doubts } : {}),
    };
  });
  return { name: sheet.name, hidden: sheet.hidden === true || sheet.veryHidden === true, rows };
}

/** A merged cell says its text once; every cell under it is meant to say the same. */
function mergedTexts(sheet: Sheet): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  for (const range of sheet.merges ?? []) {
    const text = textOf(sheet.rows[range.startRow]?.[range.startCol] ?? null, undefined).text;
    if (text !== '') fill(texts, range, text);
  }
  return texts;
}

function fill(texts: Map<string, string>, range: MergeRange, text: string): void {
  const lastRow = Math.min(range.endRow, range.startRow + 500);
  const lastColumn = Math.min(range.endCol, mostColumns);
  for (let row = range.startRow; row <= lastRow; row += 1) {
    for (let column = range.startCol; column <= lastColumn; column += 1) texts.set(`${row},${column}`, text);
  }
}

function textOf(
  value: CellValue,
  cell: Cell | undefined,
): { readonly text: string; readonly doubt?: string } {
  if (value === null) return { text: '' };
  if (value instanceof Date) {
    const text = Number.isNaN(value.getTime()) ? '' : value.toISOString().slice(0, 10);
    const doubt =
      'The workbook holds a date here; a mark or a size such as 3-6 may have been turned into it.';
    return { text, doubt };
  }
  if (typeof value === 'boolean') return { text: value ? 'yes' : 'no' };
  if (typeof value === 'number') {
    const text = String(Number(value.toPrecision(12)));
    const exponent = /E\+/i.test(cell?.style?.numFmt ?? '') || text.includes('e');
    const doubt =
      'The workbook shows this number with an exponent; a mark such as 1E2 may have been turned into it.';
    return exponent ? { text, doubt } : { text };
  }
  return { text: value };
}
