import { type FocusEvent, type MouseEvent, type PointerEvent, useRef } from 'react';
import {
  type Bounds,
  boxOf,
  isOneCell,
  movedTo,
  only,
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
const isField = (target: EventTarget) =>
  target instanceof Element && target.closest('input, select, textarea');
const openingOf = (target: EventTarget) =>
  target instanceof Element ? target.closest<HTMLElement>('[data-opening]')?.dataset['opening'] : undefined;

/**
 * A mouse sets the cursor, drags or with Shift extends the range, and opens by a double click. A finger opens the opening
 * wherever it lands in the row; where fingers select, the first tap begins a range and the second ends it.
 */
export function usePointer({ selection, bounds, touchSelects, editing, select, does }: Needs) {
  const down = useRef(false);
  const began = useRef(false);
  const events = {
    onPointerDown: (event: PointerEvent) => {
      const spot = spotOf(event.target);
      if (!spot || editing || isField(event.target)) return;
      if (event.pointerType !== 'mouse' || event.button !== 0) return;
      down.current = true;
      select(event.shiftKey ? movedTo(selection, spot, true, bounds) : only(spot.row, spot.column));
    },
    onPointerMove: (event: PointerEvent) => {
      if (!down.current) return;
      if ((event.buttons & 1) === 0) {
        down.current = false;
        return;
      }
      const spot = spotOf(event.target);
      if (spot && (spot.row !== selection.to.row || spot.column !== selection.to.column)) {
        select(movedTo(selection, spot, true, bounds));
      }
    },
    onPointerUp: () => {
      down.current = false;
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
      const id = openingOf(event.target);
      if (id !== undefined && !isField(event.target)) does.open(id);
    },
  };
  return {
    events,
    /** Where the focus came by itself, such as by Tab: what is selected then; undefined where it is known already. */
    focused: (event: FocusEvent): Selection | undefined => {
      const spot = spotOf(event.target);
      if (!spot || down.current || isField(event.target)) return undefined;
      const { at } = selection;
      const isGroup = event.target instanceof HTMLButtonElement;
      if (spot.row === at.row && (isGroup || spot.column === at.column)) return undefined;
      // Focus that a tap or a program brought: the cursor follows it.
      return touchSelects ? undefined : only(spot.row, spot.column);
    },
  };
}
