import Papa from 'papaparse';

export type ReadCsv =
  | { readonly ok: true; readonly table: readonly (readonly string[])[]; readonly delimiter: string }
  | { readonly ok: false; readonly says: string };

/** What a spreadsheet may put between cells. */
const delimiters = [',', ';', '\t', '|'] as const;

/** The one under which most of the first rows have the same number of cells, and many of them; prose has commas too. */
function delimiterOf(text: string): string {
  let best: { delimiter: string; evenness: number } = { delimiter: ',', evenness: 0 };
  for (const delimiter of delimiters) {
    const { data } = Papa.parse<string[]>(text, { delimiter, preview: 20, skipEmptyLines: true });
    const rowsByWidth = new Map<number, number>();
    for (const row of data) rowsByWidth.set(row.length, (rowsByWidth.get(row.length) ?? 0) + 1);
    for (const [width, rows] of rowsByWidth) {
      const evenness = rows * (width - 1);
      if (evenness > best.evenness) best = { delimiter, evenness };
    }
  }
  return best.delimiter;
}

/** Text → cells. Blank lines stay, so that the row numbers of a message are those a person counts in the file. */
export function readCsv(text: string): ReadCsv {
  const body = text.replace(/^\uFEFF/, '');
  if (body.trim() === '') return { ok: false, says: 'The file is empty.' };
  if (body.includes('\u0000')) {
    return { ok: false, says: 'The file is not plain text; save it as CSV in UTF-8.' };
  }
  const parsed = Papa.parse<string[]>(body, {
    delimiter: delimiterOf(body),
    skipEmptyLines: false,
  });
  const broken = parsed.errors.find((error) => error.type === 'Quotes');
  if (broken) {
    const row = (broken.row ?? 0) + 1;
    return { ok: false, says: `A quotation mark is not closed, or stands inside a cell, near row ${row}.` };
  }
  const table = parsed.data;
  // The line break that ends the file is not a row.
  if (table.at(-1)?.every((cell) => cell === '')) table.pop();
  return { ok: true, table, delimiter: parsed.meta.delimiter };
}
