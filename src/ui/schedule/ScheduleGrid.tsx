import { type ClipboardEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { columnsFor, type Ground } from '../../domain/grid/columns.ts';
import { sortRows } from '../../domain/grid/sort.ts';
import { linesOf } from '../../domain/grid/lines.ts';
import type { Shown } from '../../domain/grid/shown.ts';
import { partOf, partToFill, rowsAlone, selectedInWords } from '../../domain/grid/paste.ts';
import { boxOf, fitted, only } from '../../domain/grid/select.ts';
import { nextSort } from '../../domain/grid/view.ts';
import { readPasted } from '../../intake/csv.ts';
import { useMedia } from '../parts/useMedia.ts';
import { CellTools } from './CellTools.tsx';
import { GridTools } from './GridTools.tsx';
import { OpeningGrid } from './OpeningGrid.tsx';
import { PlanPreview } from './PlanPreview.tsx';
import { deskRowPx, phoneRowPx } from './rowHeights.ts';
import { useCellSteps } from './useCellSteps.ts';
import type { ViewDesk } from './useGridView.ts';

interface Props {
  readonly desk: ViewDesk;
  readonly shown: Shown;
  readonly ground: Ground;
  readonly startId?: string | null;
  readonly onOpen: (openingId: string) => void;
}

/** The schedule as an office works with it: the grid, how it is looked at, and what is done to many cells at once. */
export function ScheduleGrid({ desk, shown, ground, startId = null, onOpen }: Props) {
  const phone = useMedia('(max-width: 40rem)');
  const { view } = desk;
  const { listed: rows, left } = shown;
  const [folded, setFolded] = useState<ReadonlySet<string>>(new Set());
  const sorted = useMemo(() => sortRows(left, view.sort, ground), [left, view.sort, ground]);
  const lines = useMemo(
    () => linesOf(sorted, view.group, folded, ground),
    [sorted, view.group, folded, ground],
  );
  const columns = useMemo(() => columnsFor(rows, phone, view.columns), [rows, phone, view.columns]);
  const [startsAt] = useState(() =>
    startId === null
      ? null
      : Math.max(
          0,
          lines.findIndex((one) => one.is === 'row' && one.row.opening.id === startId),
        ),
  );
  const [chosen, setSelection] = useState(() => only(startsAt ?? 0, 0));
  const [touchSelects, setTouchSelects] = useState(false);
  const steps = useCellSteps(ground);
  const tools = useRef<HTMLDetailsElement>(null);

  const bounds = { rows: lines.length, columns: columns.length };
  const selection = fitted(chosen, bounds);
  const box = boxOf(selection);
  const part = partOf(lines, columns, box);

  // Rows that go elsewhere, by an order or a filter, take the cursor along.
  const line = lines[selection.at.row];
  const cursorId = line?.is === 'row' ? line.row.opening.id : null;
  const before = useRef({ lines, cursorId });
  useEffect(() => {
    const { lines: were, cursorId: was } = before.current;
    before.current = { lines, cursorId };
    if (were === lines || was === null || was === cursorId) return;
    const now = lines.findIndex((one) => one.is === 'row' && one.row.opening.id === was);
    if (now >= 0) setSelection((one) => only(now, one.at.column));
  }, [lines, cursorId]);

  const goTo = (field: string) => {
    for (let at = tools.current; at; at = at.parentElement?.closest('details') ?? null) at.open = true;
    tools.current?.querySelector<HTMLElement>(`[name="${field}"]`)?.focus();
  };
  const fold = useCallback((key: string) => {
    setFolded((set) => new Set(set.has(key) ? [...set].filter((one) => one !== key) : [...set, key]));
  }, []);
  const sort = (column: string) => desk.change({ sort: nextSort(view.sort, column) });
  const fillDown = () => steps.fillDown(partToFill(lines, columns, box));
  const does = {
    open: onOpen,
    fold,
    sort,
    fillDown,
    clear: () => steps.clear(part),
    goToSet: () => goTo('set'),
    goToReplace: () => goTo('find'),
  };
  const paste = (text: string) => {
    const alone = rowsAlone(lines, columns, box);
    steps.paste(readPasted(text), alone.shown, alone.box);
  };
  const onCopy = (event: ClipboardEvent) => {
    if (part.rows.length === 0) return;
    const { text, html } = steps.copy(part);
    event.clipboardData.setData('text/plain', text);
    event.clipboardData.setData('text/html', html);
    event.preventDefault();
  };
  const says = selectedInWords(part);
  return (
    <>
      <GridTools desk={desk} rows={rows} columns={columns} ground={ground} phone={phone} left={left.length}>
        <CellTools
          ref={tools}
          part={part}
          steps={steps}
          ground={ground}
          touchSelects={touchSelects}
          onTouchSelects={setTouchSelects}
          onFillDown={fillDown}
          onPaste={paste}
          onReplace={(what) => steps.replace(what, { rows: sorted, columns: part.columns })}
          onSelect={(whole) => setSelection(whole(selection, bounds))}
        />
      </GridTools>
      {lines.length === 0 ? (
        <div className="empty">
          <p>No opening has the values that the columns are narrowed to.</p>
          <button type="button" className="button" onClick={() => desk.change({ only: {} })}>
            Show every value
          </button>
        </div>
      ) : (
        <OpeningGrid
          lines={lines}
          columns={columns}
          ground={ground}
          rowHeightPx={phone ? phoneRowPx : deskRowPx}
          selection={selection}
          onSelect={setSelection}
          startsAt={startsAt}
          sort={view.sort}
          touchSelects={touchSelects}
          does={does}
          onCopy={onCopy}
          onPaste={(event) => {
            event.preventDefault();
            paste(event.clipboardData.getData('text/plain'));
          }}
        />
      )}
      <p className="note grid-selected" role="status">
        {says}
      </p>
      {steps.waiting && <PlanPreview waiting={steps.waiting} onApply={steps.apply} onCancel={steps.cancel} />}
    </>
  );
}
