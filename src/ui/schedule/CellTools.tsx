import { type Ref, useId, useState } from 'react';
import type { Ground } from '../../domain/grid/columns.ts';
import { offeredFor } from '../../domain/grid/readCells.ts';
import type { Part } from '../../domain/grid/paste.ts';
import type { Replacing } from '../../domain/grid/fill.ts';
import {
  type Bounds,
  everything,
  type Selection,
  wholeColumns,
  wholeRows,
} from '../../domain/grid/select.ts';
import type { CellSteps } from './useCellSteps.ts';

interface Props {
  readonly ref: Ref<HTMLDetailsElement>;
  readonly part: Part;
  readonly steps: CellSteps;
  readonly ground: Ground;
  readonly touchSelects: boolean;
  readonly onTouchSelects: (selects: boolean) => void;
  readonly onFillDown: () => void;
  readonly onPaste: (text: string) => void;
  readonly onReplace: (what: Replacing) => void;
  readonly onSelect: (whole: (selection: Selection, bounds: Bounds) => Selection) => void;
}

/** What is done to all cells that are selected. */
export function CellTools({ ref, part, steps, ground, touchSelects, onTouchSelects, ...does }: Props) {
  const [value, setValue] = useState('');
  const [find, setFind] = useState('');
  const [by, setBy] = useState('');
  const [whole, setWhole] = useState(false);
  const listId = useId();
  const offered = offeredFor(part.columns, ground.project);
  return (
    <details ref={ref} className="grid-tool">
      <summary>Selected cells</summary>
      <div className="grid-panel stack stack-tight">
        <form
          className="row grid-form"
          onSubmit={(event) => {
            event.preventDefault();
            steps.setForAll(value, part);
          }}
        >
          <label className="field">
            <span className="field-label">Set all to</span>
            <input
              name="set"
              className="input"
              list={listId}
              value={value}
              onChange={(event) => setValue(event.target.value)}
            />
          </label>
          <datalist id={listId}>
            {offered.map((one) => (
              <option key={one} value={one}>
                {one}
              </option>
            ))}
          </datalist>
          <button type="submit" className="button">
            Set for all selected
          </button>
        </form>
        <form
          className="row grid-form"
          onSubmit={(event) => {
            event.preventDefault();
            does.onReplace({ find, by, whole });
          }}
        >
          <label className="field">
            <span className="field-label">Find</span>
            <input
              name="find"
              className="input"
              value={find}
              onChange={(event) => setFind(event.target.value)}
            />
          </label>
          <label className="field">
            <span className="field-label">Replace by</span>
            <input className="input" value={by} onChange={(event) => setBy(event.target.value)} />
          </label>
          <label className="choice-line">
            <input
              type="checkbox"
              className="tick"
              checked={whole}
              onChange={(event) => setWhole(event.target.checked)}
            />
            <span>Whole cells only</span>
          </label>
          <button type="submit" className="button" disabled={find.trim() === ''}>
            Find and replace
          </button>
        </form>
        <div className="row grid-form">
          <button type="button" className="button" onClick={() => does.onSelect(wholeRows)}>
            Select rows
          </button>
          <button type="button" className="button" onClick={() => does.onSelect(wholeColumns)}>
            Select columns
          </button>
          <button type="button" className="button" onClick={() => does.onSelect(everything)}>
            Select all
          </button>
          <label className="choice-line">
            <input
              type="checkbox"
              className="tick"
              checked={touchSelects}
              onChange={(event) => onTouchSelects(event.target.checked)}
            />
            <span>Taps select cells: the first begins, the second ends</span>
          </label>
        </div>
        <div className="row grid-form">
          <button type="button" className="button" onClick={does.onFillDown}>
            Fill down
          </button>
          <button type="button" className="button" onClick={() => steps.clear(part)}>
            Clear
          </button>
          <button
            type="button"
            className="button"
            onClick={() => void navigator.clipboard?.writeText(steps.copy(part).text)}
          >
            Copy
          </button>
        </div>
        <PasteField onPaste={does.onPaste} />
      </div>
    </details>
  );
}

/** For whoever has no keys: cells are pasted into a field, and from there into the schedule. */
function PasteField({ onPaste }: { onPaste: (text: string) => void }) {
  const [text, setText] = useState('');
  return (
    <form
      className="row grid-form"
      onSubmit={(event) => {
        event.preventDefault();
        onPaste(text);
        setText('');
      }}
    >
      <label className="field">
        <span className="field-label">Cells from a spreadsheet</span>
        <textarea className="input" rows={1} value={text} onChange={(event) => setText(event.target.value)} />
      </label>
      <button type="submit" className="button" disabled={text === ''}>
        Paste
      </button>
    </form>
  );
}
