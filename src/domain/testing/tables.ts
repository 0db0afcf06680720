import { type Imported, type ImportOptions, importTable } from '../import/csv.ts';
import type { Table } from '../import/layout.ts';

/** A table whose heading is in the row before `firstRow`, as a test writes it down. */
export function tableOf(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  firstRow = 2,
): Table {
  return { header, headerRows: [], rows: rows.map((cells, index) => ({ number: firstRow + index, cells })) };
}

export function importRows(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  { firstRow, ...options }: ImportOptions & { readonly firstRow?: number },
): Imported {
  return importTable(tableOf(header, rows, firstRow), options);
}
