import type { ReactNode } from 'react';
import {
  isPaperSize,
  type PaperSize,
  paperSizes,
  type SheetId,
  sheetIds,
  sheetKinds,
} from '../../exporting/sheets/sheetKinds.ts';

interface Props {
  readonly sheets: ReadonlySet<SheetId>;
  readonly onSheets: (sheets: ReadonlySet<SheetId>) => void;
  readonly paper: PaperSize;
  readonly onPaper: (paper: PaperSize) => void;
  readonly shown: number;
  readonly total: number;
  /** Which openings the sheets by opening print, and why not the others. */
  readonly says: string;
  readonly onShowAll: () => void;
  readonly children?: ReactNode;
  /** While parts go to the printer nothing else may be chosen. */
  readonly busy: boolean;
  readonly printing: ReactNode;
}

export function PrintChoices(props: Props) {
  const { sheets, paper, shown, total } = props;
  const toggle = (id: SheetId) => {
    const next = new Set(sheets);
    if (!next.delete(id)) next.add(id);
    props.onSheets(next);
  };
  return (
    <div className="sheet screen-only">
      <div className="sheet-body stack">
        <h1>Print</h1>
        <div className="print-choices">
          <fieldset className="field" disabled={props.busy}>
            <legend>What to print</legend>
            <div className="choices">
              {sheetIds.map((id) => (
                <label key={id} className="choice">
                  <input type="checkbox" checked={sheets.has(id)} onChange={() => toggle(id)} />
                  {sheetKinds[id].name}
                  {sheetKinds[id].byOpening && (
                    <span className="note row-end">
                      {shown === total ? `all ${total}` : `${shown} of ${total}`}
                    </span>
                  )}
                </label>
              ))}
            </div>
          </fieldset>
          <div className="stack">
            <label className="field">
              <span className="field-label">Paper of the door schedule</span>
              <select
                className="input"
                value={paper}
                disabled={props.busy}
                onChange={(event) => isPaperSize(event.target.value) && props.onPaper(event.target.value)}
              >
                {Object.entries(paperSizes).map(([value, { name }]) => (
                  <option key={value} value={value}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
            <PrintedOpenings {...props} />
            <p className="note">
              Below is what prints. The printer breaks it into pages, with heads, caution and page numbers on
              each. Print at 100 % so that drawings keep their scale.
            </p>
            {props.printing}
          </div>
        </div>
        {props.children}
      </div>
    </div>
  );
}

/** Sheets by opening print what the schedule shows; all others print the whole building. */
function PrintedOpenings({ sheets, shown, total, says, onShowAll }: Props) {
  const byOpening = [...sheets].filter((id) => sheetKinds[id].byOpening);
  if (byOpening.length === 0) return null;
  return (
    <div className="note">
      <p>
        <strong>{byOpening.map((id) => sheetKinds[id].name).join(', ')}.</strong> {says}
      </p>
      {shown < total && (
        <button type="button" className="button button-small button-quiet" onClick={onShowAll}>
          Show all openings
        </button>
      )}
    </div>
  );
}
