import { useVirtualizer } from '@tanstack/react-virtual';
import { type KeyboardEvent, useEffect, useMemo, useRef, useState } from 'react';
import { fieldInfo } from '../../domain/model/fields.ts';
import type { Project } from '../../domain/model/project.ts';
import { takenOver } from '../../domain/survey/takeOver.ts';
import { useStore } from '../context.ts';
import { useMedia } from '../parts/useMedia.ts';
import { CellEditor } from './CellEditor.tsx';
import { Cell } from './Cell.tsx';
import { columnsFor, type GridRow } from './columns.ts';
import { useTypeAhead } from './useTypeAhead.ts';

interface Props {
  readonly rows: readonly GridRow[];
  readonly project: Project;
  /** The opening looked at last: the cursor stands on it when the schedule comes back. */
  readonly startId?: string | null;
  readonly onOpen: (openingId: string) => void;
  /** A sentence about an edit that was refused. */
  readonly onRefused: (says: string) => void;
}

const deskRowPx = 48;
/** A phone's columns are narrow: three lines in a cell. */
const phoneRowPx = 64;

/**
 * All openings as a grid. Arrows move, Home and End go along the row, with Ctrl to the first and last opening, Page
 * keys by a screen; letters jump to a mark, Enter opens the opening, F2 edits the cell, Ctrl+D takes the value above.
 * Only the rows in sight are drawn.
 */
export function OpeningGrid({ rows, project, startId = null, onOpen, onRefused }: Props) {
  const store = useStore();
  const scroller = useRef<HTMLDivElement>(null);
  const phone = useMedia('(max-width: 40rem)');
  const rowHeightPx = phone ? phoneRowPx : deskRowPx;
  const columns = useMemo(() => columnsFor(rows, phone), [rows, phone]);
  const template = columns.map((column) => `${column.width}rem`).join(' ');
  const width = `${columns.reduce((sum, column) => sum + column.width, 0)}rem`;
  const [at, setAt] = useState(() => ({
    row: Math.max(
      0,
      rows.findIndex((one) => one.opening.id === startId),
    ),
    column: 0,
  }));
  const [editing, setEditing] = useState(false);
  const wantsFocus = useRef(false);
  const typed = useTypeAhead(rows);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowHeightPx,
    overscan: 8,
  });
  useEffect(() => virtual.measure(), [virtual, rowHeightPx]);
  const row = Math.min(at.row, Math.max(0, rows.length - 1));

  useEffect(() => {
    if (startId !== null) virtual.scrollToIndex(at.row, { align: 'center' });
    // Once, when the schedule comes up.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, []);

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
  /** The value of the cell above, as assumed or known as it stands there. */
  const fillFromAbove = () => {
    const key = columns[at.column]?.fact;
    const [above, here] = [rows[row - 1]?.opening, rows[row]?.opening];
    if (!key || !above || !here) return;
    const edits = takenOver(above, here, { facts: new Set([key]), replace: true }).map((one) => ({
      kind: 'setFact' as const,
      id: here.id,
      fact: one.key,
      value: one.fact,
    }));
    if (edits.length === 0) return;
    const result = store.getState().dispatch(`${here.mark}: ${fieldInfo(key).label}`, edits);
    if (!result.ok) onRefused(result.says);
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
    const step = event.key.toLowerCase() === 'd' && event.ctrlKey ? fillFromAbove : steps[event.key];
    if (step) {
      event.preventDefault();
      step();
      return;
    }
    if (event.ctrlKey || event.metaKey || event.altKey || !/^[\p{L}\p{N}.-]$/u.test(event.key)) return;
    const found = typed(event.key, row);
    if (found !== undefined) move(found, at.column);
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
      onClick={(event) => {
        const id = tappedRow(event.nativeEvent);
        if (id !== undefined) onOpen(id);
      }}
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
              ref={virtual.measureElement}
              data-index={item.index}
              role="row"
              aria-rowindex={item.index + 2}
              className="grid-row"
              data-opening={one.opening.id}
              data-current={item.index === row || undefined}
              style={{
                gridTemplateColumns: template,
                width,
                minHeight: rowHeightPx,
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
                    onFocus={() => {
                      if (here) return;
                      setEditing(false);
                      setAt({ row: item.index, column: index });
                    }}
                    onDoubleClick={() => onOpen(one.opening.id)}
                  >
                    {here && editing ? (
                      <CellEditor
                        column={column}
                        opening={one.opening}
                        onDone={(left) => {
                          setEditing(false);
                          wantsFocus.current = !left;
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

/** A finger opens the opening wherever it lands in the row; a mouse only sets the cursor. */
function tappedRow(event: Event): string | undefined {
  if (!('pointerType' in event) || event.pointerType !== 'touch' || !(event.target instanceof Element))
    return;
  if (event.target.closest('a, input, select')) return;
  return event.target.closest<HTMLElement>('[data-opening]')?.dataset['opening'];
}
