export interface Spot {
  readonly row: number;
  readonly column: number;
}

/** A range between two corners, and the cell with the cursor; all alike where one cell is selected. */
export interface Selection {
  readonly from: Spot;
  readonly to: Spot;
  readonly at: Spot;
}

/** First and last row and column, both within. */
export interface Box {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

export interface Bounds {
  readonly rows: number;
  readonly columns: number;
}

const within = (value: number, count: number) => Math.max(0, Math.min(count - 1, value));

export function only(row: number, column: number): Selection {
  const at = { row, column };
  return { from: at, to: at, at };
}

const same = (a: Spot, b: Spot) => a.row === b.row && a.column === b.column;

/** The cursor by so many rows and columns; with `extend` a corner of the range goes with it instead. */
export function moved(before: Selection, by: Spot, extend: boolean, bounds: Bounds): Selection {
  const start = extend ? before.to : before.at;
  return movedTo(before, { row: start.row + by.row, column: start.column + by.column }, extend, bounds);
}

export function movedTo(before: Selection, there: Spot, extend: boolean, bounds: Bounds): Selection {
  const to = { row: within(there.row, bounds.rows), column: within(there.column, bounds.columns) };
  if (!extend) return { from: to, to, at: to };
  // Where whole rows or columns are selected the cursor is no corner, and stays.
  return { from: before.from, to, at: same(before.at, before.to) ? to : before.at };
}

export function everything({ at }: Selection, { rows, columns }: Bounds): Selection {
  return { from: { row: 0, column: 0 }, to: { row: rows - 1, column: columns - 1 }, at };
}

export function wholeRows({ from, to, at }: Selection, { columns }: Bounds): Selection {
  return { from: { row: from.row, column: 0 }, to: { row: to.row, column: columns - 1 }, at };
}

export function wholeColumns({ from, to, at }: Selection, { rows }: Bounds): Selection {
  return { from: { row: 0, column: from.column }, to: { row: rows - 1, column: to.column }, at };
}

/** A press on the head of a row: that row, or with `extend` every row from the one where the selection began. */
export function rowsFrom(before: Selection, row: number, extend: boolean, { columns }: Bounds): Selection {
  const [first, at] = extend ? [before.from.row, before.at] : [row, { row, column: 0 }];
  return { from: { row: first, column: 0 }, to: { row, column: columns - 1 }, at };
}

/** The same at the head of a column. */
export function columnsFrom(before: Selection, column: number, extend: boolean, { rows }: Bounds): Selection {
  const [first, at] = extend ? [before.from.column, before.at] : [column, { row: before.at.row, column }];
  return { from: { row: 0, column: first }, to: { row: rows - 1, column }, at };
}

/** The same selection where there are fewer rows or columns than before. */
export function fitted({ from, to, at }: Selection, bounds: Bounds): Selection {
  const fit = (spot: Spot) => ({
    row: within(spot.row, bounds.rows),
    column: within(spot.column, bounds.columns),
  });
  return { from: fit(from), to: fit(to), at: fit(at) };
}

export function boxOf({ from, to }: Selection): Box {
  return {
    top: Math.min(from.row, to.row),
    bottom: Math.max(from.row, to.row),
    left: Math.min(from.column, to.column),
    right: Math.max(from.column, to.column),
  };
}

export const isIn = ({ top, bottom, left, right }: Box, row: number, column: number): boolean =>
  row >= top && row <= bottom && column >= left && column <= right;

export const isOneCell = ({ top, bottom, left, right }: Box): boolean => top === bottom && left === right;
