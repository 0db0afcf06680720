/** A table of plain cells, however it was stored. What a format does to its cells is said beside them. */
export interface Grid {
  /** Name of the sheet; empty where a file has only one. */
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly GridRow[];
  /** Floors and rooms that came beside the table, as in a building model. */
  readonly places?: GivenPlaces;
}

export interface GivenPlaces {
  readonly floors: readonly { readonly name: string; readonly elevationMm: number | null }[];
  readonly spaces: readonly {
    readonly number: string;
    readonly name: string;
    readonly floor: string;
    readonly areaFt2: number | null;
  }[];
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
  /** The format itself says that it is a door, so that no word in it makes it a heading or a note. */
  readonly isDoor?: boolean;
  /** A doubt about the whole row. */
  readonly remark?: string;
  /** Cells that the format may have changed, by column, with a sentence each. */
  readonly doubts?: ReadonlyMap<number, string>;
}

export function isBlank(row: Pick<GridRow, 'cells'>): boolean {
  return row.cells.every((cell) => cell.trim() === '');
}
