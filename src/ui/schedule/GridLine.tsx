import { memo } from 'react';
import type { GridColumn, GridRow, Ground } from '../../domain/grid/columns.ts';
import type { Line } from '../../domain/grid/lines.ts';
import { Cell } from './Cell.tsx';
import { CellEditor } from './CellEditor.tsx';

interface Frame {
  readonly index: number;
  readonly top: number;
  readonly template: string;
  readonly width: string;
  readonly minHeight: number;
  readonly measure: (element: HTMLElement | null) => void;
  readonly isCurrent: boolean;
}

interface RowProps extends Frame {
  readonly row: GridRow;
  readonly columns: readonly GridColumn[];
  readonly ground: Ground;
  /** The column with the cursor, -1 where it is in another row. */
  readonly cursor: number;
  readonly editing: boolean;
  /** First and last selected column; none where the first is behind the last. */
  readonly left: number;
  readonly right: number;
  readonly onEdited: (left: boolean) => void;
}

const styleOf = (top: number, template: string, width: string, minHeight: number) => ({
  gridTemplateColumns: template,
  width,
  minHeight,
  transform: `translateY(${top}px)`,
});

/** One opening. */
export const RowLine = memo(function RowLine(props: RowProps) {
  const { row, columns, ground, index, cursor, editing, left, right, onEdited, measure } = props;
  const { top, template, width, minHeight, isCurrent } = props;
  return (
    <div
      ref={measure}
      data-index={index}
      role="row"
      aria-rowindex={index + 2}
      className="grid-row"
      data-opening={row.opening.id}
      data-current={isCurrent || undefined}
      style={styleOf(top, template, width, minHeight)}
    >
      {columns.map((column, at) => (
        <div
          key={column.key}
          role="gridcell"
          aria-colindex={at + 1}
          aria-selected={at >= left && at <= right}
          className="grid-cell"
          data-cell={`${index}-${at}`}
          data-column={column.key}
          data-editing={(at === cursor && editing) || undefined}
          tabIndex={at === cursor ? 0 : -1}
        >
          {at === cursor && editing ? (
            <CellEditor column={column} row={row} ground={ground} onDone={onEdited} />
          ) : (
            <Cell column={column} row={row} ground={ground} />
          )}
        </div>
      ))}
    </div>
  );
});

interface GroupProps extends Frame {
  readonly line: Extract<Line, { is: 'group' }>;
  readonly columnCount: number;
  readonly onFold: (key: string) => void;
}

/** The head of a group with its counts; it folds. */
export function GroupLine(props: GroupProps) {
  const { line, index, columnCount, onFold, measure, top, width, minHeight, isCurrent } = props;
  return (
    <div
      ref={measure}
      data-index={index}
      role="row"
      aria-rowindex={index + 2}
      className="grid-row grid-group"
      data-current={isCurrent || undefined}
      style={styleOf(top, '1fr', width, minHeight)}
    >
      <div
        role="gridcell"
        aria-label={line.head}
        aria-colindex={1}
        aria-colspan={columnCount}
        className="grid-cell"
      >
        <button
          type="button"
          className="grid-fold"
          data-cell={`${index}-0`}
          tabIndex={isCurrent ? 0 : -1}
          aria-expanded={!line.folded}
          onClick={() => onFold(line.key)}
        >
          <span className="lettering">{line.head}</span> <span className="soft">{line.says}</span>
        </button>
      </div>
    </div>
  );
}
