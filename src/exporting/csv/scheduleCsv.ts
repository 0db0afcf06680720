import { type OpeningColumn, openingColumns, type OpeningRow } from '../../domain/schedules/openings.ts';
import { csvText } from './cells.ts';

const columns = Object.keys(openingColumns) as readonly OpeningColumn[];

/** The opening schedule as a file: the columns of the print, one row per opening. */
export function scheduleCsv(rows: readonly OpeningRow[]): string {
  return csvText(
    columns.map((column) => openingColumns[column]),
    rows.map((row) => columns.map((column) => row[column])),
  );
}
