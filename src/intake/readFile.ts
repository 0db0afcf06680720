import { gridOfModel, modelInWords, type ReadModel } from '../domain/import/buildingModel.ts';
import { cobieModel, cobieSheets } from '../domain/import/cobie.ts';
import type { Grid } from '../domain/import/grid.ts';
import { readCsv } from './csv.ts';
import { isModel, type ModelReader } from './ifc/isModel.ts';
import { readText } from './text.ts';
import { readWorkbook } from './workbook.ts';

export type ReadSchedule =
  | { readonly ok: true; readonly grids: readonly Grid[]; readonly note: string }
  | { readonly ok: false; readonly says: string };

/** Larger than any door list; a browser tab would only die of it. */
const mostBytes = 60_000_000;

const notHere: ModelReader = () =>
  Promise.resolve({ ok: false, says: 'This is a building model, and only tables are read here.' });

/** Bytes of a door schedule → grids of cells, whatever the file is called: both ways in read by this alone. */
export async function readSchedule(
  bytes: Uint8Array,
  readModel: ModelReader = notHere,
): Promise<ReadSchedule> {
  if (bytes.length === 0) return { ok: false, says: 'The file is empty.' };
  if (isModel(bytes))
    return asTable(await readModel(bytes), 'Rows are numbered as the records of the model.');
  if (bytes.length > mostBytes) {
    return {
      ok: false,
      says: `The file is ${Math.round(bytes.length / 1e6)} MB, too large for a door list.`,
    };
  }
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) {
    const book = await readWorkbook(bytes, cobieSheets);
    if (!book.ok) return book;
    const model = cobieModel(book.grids);
    if (model) return asTable(model, 'Read as COBie: Component, Type, Space and Attribute joined.');
    // Sheets of those names, and yet another workbook: then it is read whole.
    const whole = cobieSheets(book.grids.map(({ name }) => name)) ? await readWorkbook(bytes) : book;
    return whole.ok ? { ...whole, note: '' } : whole;
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

function asTable(read: ReadModel, how: string): ReadSchedule {
  if (!read.ok) return read;
  const note = [how, modelInWords(read.model), ...read.model.notes].join(' ');
  return { ok: true, grids: [gridOfModel(read.model)], note };
}
