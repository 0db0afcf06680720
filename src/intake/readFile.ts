import type { Grid } from '../domain/import/grid.ts';
import { readCsv } from './csv.ts';
import { readText } from './text.ts';
import { readWorkbook } from './workbook.ts';

export type ReadSchedule =
  | { readonly ok: true; readonly grids: readonly Grid[]; readonly note: string }
  | { readonly ok: false; readonly says: string };

/** Larger than any door list; a browser tab would only die of it. */
const mostBytes = 60_000_000;

/** Bytes of a door schedule → grids of cells, whatever the file is called: both ways in read by this alone. */
export async function readSchedule(bytes: Uint8Array): Promise<ReadSchedule> {
  if (bytes.length === 0) return { ok: false, says: 'The file is empty.' };
  if (bytes.length > mostBytes) {
    return {
      ok: false,
      says: `The file is ${Math.round(bytes.length / 1e6)} MB, too large for a door list.`,
    };
  }
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) {
    const book = await readWorkbook(bytes);
    return book.ok ? { ...book, note: '' } : book;
  }
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf) {
    return {
      ok: false,
      says: 'This is an old workbook (.xls) or one with a password. Save it as .xlsx without a password and open that.',
    };
  }
  const text = readText(bytes);
  return text.ok ? readScheduleText(text.text, text.note) : text;
}

export function readScheduleText(text: string, note = ''): ReadSchedule {
  const csv = readCsv(text);
  return csv.ok ? { ok: true, grids: [csv.grid], note } : csv;
}
