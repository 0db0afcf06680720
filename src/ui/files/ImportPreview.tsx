import { useState } from 'react';
import { counted } from '../../domain/text/counted.ts';
import type { Imported } from '../../domain/import/csv.ts';
import {
  importTotals,
  mayImport,
  placeOf,
  previewColumns,
  problemsInOrder,
} from '../../domain/project/importPreview.ts';
import { csvText } from '../../exporting/csv/cells.ts';
import { downloadText } from './download.ts';

interface Props {
  readonly name: string;
  readonly header: readonly string[];
  readonly imported: Imported;
  readonly onBringIn: () => void;
  readonly onCancel: () => void;
}

const shownAtFirst = 50;

/** What every column was taken for, and a sentence for everything that was not taken. */
export function ImportPreview({ name, header, imported, onBringIn, onCancel }: Props) {
  const [goodOnly, setGoodOnly] = useState(false);
  const [all, setAll] = useState(false);
  const problems = problemsInOrder(imported);
  const refusing = problems.filter((problem) => problem.refuses);
  const noted = problems.filter((problem) => !problem.refuses);
  const may = mayImport(imported, goodOnly);
  return (
    <section className="import-preview stack" aria-label={`Preview of ${name}`}>
      <h3>What was understood of {name}</h3>
      <p className="lead">{importTotals(imported)}</p>
      {refusing.length > 0 && (
        <div className="stack stack-tight">
          <h4>Refused</h4>
          <Problems problems={refusing} />
          {imported.refused.length > 0 && (
            <div className="row">
              <button
                type="button"
                className="button button-small"
                onClick={() =>
                  downloadText(
                    'refused rows.csv',
                    csvText(
                      header,
                      imported.refused.map((row) => row.cells),
                    ),
                  )
                }
              >
                Save the refused rows as CSV
              </button>
            </div>
          )}
        </div>
      )}
      <h4>Columns</h4>
      <table className="schedule schedule-close schedule-folds">
        <thead>
          <tr>
            <th scope="col">Column</th>
            <th scope="col">Read as</th>
            <th scope="col">Cells</th>
          </tr>
        </thead>
        <tbody>
          {previewColumns(imported).map((column) => (
            <tr key={column.index}>
              <th scope="row" data-head="Column">
                {column.header}
              </th>
              <td data-head="Read as">{column.means}</td>
              <td data-head="Cells" className={column.standing === 'unused' ? 'soft' : undefined}>
                {column.standing}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {noted.length > 0 && (
        <details>
          <summary>Not taken, left open ({noted.length})</summary>
          <Problems problems={all ? noted : noted.slice(0, shownAtFirst)} />
          {noted.length > shownAtFirst && !all && (
            <button type="button" className="button button-small" onClick={() => setAll(true)}>
              Show all {noted.length}
            </button>
          )}
        </details>
      )}
      {imported.refused.length > 0 && imported.openings.length > 0 && (
        <label className="choice">
          <input type="checkbox" checked={goodOnly} onChange={(event) => setGoodOnly(event.target.checked)} />
          <span>Bring in the good rows and leave the refused ones out</span>
        </label>
      )}
      {!may.ok && <output className="remark">{may.says}</output>}
      <div className="row">
        <button type="button" className="button button-main" disabled={!may.ok} onClick={onBringIn}>
          Bring in {counted(imported.openings.length, 'opening')}
        </button>
        <button type="button" className="button button-quiet" onClick={onCancel}>
          Cancel
        </button>
      </div>
    </section>
  );
}

function Problems({ problems }: { problems: Imported['problems'] }) {
  return (
    <ul className="reasons">
      {problems.map((problem) => (
        <li key={`${problem.row} ${problem.column} ${problem.says}`}>
          <strong>{placeOf(problem)}</strong>: {problem.says}
        </li>
      ))}
    </ul>
  );
}
