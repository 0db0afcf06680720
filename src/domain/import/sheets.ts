import { type Grid, isBlank } from './grid.ts';
import { findTable, type Table } from './layout.ts';

export type FoundTable =
  | { readonly ok: true; readonly table: Table; readonly sheet: string; readonly notes: readonly string[] }
  | { readonly ok: false; readonly says: string };

/** The sheet that holds the doors: the one asked for, or of those shown the one with most rows under a heading. */
export function bestTable(grids: readonly Grid[], wanted?: string): FoundTable {
  const chosen = grids.filter((grid) => (wanted === undefined ? !grid.hidden : grid.name === wanted));
  const found = chosen
    .flatMap((grid) => {
      const table = findTable(grid);
      return table ? [{ grid, table }] : [];
    })
    .toSorted((a, b) => b.table.rows.length - a.table.rows.length)[0];
  if (!found) {
    return {
      ok: false,
      says: 'No row names the columns: none of the first rows has “mark” or “Door No.”.',
    };
  }
  const others = grids.filter((grid) => grid !== found.grid && !grid.rows.every(isBlank));
  const notes = others.map((grid) =>
    grid.hidden ? `Sheet ${grid.name} is hidden and was not read.` : `Sheet ${grid.name} was not read.`,
  );
  return { ok: true, table: found.table, sheet: found.grid.name, notes };
}
