import type { WriteSheet } from 'hucre/xlsx';

/** One part of the workbook: a head and rows under it. */
export interface Part {
  readonly name: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
  /** Number formats by head; the others are whole numbers or text. */
  readonly formats?: Readonly<Record<string, string>>;
}

/**
 * The workbook as bytes: one sheet for each part, its head frozen, repeated on every printed page and as wide as what
 * stands under it. Text is written as text, so nothing that somebody typed becomes a formula.
 */
export async function workbookOf(parts: readonly Part[]): Promise<Uint8Array> {
  const { writeXlsx } = await import('hucre/xlsx');
  return writeXlsx({ sheets: parts.map(sheetOf) });
}

const longestSheetName = 31;
const narrowest = 6;
const widest = 60;

function sheetOf({ name, head, rows, formats = {} }: Part): WriteSheet {
  return {
    name: name.replaceAll(/[[\]:*?/\\]/g, ' ').slice(0, longestSheetName),
    columns: head.map((title, column) => ({
      width: widthOf([title, ...rows.map((row) => row[column] ?? '')]),
      ...(formats[title] === undefined ? {} : { numFmt: formats[title] }),
    })),
    rows: [[...head], ...rows.map((row) => [...row])],
    freezePane: { rows: 1 },
    pageSetup: {
      orientation: 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: '$1:$1',
    },
  };
}

function widthOf(cells: readonly (string | number)[]): number {
  const longest = cells.reduce<number>((most, cell) => Math.max(most, String(cell).length), 0);
  return Math.min(widest, Math.max(narrowest, longest + 2));
}
