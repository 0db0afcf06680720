import type { GridColumn } from '../../domain/grid/columns.ts';
import { columnsLeft, shifted, toggled } from '../../domain/grid/view.ts';
import { Unfolded } from '../parts/Unfolded.tsx';
import type { ViewDesk } from './useGridView.ts';

/** Which columns are shown, and in which order. */
export function ColumnTool({ desk, columns }: { desk: ViewDesk; columns: readonly GridColumn[] }) {
  const shown = columns.map(({ key }) => key);
  const keep = (next: readonly string[]) => desk.change({ columns: [...next] });
  return (
    <Unfolded className="grid-tool" summary="Columns">
      <div className="grid-panel stack stack-tight">
        <div className="row grid-form">
          <label className="field">
            <span className="field-label">Add a column</span>
            <select className="input" value="" onChange={({ target }) => keep(toggled(shown, target.value))}>
              <option value="">Choose</option>
              {columnsLeft(shown).map((column) => (
                <option key={column.key} value={column.key}>
                  {column.head}
                </option>
              ))}
            </select>
          </label>
          <button
            type="button"
            className="button button-quiet"
            onClick={() => desk.change({ columns: null })}
          >
            Columns as at first
          </button>
        </div>
        <ol className="grid-columns">
          {columns.map(({ key, head }) => (
            <li key={key} className="row">
              <span className="lettering">{head}</span>
              {key !== 'mark' && (
                <span className="row row-end">
                  <button
                    type="button"
                    className="button button-small"
                    aria-label={`${head}: one place earlier`}
                    onClick={() => keep(shifted(shown, key, -1))}
                  >
                    ←
                  </button>
                  <button
                    type="button"
                    className="button button-small"
                    aria-label={`${head}: one place later`}
                    onClick={() => keep(shifted(shown, key, 1))}
                  >
                    →
                  </button>
                  <button
                    type="button"
                    className="button button-small"
                    aria-label={`Leave out ${head}`}
                    onClick={() => keep(toggled(shown, key))}
                  >
                    ×
                  </button>
                </span>
              )}
            </li>
          ))}
        </ol>
      </div>
    </Unfolded>
  );
}
