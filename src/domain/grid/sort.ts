import { compareMarks } from '../model/project.ts';
import { columnOf, type GridColumn, type GridRow, type Ground, nothing, notKnown } from './columns.ts';
import type { SortKey } from './placeColumns.ts';

const sortKeyOf = (column: GridColumn, row: GridRow, ground: Ground): SortKey => {
  if (column.sortKey) return column.sortKey(row, ground);
  const text = column.text(row, ground);
  return text === '' || text === notKnown || text === nothing ? undefined : text;
};

/** Places of the keys as people count. Words are compared once each, for a column says the same at many openings. */
function ranks(keys: readonly SortKey[]): ReadonlyMap<string | number, number> {
  const known = [...new Set(keys)].filter((key) => key !== undefined);
  const compare = (a: string | number, b: string | number) =>
    typeof a === 'number' && typeof b === 'number' ? a - b : compareMarks(`${a}`, `${b}`);
  const places = new Map<string | number, number>();
  let place = 0;
  known.toSorted(compare).forEach((key, index, all) => {
    const before = all[index - 1];
    if (before !== undefined && compare(before, key) !== 0) place += 1;
    places.set(key, place);
  });
  return places;
}

export interface Sort {
  readonly column: string;
  readonly descending: boolean;
}

/** Rows by one column, as people count; what is alike keeps its order, what nobody knows stands last either way. */
export function sortRows(rows: readonly GridRow[], sort: Sort | null, ground: Ground): readonly GridRow[] {
  const column = sort && columnOf(sort.column);
  if (!sort || !column) return rows;
  const keyed = rows.map((row) => ({ row, key: sortKeyOf(column, row, ground) }));
  const rank = ranks(keyed.map(({ key }) => key));
  return keyed
    .toSorted(({ key: a }, { key: b }) => {
      if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
      const order = (rank.get(a) ?? 0) - (rank.get(b) ?? 0);
      return sort.descending ? -order : order;
    })
    .map(({ row }) => row);
}
