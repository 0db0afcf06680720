import { counted } from '../text/counted.ts';
import type { GridColumn, GridRow, Ground } from './columns.ts';
import { copyText } from './columns.ts';
import { type Empties, type Plan, planTexts, shortened, type Target } from './plan.ts';
import type { Line } from './lines.ts';
import type { Box } from './select.ts';

/** What is selected of the rows and columns shown. */
export interface Part {
  readonly rows: readonly GridRow[];
  readonly columns: readonly GridColumn[];
}

/** What of the lines and columns shown lies within a range; heads of groups are passed over. */
export function partOf(lines: readonly Line[], columns: readonly GridColumn[], box: Box): Part {
  const within = lines.slice(box.top, box.bottom + 1);
  return {
    rows: within.flatMap((line) => (line.is === 'row' ? [line.row] : [])),
    columns: columns.slice(box.left, box.right + 1),
  };
}

/** The range that is filled from its first row; one row alone is filled from the row above. */
export function partToFill(lines: readonly Line[], columns: readonly GridColumn[], box: Box): Part {
  const part = partOf(lines, columns, box);
  if (part.rows.length !== 1) return part;
  const above = lines.slice(0, box.top).findLast((line) => line.is === 'row');
  return above?.is === 'row' ? { ...part, rows: [above.row, ...part.rows] } : part;
}

/** All rows shown, and the range counted among them alone. */
export function rowsAlone(
  lines: readonly Line[],
  columns: readonly GridColumn[],
  box: Box,
): { readonly shown: Part; readonly box: Box } {
  const rowsIn = (part: readonly Line[]) => part.filter((line) => line.is === 'row').length;
  const top = rowsIn(lines.slice(0, box.top));
  const count = rowsIn(lines.slice(box.top, box.bottom + 1));
  const everything = { top: 0, bottom: lines.length - 1, left: 0, right: columns.length - 1 };
  return {
    shown: partOf(lines, columns, everything),
    box: { ...box, top, bottom: top + Math.max(1, count) - 1 },
  };
}

/** How much is selected; empty for one cell. */
export function selectedInWords({ rows, columns }: Part): string {
  const cells = rows.length * columns.length;
  if (cells < 2) return '';
  return `${counted(cells, 'cell')} selected: ${counted(rows.length, 'opening')}, ${counted(columns.length, 'column')}`;
}

/** The texts of a range, row by row. */
export function copied({ rows, columns }: Part, ground: Ground): readonly (readonly string[])[] {
  return rows.map((row) => columns.map((column) => copyText(column, row, ground)));
}

export type Pasted = readonly (readonly string[])[];

/**
 * Texts into the grid from the upper left cell of what is selected. Where the selection is some whole number of times as
 * large, such as a column under one copied cell, they are repeated until it is full.
 */
export function planPaste(
  pasted: Pasted,
  shown: Part,
  { top, left, bottom, right }: Box,
  ground: Ground,
  newId: () => string,
  empties: Empties = 'leave',
): Plan {
  const high = pasted.length;
  const wide = Math.max(0, ...pasted.map((cells) => cells.length));
  if (high === 0 || wide === 0) return { cells: [], edits: [], outside: ['Nothing was copied.'] };
  const [down, across] = [bottom - top + 1, right - left + 1];
  const fills = down % high === 0 && across % wide === 0;
  const [rows, columns] = fills ? [down, across] : [high, wide];
  const targets: Target[] = [];
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      const [row, column] = [shown.rows[top + r], shown.columns[left + c]];
      const text = pasted[r % high]?.[c % wide];
      if (row && column && text !== undefined) targets.push({ row, column, text });
    }
  }
  const plan = planTexts(targets, ground, newId, empties);
  return { ...plan, outside: outside(pasted, shown, top, left, wide) };
}

/** Rows below the last opening and columns beyond the last column, by what is in them. */
function outside(pasted: Pasted, shown: Part, top: number, left: number, wide: number): readonly string[] {
  const below = pasted.length - (shown.rows.length - top);
  const beyond = wide - (shown.columns.length - left);
  const sample = (texts: readonly string[]) => {
    const first = texts.find((text) => text.trim() !== '');
    return first === undefined ? 'They are empty.' : `The first reads “${shortened(first)}”.`;
  };
  return [
    ...(beyond > 0
      ? [
          `${counted(beyond, 'column')} too many: the schedule ends before ${beyond === 1 ? 'it' : 'them'}. ${sample(pasted.flatMap((cells) => cells.slice(wide - beyond)))}`,
        ]
      : []),
    ...(below > 0
      ? [
          `${counted(below, 'row')} too many: a paste makes no new openings; import a door list under Files instead. ${sample(pasted.slice(pasted.length - below).flat())}`,
        ]
      : []),
  ];
}
