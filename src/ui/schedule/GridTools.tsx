import type { ReactNode } from 'react';
import { allColumns, type GridColumn, type GridRow, type Ground } from '../../domain/grid/columns.ts';
import { type Grouping, groupings } from '../../domain/grid/lines.ts';
import { narrowedInWords } from '../../domain/grid/shown.ts';
import { ColumnTool } from './ColumnTool.tsx';
import { Unfolded } from '../parts/Unfolded.tsx';
import type { ViewDesk } from './useGridView.ts';
import { ValueTool } from './ValueTool.tsx';
import { ViewTool } from './ViewTool.tsx';

interface Props {
  readonly desk: ViewDesk;
  readonly rows: readonly GridRow[];
  readonly columns: readonly GridColumn[];
  readonly ground: Ground;
  readonly phone: boolean;
  /** How many rows the filters by value leave. */
  readonly left: number;
  readonly children: ReactNode;
}

/** How the schedule is looked at: each tool folds, and on a phone all of them together. */
export function GridTools({ desk, rows, columns, ground, phone, left, children }: Props) {
  const says = narrowedInWords(desk.view.only, left, rows.length);
  return (
    <>
      <details className="grid-tools-folded" open={!phone}>
        <summary hidden={!phone}>Arrange and edit many</summary>
        <div className="grid-tools">
          <OrderTool desk={desk} />
          <ValueTool desk={desk} rows={rows} ground={ground} columns={columns} />
          <ColumnTool desk={desk} columns={columns} />
          <ViewTool desk={desk} />
          {children}
        </div>
      </details>
      {says !== '' && (
        <p className="note row row-baseline">
          <span>{says}</span>
          <button
            type="button"
            className="button button-small button-quiet"
            onClick={() => desk.change({ only: {} })}
          >
            Show every value
          </button>
        </p>
      )}
    </>
  );
}

function OrderTool({ desk }: { desk: ViewDesk }) {
  const { sort, group } = desk.view;
  return (
    <Unfolded className="grid-tool" summary="Order and groups">
      <div className="grid-panel row grid-form">
        <label className="field">
          <span className="field-label">Sort by</span>
          <select
            className="input"
            value={sort?.column ?? ''}
            onChange={({ target }) =>
              desk.change({
                sort:
                  target.value === ''
                    ? null
                    : { column: target.value, descending: sort?.descending ?? false },
              })
            }
          >
            <option value="">Order of the schedule</option>
            {allColumns.map((column) => (
              <option key={column.key} value={column.key}>
                {column.head}
              </option>
            ))}
          </select>
        </label>
        <label className="choice-line">
          <input
            type="checkbox"
            className="tick"
            disabled={sort === null}
            checked={sort?.descending ?? false}
            onChange={({ target }) => sort && desk.change({ sort: { ...sort, descending: target.checked } })}
          />
          <span>From last to first</span>
        </label>
        <label className="field">
          <span className="field-label">Group by</span>
          <select
            className="input"
            value={group}
            onChange={({ target }) => desk.change({ group: target.value as Grouping })}
          >
            {Object.entries(groupings).map(([key, name]) => (
              <option key={key} value={key}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </div>
    </Unfolded>
  );
}
