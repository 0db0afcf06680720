import { useVirtualizer } from '@tanstack/react-virtual';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { Project } from '../../domain/model/project.ts';
import { StatusMark } from '../face/Mark.tsx';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';
import { CellEditor } from './CellEditor.tsx';
import { type Column, columns, type GridRow } from './columns.ts';

interface Props {
  readonly rows: readonly GridRow[];
  readonly project: Project;
  readonly onOpen: (openingId: string) => void;
}

const rowHeightPx = 48;
const template = columns.map((column) => `${column.width}rem`).join(' ');
const width = `${columns.reduce((sum, column) => sum + column.width, 0)}rem`;

/**
 * All openings as a grid: arrows move, Home and End go along the row, Ctrl+Home to the first opening,
 * Page keys by a screen, Enter opens the opening, F2 edits the cell. Only the rows in sight are drawn.
 */
export function OpeningGrid({ rows, project, onOpen }: Props) {
  const scroller = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState({ row: 0, column: 0 });
  const [editing, setEditing] = useState(false);
  const wantsFocus = useRef(false);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowHeightPx,
    overscan: 8,
  });
  const row = Math.min(at.row, Math.max(0, rows.length - 1));

  useEffect(() => {
    if (!wantsFocus.current || editing) return;
    virtual.scrollToIndex(row);
    const frame = requestAnimationFrame(() => {
      const cell = scroller.current?.querySelector<HTMLElement>(`[data-cell="${row}-${at.column}"]`);
      cell?.focus({ preventScroll: false });
      if (cell) wantsFocus.current = false;
    });
    return () => cancelAnimationFrame(frame);
  });

  const move = (toRow: number, toColumn: number) => {
    wantsFocus.current = true;
    setAt({
      row: Math.max(0, Math.min(rows.length - 1, toRow)),
      column: Math.max(0, Math.min(columns.length - 1, toColumn)),
    });
  };

  const onKeyDown = (event: KeyboardEvent) => {
    if (editing) return;
    const page = Math.max(1, Math.floor((scroller.current?.clientHeight ?? rowHeightPx) / rowHeightPx) - 2);
    const steps: Record<string, () => void> = {
      ArrowDown: () => move(row + 1, at.column),
      ArrowUp: () => move(row - 1, at.column),
      ArrowRight: () => move(row, at.column + 1),
      ArrowLeft: () => move(row, at.column - 1),
      PageDown: () => move(row + page, at.column),
      PageUp: () => move(row - page, at.column),
      Home: () => move(event.ctrlKey ? 0 : row, 0),
      End: () => move(event.ctrlKey ? rows.length - 1 : row, columns.length - 1),
      Enter: () => {
        const opening = rows[row]?.opening;
        if (opening) onOpen(opening.id);
      },
      F2: () => setEditing(columns[at.column]?.fact !== undefined || columns[at.column]?.key === 'mark'),
    };
    const step = steps[event.key];
    if (!step) return;
    event.preventDefault();
    step();
  };

  return (
    <div
      ref={scroller}
      className="grid-scroll"
      role="grid"
      aria-label="Openings"
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length}
      tabIndex={-1}
      onKeyDown={onKeyDown}
    >
      <div
        className="grid-row grid-head"
        role="row"
        aria-rowindex={1}
        style={{ gridTemplateColumns: template, width }}
      >
        {columns.map((column, index) => (
          <div key={column.key} role="columnheader" aria-colindex={index + 1} className="grid-cell lettering">
            {column.head}
          </div>
        ))}
      </div>
      <div style={{ height: virtual.getTotalSize(), width, position: 'relative' }} role="presentation">
        {virtual.getVirtualItems().map((item) => {
          const one = rows[item.index];
          if (!one) return null;
          return (
            <div
              key={one.opening.id}
              role="row"
              aria-rowindex={item.index + 2}
              className="grid-row"
              data-current={item.index === row || undefined}
              style={{
                gridTemplateColumns: template,
                width,
                height: item.size,
                transform: `translateY(${item.start}px)`,
              }}
            >
              {columns.map((column, index) => {
                const here = item.index === row && index === at.column;
                return (
                  <div
                    key={column.key}
                    role="gridcell"
                    aria-colindex={index + 1}
                    className="grid-cell"
                    data-cell={`${item.index}-${index}`}
                    data-column={column.key}
                    tabIndex={here ? 0 : -1}
                    onFocus={() => !here && setAt({ row: item.index, column: index })}
                    onDoubleClick={() => onOpen(one.opening.id)}
                  >
                    {here && editing ? (
                      <CellEditor
                        column={column}
                        opening={one.opening}
                        onDone={() => {
                          setEditing(false);
                          wantsFocus.current = true;
                        }}
                      />
                    ) : (
                      <Cell column={column} row={one} project={project} />
                    )}
                  </div>
                );
              })}
            </div>
          );
        })}
      </div>
    </div>
  );
}

function Cell({ column, row, project }: { column: Column; row: GridRow; project: Project }) {
  const text = column.text(row, project);
  if (column.key === 'state') return <DecisionStateMark state={row.decision.state} />;
  if (column.key === 'mark') {
    return (
      <a className="mark grid-mark" tabIndex={-1} href={`#/opening/${encodeURIComponent(row.opening.id)}`}>
        {text}
      </a>
    );
  }
  if (column.key === 'signOff' && text !== '—') {
    return <StatusMark status={text === 'Signed' ? 'signedOff' : 'needsSignOff'}>{text}</StatusMark>;
  }
  if (text === '?') {
    return (
      <span className="value-unknown" title="Not surveyed">
        ?<span className="visually-hidden"> not surveyed</span>
      </span>
    );
  }
  const fact = column.fact && row.opening.facts[column.fact];
  return <span className={fact?.is === 'assumed' ? 'value-assumed' : undefined}>{text}</span>;
}
