import { useVirtualizer } from '@tanstack/react-virtual';
import {
  type ClipboardEvent,
  type KeyboardEvent,
  useCallback,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { GridColumn, Ground } from '../../domain/grid/columns.ts';
import type { Sort } from '../../domain/grid/sort.ts';
import { actionOf } from '../../domain/grid/keys.ts';
import type { Line } from '../../domain/grid/lines.ts';
import { boxOf, fitted, isIn, type Selection } from '../../domain/grid/select.ts';
import { GroupLine, RowLine } from './GridLine.tsx';
import { GridHead } from './GridHead.tsx';
import { gridActions, type GridDoes } from './gridActions.ts';
import { usePointer } from './usePointer.ts';
import { useTypeAhead } from './useTypeAhead.ts';

interface Props {
  readonly lines: readonly Line[];
  readonly columns: readonly GridColumn[];
  readonly ground: Ground;
  readonly rowHeightPx: number;
  readonly selection: Selection;
  readonly onSelect: (selection: Selection) => void;
  /** The opening looked at last: the cursor stands on it when the schedule comes back. */
  readonly startsAt: number | null;
  readonly sort: Sort | null;
  /** A finger selects cells instead of opening the opening. */
  readonly touchSelects: boolean;
  readonly does: GridDoes;
  readonly onCopy: (event: ClipboardEvent) => void;
  readonly onPaste: (event: ClipboardEvent) => void;
}

/**
 * All openings as a grid, by the keys of the table in the domain. Only the rows in sight are drawn; one cell or one head
 * of a group is the stop for Tab.
 */
export function OpeningGrid(props: Props) {
  const { lines, columns, ground, rowHeightPx, onSelect, does } = props;
  const scroller = useRef<HTMLDivElement>(null);
  const template = columns.map((column) => `${column.width}rem`).join(' ');
  const width = `${columns.reduce((sum, column) => sum + column.width, 0)}rem`;
  const [editing, setEditing] = useState(false);
  const wantsFocus = useRef(false);
  const typed = useTypeAhead(lines);
  const bounds = useMemo(
    () => ({ rows: lines.length, columns: columns.length }),
    [lines.length, columns.length],
  );
  const selection = fitted(props.selection, bounds);
  const { at } = selection;
  const box = boxOf(selection);
  const virtual = useVirtualizer({
    count: lines.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowHeightPx,
    overscan: 8,
  });
  useEffect(() => virtual.measure(), [virtual, rowHeightPx, template]);
  useEffect(() => {
    if (props.startsAt !== null) virtual.scrollToIndex(props.startsAt, { align: 'center' });
    // Once, when the schedule comes up.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, []);

  useEffect(() => {
    if (!wantsFocus.current || editing) return;
    virtual.scrollToIndex(at.row);
    const frame = requestAnimationFrame(() => {
      if (!wantsFocus.current) return;
      const column = lines[at.row]?.is === 'group' ? 0 : at.column;
      const cell = scroller.current?.querySelector<HTMLElement>(`[data-cell="${at.row}-${column}"]`);
      cell?.focus({ preventScroll: false });
      if (cell) wantsFocus.current = false;
    });
    return () => cancelAnimationFrame(frame);
  });

  const select = (next: Selection) => {
    wantsFocus.current = true;
    onSelect(next);
  };
  const pointer = usePointer({ selection, bounds, touchSelects: props.touchSelects, editing, select, does });
  const onEdited = useCallback((left: boolean) => {
    setEditing(false);
    wantsFocus.current = !left;
  }, []);

  const onKeyDown = (event: KeyboardEvent) => {
    if (editing) return;
    const page = Math.max(1, Math.floor((scroller.current?.clientHeight ?? 0) / rowHeightPx) - 2);
    const action = actionOf(event);
    if (action !== undefined) {
      const acts = gridActions({ selection, bounds, page, lines, columns, select, does, edit: setEditing });
      event.preventDefault();
      acts[action]();
      return;
    }
    if (event.ctrlKey || event.metaKey || event.altKey || !/^[\p{L}\p{N}.-]$/u.test(event.key)) return;
    const found = typed(event.key, at.row);
    if (found !== undefined) {
      const there = { row: found, column: at.column };
      select({ from: there, to: there, at: there });
    }
  };

  return (
    <div
      ref={scroller}
      className="grid-scroll"
      role="grid"
      aria-label="Openings"
      aria-multiselectable
      aria-rowcount={lines.length + 1}
      aria-colcount={columns.length}
      tabIndex={-1}
      onKeyDown={onKeyDown}
      onCopy={(event) => {
        if (!editing) props.onCopy(event);
      }}
      onPaste={(event) => {
        if (!editing) props.onPaste(event);
      }}
      onFocus={(event) => {
        const there = pointer.focused(event);
        if (!there) return;
        setEditing(false);
        onSelect(there);
      }}
      onBlur={(event) => {
        // Whoever went elsewhere is not fetched back.
        const to = event.relatedTarget;
        if (to && !event.currentTarget.contains(to)) wantsFocus.current = false;
      }}
      {...pointer.events}
    >
      <GridHead columns={columns} template={template} width={width} sort={props.sort} onSort={does.sort} />
      <div style={{ height: virtual.getTotalSize(), width, position: 'relative' }} role="presentation">
        {virtual.getVirtualItems().map((item) => {
          const line = lines[item.index];
          if (!line) return null;
          const isCurrent = item.index === at.row;
          const frame = {
            index: item.index,
            top: item.start,
            template,
            width,
            minHeight: rowHeightPx,
            measure: virtual.measureElement,
            isCurrent,
          };
          if (line.is === 'group') {
            return (
              <GroupLine
                key={`group ${line.key}`}
                {...frame}
                line={line}
                columnCount={columns.length}
                onFold={does.fold}
              />
            );
          }
          const selected = isIn(box, item.index, box.left);
          return (
            <RowLine
              key={line.row.opening.id}
              {...frame}
              row={line.row}
              columns={columns}
              ground={ground}
              cursor={isCurrent ? at.column : -1}
              editing={isCurrent && editing}
              left={selected ? box.left : 0}
              right={selected ? box.right : -1}
              onEdited={onEdited}
            />
          );
        })}
      </div>
    </div>
  );
}
