import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstKeys } from './columns.ts';
import { actionOf, gridKeys } from './keys.ts';
import {
  type Bounds,
  boxOf,
  everything,
  fitted,
  moved,
  movedTo,
  only,
  type Selection,
  wholeColumns,
  wholeRows,
} from './select.ts';
import {
  firstView,
  type GridView,
  nextSort,
  savedAs,
  shifted,
  toggled,
  viewsOf,
  without,
  withValue,
  withViews,
} from './view.ts';
import { withoutProject } from './viewBox.ts';

const byFloor: GridView = {
  columns: ['mark', 'notes'],
  sort: { column: 'notes', descending: true },
  only: { state: ['Settled'] },
  group: 'floor',
};

describe('views', () => {
  test('what is kept of a project is found again, and that of others is left alone', () => {
    const mine = savedAs({ now: byFloor, saved: [] }, ' By floor ');
    const kept = withViews(withViews('', 'other', { now: firstView, saved: [] }), 'mine', mine);
    expect(viewsOf(kept, 'mine')).toEqual({ now: byFloor, saved: [{ name: 'By floor', view: byFloor }] });
    expect(viewsOf(withoutProject(kept, 'mine'), 'mine')).toEqual({ now: firstView, saved: [] });
    expect(viewsOf(withoutProject(kept, 'mine'), 'other').now).toEqual(firstView);
  });

  test('whatever stands in the browser, there is a view', () => {
    const kept = fc.oneof(
      fc.string(),
      fc.json(),
      fc.json().map((json) => `{"p":${json}}`),
    );
    fc.assert(
      fc.property(kept, (text) => {
        const { now, saved } = viewsOf(text, 'p');
        expect([typeof now.group, Array.isArray(saved)]).toEqual(['string', true]);
      }),
      { numRuns: 200 },
    );
    expect(viewsOf('{"p":{"now":{"group":"moon","only":7,"columns":["mark"]}}}', 'p').now).toEqual({
      ...firstView,
      columns: ['mark'],
    });
  });

  test('a name stands once, and is deleted', () => {
    const views = savedAs(savedAs({ now: firstView, saved: [] }, 'A'), 'A');
    expect(views.saved).toHaveLength(1);
    expect(without(views, 'A').saved).toEqual([]);
    expect(savedAs(views, '  ')).toBe(views);
  });

  test('columns come, go and move; the mark always leads', () => {
    expect(toggled(firstKeys, 'mark')).toBe(firstKeys);
    expect(toggled(['mark', 'state'], 'state')).toEqual(['mark']);
    expect(toggled(['mark'], 'set')).toEqual(['mark', 'set']);
    expect(toggled(['mark'], 'moon')).toEqual(['mark']);
    expect(shifted(['mark', 'a', 'b'], 'a', 1)).toEqual(['mark', 'b', 'a']);
    expect(shifted(['mark', 'a', 'b'], 'a', -1)).toEqual(['mark', 'a', 'b']);
    expect(shifted(['mark', 'a', 'b'], 'b', 1)).toEqual(['mark', 'a', 'b']);
  });

  test('a column sorts up, down and not at all; a value goes with its last tick', () => {
    const up = nextSort(null, 'state');
    const down = nextSort(up, 'state');
    expect([up?.descending, down?.descending, nextSort(down, 'state')]).toEqual([false, true, null]);
    expect(nextSort(down, 'mark')).toEqual({ column: 'mark', descending: false });
    const one = withValue({}, 'state', 'Settled', true);
    expect(one).toEqual({ state: ['Settled'] });
    expect(withValue(one, 'state', 'Settled', false)).toEqual({});
  });
});

const aSpot = fc.record({ row: fc.integer({ min: -3, max: 9 }), column: fc.integer({ min: -3, max: 9 }) });
const aStep = fc.oneof(
  fc.record({ by: aSpot, extend: fc.boolean() }).map(
    ({ by, extend }) =>
      (before: Selection, bounds: Bounds) =>
        moved(before, by, extend, bounds),
  ),
  fc.record({ to: aSpot, extend: fc.boolean() }).map(
    ({ to, extend }) =>
      (before: Selection, bounds: Bounds) =>
        movedTo(before, to, extend, bounds),
  ),
  fc.constantFrom(everything, wholeRows, wholeColumns),
);

describe('selection', () => {
  test('whatever is pressed, the range stays in the grid and the cursor in the range', () => {
    const bounds = { rows: 5, columns: 4 };
    fc.assert(
      fc.property(fc.array(aStep, { maxLength: 8 }), (steps) => {
        const after = steps.reduce<Selection>((before, step) => step(before, bounds), only(2, 2));
        const { top, bottom, left, right } = boxOf(after);
        expect([top >= 0, bottom < 5, left >= 0, right < 4]).toEqual([true, true, true, true]);
        expect(fitted(after, bounds)).toEqual(after);
        const { row, column } = after.at;
        expect([row >= 0, row < 5, column >= 0, column < 4]).toEqual([true, true, true, true]);
      }),
    );
  });

  test('Shift goes back over what it took in', () => {
    const bounds = { rows: 9, columns: 9 };
    const down = (by: number, before: Selection) => moved(before, { row: by, column: 0 }, true, bounds);
    expect(boxOf(down(-1, down(2, only(3, 3))))).toEqual({ top: 3, bottom: 4, left: 3, right: 3 });
    expect(boxOf(down(-5, down(2, only(3, 3))))).toMatchObject({ top: 0, bottom: 3 });
    const columns = wholeColumns(only(3, 3), bounds);
    const wider = moved(columns, { row: 0, column: 1 }, true, bounds);
    expect([boxOf(wider), wider.at]).toEqual([
      { top: 0, bottom: 8, left: 3, right: 4 },
      { row: 3, column: 3 },
    ]);
  });
});

test('each key of the table does what its line says, and no two lines claim one key', () => {
  const pressed = (key: string, ctrlKey = false, shiftKey = false) =>
    actionOf({ key, ctrlKey, metaKey: false, shiftKey, altKey: false });
  expect([pressed('a', true), pressed('A', true), pressed('a')]).toEqual(['all', 'all', undefined]);
  expect([pressed(' ', true), pressed(' ', false, true), pressed(' ')]).toEqual(['columns', 'rows', 'fold']);
  expect([pressed('Home'), pressed('Home', true), pressed('Home', true, true)]).toEqual([
    'rowStart',
    'first',
    'extendFirst',
  ]);
  const chords = gridKeys.flatMap(({ on }) => on.map(({ key, ctrl, shift }) => `${key} ${ctrl} ${shift}`));
  expect(new Set(chords).size).toBe(chords.length);
  expect(new Set(gridKeys.map(({ does }) => does)).size).toBe(gridKeys.length);
});
