import Papa from 'papaparse';
import type { Grid, GridRow } from '../domain/import/grid.ts';
import { withoutGuard } from '../domain/text/formulaGuard.ts';

export type ReadCsv =
  | { readonly ok: true; readonly grid: Grid; readonly delimiter: string }
  | { readonly ok: false; readonly says: string };

/** What a spreadsheet may put between cells. */
const delimiters = [',', ';', '\t', '|'] as const;

/** The one under which most of the first rows have the same number of cells, and many of them; prose has commas too. */
function delimiterOf(text: string): string {
  let best: { delimiter: string; evenness: number } = { delimiter: ',', evenness: 0 };
  for (const delimiter of delimiters) {
    const { data } = Papa.parse<string[]>(text, {
      delimiter,
      newline: '\n',
      preview: 20,
      skipEmptyLines: true,
    });
    const rowsByWidth = new Map<number, number>();
    for (const row of data) rowsByWidth.set(row.length, (rowsByWidth.get(row.length) ?? 0) + 1);
    for (const [width, rows] of rowsByWidth) {
      const evenness = rows * (width - 1);
      if (evenness > best.evenness) best = { delimiter, evenness };
    }
  }
  return best.delimiter;
}

/**
 * Text → cells. Line ends of every kind may stand in one file, as when a title was put above an export. Blank lines
 * stay, so that the row numbers of a message are those a person counts in the file.
 */
export function readCsv(text: string): ReadCsv {
  const body = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  if (body.trim() === '') return { ok: false, says: 'The file is empty.' };
  if (body.includes('\u0000')) {
    return { ok: false, says: 'The file is not plain text; save it as CSV in UTF-8.' };
  }
  const delimiter = delimiterOf(body);
  const parsed = Papa.parse<string[]>(body, { delimiter, newline: '\n', skipEmptyLines: false });
  const broken = parsed.errors.find((error) => error.type === 'Quotes');
  if (broken) {
    const row = (broken.row ?? 0) + 1;
    return { ok: false, says: `A quotation mark is not closed, or stands inside a cell, near row ${row}.` };
  }
  const table = parsed.data;
  // The line break that ends the file is not a row.
  if (table.at(-1)?.every((cell) => cell === '')) table.pop();
  const usual = usualWidth(table);
  const rows = table.map((cells, index): GridRow => {
    const swallowed = cells.some((cell) => holdsRows(cell, delimiter, usual));
    return {
      number: index + 1,
      cells: cells.map(withoutGuard),
      ...(swallowed
        ? { broken: 'A quotation mark opened in this row takes in whole rows below it; fix the quotes.' }
        : {}),
    };
  });
  return { ok: true, delimiter, grid: { name: '', hidden: false, rows } };
}

function usualWidth(table: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const row of table) counts.set(row.length, (counts.get(row.length) ?? 0) + 1);
  return [...counts].toSorted((a, b) => b[1] - a[1])[0]?.[0] ?? 0;
}

/** A text of several lines in which one line has as many separators as a row: rows that a quote has swallowed. */
function holdsRows(cell: string, delimiter: string, width: number): boolean {
  if (width < 2 || !cell.includes('\n')) return false;
  return cell.split('\n').some((line) => line.split(delimiter).length >= width);
}

/** What a spreadsheet puts on the clipboard → cells: tabs between, cells of several lines or with quotes in quotes. */
export function readPasted(text: string): readonly (readonly string[])[] {
  const body = text.replaceAll('\u0000', '').replace(/\r\n?/g, '\n').replace(/\n$/, '');
  if (body === '') return [['']];
  const read = (quoteChar: string) =>
    Papa.parse<string[]>(body, { delimiter: '\t', newline: '\n', quoteChar, skipEmptyLines: false });
  const parsed = read('"');
  // An inch mark at the beginning of a text is no quote: then no cell was quoted at all.
  const { data } = parsed.errors.some((error) => error.type === 'Quotes') ? read('\u0000') : parsed;
  return data.map((cells) => cells.map(withoutGuard));
}
