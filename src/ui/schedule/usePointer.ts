import { type FocusEvent, type MouseEvent, type PointerEvent, useRef } from 'react';
import {
  type Bounds,
  boxOf,
  columnsFrom,
  isOneCell,
  movedTo,
  only,
  rowsFrom,
  type Selection,
  type Spot,
} from '../../domain/grid/select.ts';
import type { GridDoes } from './gridActions.ts';

interface Needs {
  readonly selection: Selection;
  readonly bounds: Bounds;
  readonly touchSelects: boolean;
  /** While a cell is edited, leaving it keeps what was typed: the focus goes first, and the cursor follows it. */
  readonly editing: boolean;
  readonly select: (selection: Selection) => void;
  readonly does: GridDoes;
}

function spotOf(target: EventTarget): Spot | undefined {
  if (!(target instanceof Element)) return undefined;
  const cell = target.closest<HTMLElement>('[data-cell]')?.dataset['cell'];
  const [row, column] = cell?.split('-').map(Number) ?? [];
  return row === undefined || column === undefined ? undefined : { row, column };
}
type Head = 'row' | 'column' | 'cell';
/** Where a press began: beside a mark, at the head of a column, or in a cell. */
function headOf(target: EventTarget): { readonly head: Head; readonly column: number } {
  const said =
    target instanceof Element ? target.closest<HTMLElement>('[data-head]')?.dataset['head'] : undefined;
  const [head, column] = said?.split('-') ?? [];
  if (head === 'column') return { head, column: Number(column) };
  return { head: head === 'row' ? head : 'cell', column: 0 };
}
/** The column under the pointer, by its head or by any of its cells. */
const columnAt = (target: EventTarget): number | undefined => {
  const { head, column } = headOf(target);
  return head === 'column' ? column : spotOf(target)?.column;
};
const isField = (target: EventTarget) =>
  target instanceof Element && target.closest('input, select, textarea');
const openingOf = (target: EventTarget) =>
  target instanceof Element ? target.closest<HTMLElement>('[data-opening]')?.dataset['opening'] : undefined;

/**
 * A mouse sets the cursor, drags or with Shift extends the range, and opens by a double click. A finger opens the opening
 * wherever it lands in the row; where fingers select, the first tap begins a range and the second ends it.
 */
export function usePointer({ selection, bounds, touchSelects, editing, select, does }: Needs) {
  const down = useRef<Head | null>(null);
  /** To the row or column under the pointer, or to its cell, as the press began. */
  const reach = (target: EventTarget, extend: boolean): Selection | undefined => {
    const spot = spotOf(target);
    if (down.current === 'column') {
      const column = columnAt(target);
      return column === undefined ? undefined : columnsFrom(selection, column, extend, bounds);
    }
    if (!spot) return undefined;
    if (down.current === 'row') return rowsFrom(selection, spot.row, extend, bounds);
    return extend ? movedTo(selection, spot, true, bounds) : only(spot.row, spot.column);
  };
  const began = useRef(false);
  const events = {
    onPointerDown: (event: PointerEvent) => {
      if (editing || isField(event.target)) return;
      if (event.pointerType !== 'mouse' || event.button !== 0) return;
      const { head } = headOf(event.target);
      down.current = head;
      const reached = reach(event.target, event.shiftKey);
      if (!reached) down.current = null;
      else select(reached);
    },
    onPointerMove: (event: PointerEvent) => {
      if (down.current === null) return;
      if ((event.buttons & 1) === 0) {
        down.current = null;
        return;
      }
      const { to } = selection;
      const reached = reach(event.target, true);
      if (reached && (reached.to.row !== to.row || reached.to.column !== to.column)) select(reached);
    },
    onPointerUp: () => {
      down.current = null;
    },
    onClickCapture: (event: MouseEvent) => {
      const ranged = event.shiftKey || !isOneCell(boxOf(selection));
      const byFinger = 'pointerType' in event.nativeEvent && event.nativeEvent.pointerType === 'touch';
      // The end of a range on a mark must not follow its link.
      if (
        event.target instanceof Element &&
        event.target.closest('a') &&
        (byFinger ? touchSelects : ranged)
      ) {
        event.preventDefault();
      }
    },
    onClick: (event: MouseEvent) => {
      const { nativeEvent } = event;
      if (!('pointerType' in nativeEvent) || nativeEvent.pointerType !== 'touch' || isField(event.target))
        return;
      const spot = spotOf(event.target);
      if (touchSelects && spot) {
        began.current = !began.current;
        select(began.current ? only(spot.row, spot.column) : movedTo(selection, spot, true, bounds));
        return;
      }
      if (event.target instanceof Element && event.target.closest('a')) return;
      const id = openingOf(event.target);
      if (id !== undefined) does.open(id);
    },
    onDoubleClick: (event: MouseEvent) => {
      if (headOf(event.target).head !== 'cell') return;
      const id = openingOf(event.target);
      if (id !== undefined && !isField(event.target)) does.open(id);
    },
  };
  return {
    events,
    /** Where the focus came by itself, such as by Tab: what is selected then; undefined where it is known already. */
    focused: (event: FocusEvent): Selection | undefined => {
      const spot = spotOf(event.target);
      if (!spot || down.current !== null || isField(event.target)) return undefined;
      const { at } = selection;
      const isGroup = event.target instanceof HTMLButtonElement;
      if (spot.row === at.row && (isGroup || spot.column === at.column)) return undefined;
      // Focus that a tap or a program brought: the cursor follows it.
      return touchSelects ? undefined : only(spot.row, spot.column);
    },
  };
}
