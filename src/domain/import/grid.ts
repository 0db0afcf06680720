/** A table of plain cells, however it was stored. What a format does to its cells is said beside them. */
export interface Grid {
  /** Name of the sheet; empty where a file has only one. */
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly GridRow[];
}

export interface GridRow {
  /** As a person counts rows in the file. */
  readonly number: number;
  readonly cells: readonly string[];
  readonly hidden?: boolean;
  /** Every cell with words in it is struck through. */
  readonly struck?: boolean;
  /** Why the row cannot be what somebody wrote; it is then refused. */
  readonly broken?: string;
  /** Cells that the format may have changed, by column, with a sentence each. */
  readonly doubts?: ReadonlyMap<number, string>;
}

export function isBlank(row: Pick<GridRow, 'cells'>): boolean {
  return row.cells.every((cell) => cell.trim() === '');
}
