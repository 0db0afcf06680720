import type { GridColumn } from '../../domain/grid/columns.ts';
import type { GridAction } from '../../domain/grid/keys.ts';
import type { Line } from '../../domain/grid/lines.ts';
import {
  type Bounds,
  everything,
  moved,
  movedTo,
  only,
  type Selection,
  wholeColumns,
  wholeRows,
} from '../../domain/grid/select.ts';

/** What the schedule around the grid does for it. */
export interface GridDoes {
  readonly open: (openingId: string) => void;
  readonly fold: (group: string) => void;
  readonly sort: (column: string) => void;
  readonly fillDown: () => void;
  readonly clear: () => void;
  /** To the fields where a value for all, or words to replace, are typed. */
  readonly goToSet: () => void;
  readonly goToReplace: () => void;
}

interface Acts {
  readonly selection: Selection;
  readonly bounds: Bounds;
  /** Rows of a screen. */
  readonly page: number;
  readonly lines: readonly Line[];
  readonly columns: readonly GridColumn[];
  readonly select: (selection: Selection) => void;
  readonly edit: (editing: boolean) => void;
  readonly does: GridDoes;
}

/** What each action of the key table does; one without a handler does not compile. */
export function gridActions(acts: Acts): Readonly<Record<GridAction, () => void>> {
  const { selection, bounds, page, lines, columns, select, edit, does } = acts;
  const { at, to } = selection;
  const line = lines[at.row];
  const column = columns[at.column];
  const by = (row: number, across: number, extend = false) =>
    select(moved(selection, { row, column: across }, extend, bounds));
  const there = (row: number, across: number, extend = false) =>
    select(movedTo(selection, { row, column: across }, extend, bounds));
  const fold = () => {
    if (line?.is === 'group') does.fold(line.key);
  };
  const [lastRow, lastColumn] = [bounds.rows - 1, bounds.columns - 1];
  return {
    up: () => by(-1, 0),
    down: () => by(1, 0),
    left: () => by(0, -1),
    right: () => by(0, 1),
    pageUp: () => by(-page, 0),
    pageDown: () => by(page, 0),
    rowStart: () => there(at.row, 0),
    rowEnd: () => there(at.row, lastColumn),
    first: () => there(0, 0),
    last: () => there(lastRow, lastColumn),
    extendUp: () => by(-1, 0, true),
    extendDown: () => by(1, 0, true),
    extendLeft: () => by(0, -1, true),
    extendRight: () => by(0, 1, true),
    extendFirst: () => there(0, to.column, true),
    extendLast: () => there(lastRow, to.column, true),
    all: () => select(everything(selection, bounds)),
    rows: () => select(wholeRows(selection, bounds)),
    columns: () => select(wholeColumns(selection, bounds)),
    one: () => select(only(at.row, at.column)),
    open: () => (line?.is === 'row' ? does.open(line.row.opening.id) : fold()),
    fold,
    edit: () => edit(line?.is === 'row' && (column?.fact ?? column?.field) !== undefined),
    fillDown: does.fillDown,
    clear: does.clear,
    setAll: does.goToSet,
    replace: does.goToReplace,
    sort: () => {
      if (column) does.sort(column.key);
    },
  };
}
