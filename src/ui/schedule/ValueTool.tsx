import { useMemo, useState } from 'react';
import { columnOf, type GridColumn, type GridRow, type Ground } from '../../domain/grid/columns.ts';
import { valuesIn } from '../../domain/grid/lines.ts';
import { withValue } from '../../domain/grid/view.ts';
import { Unfolded } from '../parts/Unfolded.tsx';
import type { ViewDesk } from './useGridView.ts';

interface Props {
  readonly desk: ViewDesk;
  readonly rows: readonly GridRow[];
  readonly columns: readonly GridColumn[];
  readonly ground: Ground;
}

/** Narrows the schedule to values of its columns. */
export function ValueTool(props: Props) {
  return (
    <Unfolded className="grid-tool" summary="Filter by value">
      <Values {...props} />
    </Unfolded>
  );
}

function Values({ desk, rows, columns, ground }: Props) {
  const [key, setKey] = useState('state');
  const column = columnOf(key);
  const values = useMemo(() => (column ? valuesIn(column, rows, ground) : []), [column, rows, ground]);
  const { only } = desk.view;
  return (
    <div className="grid-panel stack stack-tight">
      <label className="field grid-short">
        <span className="field-label">Column</span>
        <select className="input" value={key} onChange={({ target }) => setKey(target.value)}>
          {columns.map((one) => (
            <option key={one.key} value={one.key}>
              {one.head}
            </option>
          ))}
        </select>
      </label>
      <fieldset className="grid-values">
        <legend className="visually-hidden">Values of {column?.head}</legend>
        {values.map(({ value, words, count }) => (
          <label key={value} className="choice-line">
            <input
              type="checkbox"
              className="tick"
              checked={only[key]?.includes(value) ?? false}
              onChange={({ target }) => desk.change({ only: withValue(only, key, value, target.checked) })}
            />
            <span>
              {words} ({count})
            </span>
          </label>
        ))}
      </fieldset>
    </div>
  );
}
