/** One key of the schedule: what is pressed, what it does in the help, what the grid does with it. */
interface GridKey {
  readonly press: readonly string[];
  readonly does: string;
  readonly on: readonly Chord[];
}
interface Chord {
  readonly key: string;
  readonly ctrl?: true;
  readonly shift?: true;
  readonly action: GridAction;
}

export type GridAction =
  | 'up'
  | 'down'
  | 'left'
  | 'right'
  | 'pageUp'
  | 'pageDown'
  | 'rowStart'
  | 'rowEnd'
  | 'first'
  | 'last'
  | 'extendUp'
  | 'extendDown'
  | 'extendLeft'
  | 'extendRight'
  | 'extendFirst'
  | 'extendLast'
  | 'all'
  | 'rows'
  | 'columns'
  | 'one'
  | 'open'
  | 'edit'
  | 'fold'
  | 'fillDown'
  | 'setAll'
  | 'replace'
  | 'clear'
  | 'sort';

/** Every key that the grid knows, in one table: the grid reads what to do from it and the help what to say. */
export const gridKeys: readonly GridKey[] = [
  {
    press: ['↑', '↓', '←', '→'],
    does: 'To the cell beside',
    on: [
      { key: 'ArrowUp', action: 'up' },
      { key: 'ArrowDown', action: 'down' },
      { key: 'ArrowLeft', action: 'left' },
      { key: 'ArrowRight', action: 'right' },
    ],
  },
  {
    press: ['Home'],
    does: 'To the first cell of the row; End to the last',
    on: [
      { key: 'Home', action: 'rowStart' },
      { key: 'End', action: 'rowEnd' },
    ],
  },
  {
    press: ['Ctrl', 'Home'],
    does: 'To the first opening; Ctrl and End to the last',
    on: [
      { key: 'Home', ctrl: true, action: 'first' },
      { key: 'End', ctrl: true, action: 'last' },
    ],
  },
  {
    press: ['Page Up', 'Page Down'],
    does: 'By a screen',
    on: [
      { key: 'PageUp', action: 'pageUp' },
      { key: 'PageDown', action: 'pageDown' },
    ],
  },
  {
    press: ['Shift', '↑', '↓', '←', '→'],
    does: 'Select cells from here; with Ctrl, Home and End select to the first or last opening',
    on: [
      { key: 'ArrowUp', shift: true, action: 'extendUp' },
      { key: 'ArrowDown', shift: true, action: 'extendDown' },
      { key: 'ArrowLeft', shift: true, action: 'extendLeft' },
      { key: 'ArrowRight', shift: true, action: 'extendRight' },
      { key: 'Home', ctrl: true, shift: true, action: 'extendFirst' },
      { key: 'End', ctrl: true, shift: true, action: 'extendLast' },
    ],
  },
  { press: ['Shift', 'Space'], does: 'Select the row', on: [{ key: ' ', shift: true, action: 'rows' }] },
  { press: ['Ctrl', 'Space'], does: 'Select the column', on: [{ key: ' ', ctrl: true, action: 'columns' }] },
  { press: ['Ctrl', 'A'], does: 'Select everything shown', on: [{ key: 'a', ctrl: true, action: 'all' }] },
  {
    press: ['Escape'],
    does: 'Cancel the edit; select one cell only',
    on: [{ key: 'Escape', action: 'one' }],
  },
  { press: ['Enter'], does: 'Open the opening, or fold a group', on: [{ key: 'Enter', action: 'open' }] },
  { press: ['Space'], does: 'Fold or unfold a group', on: [{ key: ' ', action: 'fold' }] },
  { press: ['F2'], does: 'Edit the cell', on: [{ key: 'F2', action: 'edit' }] },
  { press: ['Ctrl', 'C'], does: 'Copy what is selected, for a spreadsheet', on: [] },
  { press: ['Ctrl', 'V'], does: 'Paste; each cell is shown before anything changes', on: [] },
  {
    press: ['Ctrl', 'D'],
    does: 'Fill down from the first selected row, or from the row above',
    on: [{ key: 'd', ctrl: true, action: 'fillDown' }],
  },
  {
    press: ['Ctrl', 'Enter'],
    does: 'Set all selected cells to one value',
    on: [{ key: 'Enter', ctrl: true, action: 'setAll' }],
  },
  {
    press: ['Ctrl', 'H'],
    does: 'Find and replace in the selected columns',
    on: [{ key: 'h', ctrl: true, action: 'replace' }],
  },
  {
    press: ['Delete'],
    does: 'Clear what is selected: facts become not known',
    on: [{ key: 'Delete', action: 'clear' }],
  },
  {
    press: ['Ctrl', 'Shift', 'S'],
    does: 'Sort by this column; press again to reverse the order, a third time to end it',
    on: [{ key: 's', ctrl: true, shift: true, action: 'sort' }],
  },
  { press: ['A letter'], does: 'To the next mark that begins so', on: [] },
];

/** What a press with a mouse does beside a mark and at the head of a column. */
export const headWords = {
  row: 'Select the row; drag or hold Shift for more',
  column: 'Select the column; drag or hold Shift for more',
} as const;

/** “Ctrl + D”, “Shift + ↑ ↓”. */
const pressInWords = (press: readonly string[]): string =>
  press.map((key) => (key === 'Ctrl' || key === 'Shift' ? `${key} +` : key)).join(' ');

/** The same for the sheet of help, a key in a line. */
export const gridKeyLines: readonly { readonly name: string; readonly says: string }[] = gridKeys.map(
  ({ press, does }) => ({ name: pressInWords(press), says: `${does}.` }),
);

interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

const chords = gridKeys.flatMap(({ on }) => on);

export function actionOf(pressed: Pressed): GridAction | undefined {
  if (pressed.altKey) return undefined;
  const key = pressed.key.length === 1 ? pressed.key.toLowerCase() : pressed.key;
  const ctrl = pressed.ctrlKey || pressed.metaKey;
  return chords.find(
    (one) => one.key === key && (one.ctrl ?? false) === ctrl && (one.shift ?? false) === pressed.shiftKey,
  )?.action;
}
