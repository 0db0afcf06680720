import { headWords } from '../../domain/grid/keys.ts';
import type { GridColumn } from '../../domain/grid/columns.ts';
import type { Sort } from '../../domain/grid/sort.ts';

interface Props {
  readonly columns: readonly GridColumn[];
  readonly template: string;
  readonly width: string;
  readonly sort: Sort | null;
  readonly onSort: (column: string) => void;
}

/** The heads of the columns; a press sorts by one, and beside it selects it. By keys the cursor’s column is sorted, so the heads are no stops. */
export function GridHead({ columns, template, width, sort, onSort }: Props) {
  return (
    <div
      className="grid-row grid-head"
      role="row"
      aria-rowindex={1}
      style={{ gridTemplateColumns: template, width }}
    >
      {columns.map((column, index) => {
        const sorted = sort?.column === column.key;
        return (
          <div
            key={column.key}
            role="columnheader"
            aria-colindex={index + 1}
            aria-sort={sorted ? (sort.descending ? 'descending' : 'ascending') : 'none'}
            className="grid-cell"
          >
            <button type="button" className="lettering" tabIndex={-1} onClick={() => onSort(column.key)}>
              {column.head}
            </button>
            <span
              className="grid-column-head"
              aria-hidden="true"
              title={headWords.column}
              data-head={`column-${index}`}
            >
              ▾
            </span>
          </div>
        );
      })}
    </div>
  );
}
