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
  readonly spaces: readonly GivenSpace[];
}

/** Words about a room, and where a model has them. */
export interface SaidOfRoom {
  readonly where: 'occupancy' | 'class' | 'type' | 'name';
  readonly text: string;
}

/** A room as a building model states it. Absent is null or empty. */
export interface GivenSpace {
  readonly number: string;
  readonly name: string;
  readonly floor: string;
  /** Gross where it is stated, as the larger load, otherwise whatever area there is. */
  readonly areaFt2: number | null;
  readonly netFt2: number | null;
  readonly said: readonly SaidOfRoom[];
  /** Number of occupants the designer gave. */
  readonly people: number | null;
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
