import { useState } from 'react';
import { counted } from '../../domain/text/counted.ts';
import type { Again, AgainChoices } from '../../domain/import/again.ts';
import type { Imported } from '../../domain/import/csv.ts';
import {
  cellsOf,
  columnChoices,
  importTotals,
  mayImport,
  placeOf,
  previewColumns,
  problemsInOrder,
  skippedRows,
} from '../../domain/project/importPreview.ts';
import { csvText } from '../../exporting/csv/cells.ts';
import type { ChosenWords } from '../../domain/import/words.ts';
import { downloadText } from './download.ts';
import { ImportAgain } from './ImportAgain.tsx';
import { RoomUses } from './RoomUses.tsx';
import { UndecidedWords } from './UndecidedWords.tsx';

interface Props {
  readonly name: string;
  readonly header: readonly string[];
  readonly imported: Imported;
  readonly notes: readonly string[];
  readonly onColumn: (header: string, use: string) => void;
  readonly onRow: (row: number, as: 'opening' | 'omit') => void;
  readonly words: ChosenWords;
  readonly onWord: (key: string, minutes: string) => void;
  /** Absent where the file lists no door of the project. */
  readonly again: Again | undefined;
  readonly choices: AgainChoices;
  readonly onChoices: (choices: AgainChoices) => void;
  readonly onBringIn: () => void;
  readonly onCancel: () => void;
}

const shownAtFirst = 50;
const choices = columnChoices();

/** What every column was taken for, and a sentence for everything that was not taken. */
export function ImportPreview(props: Props) {
  const { name, header, imported, notes, onColumn, onRow, onBringIn, onCancel } = props;
  const [goodOnly, setGoodOnly] = useState(false);
  const [all, setAll] = useState(false);
  const problems = problemsInOrder(imported);
  const refusing = problems.filter((problem) => problem.refuses);
  const noted = problems.filter((problem) => !problem.refuses);
  const skipped = skippedRows(imported);
  const may = mayImport(imported, goodOnly);
  return (
    <section className="import-preview stack" aria-label={`Preview of ${name}`}>
      <h3>How it was read: {name}</h3>
      <p className="lead">{importTotals(imported)}</p>
      {notes.map((note) => (
        <p key={note} className="remark">
          {note}
        </p>
      ))}
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
      <UndecidedWords imported={imported} words={props.words} onWord={props.onWord} />
      {props.again && <ImportAgain again={props.again} choices={props.choices} onChoices={props.onChoices} />}
      <RoomUses rooms={imported.rooms} choices={props.choices} onChoices={props.onChoices} />
      <h4>Columns</h4>
      <table className="schedule schedule-close schedule-folds">
        <thead>
          <tr>
            <th scope="col">Column</th>
            <th scope="col">Examples</th>
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
              <td data-head="Examples">{column.examples.join(' · ')}</td>
              <td data-head="Read as">
                <select
                  className="input"
                  aria-label={`Column ${column.header} is read as`}
                  value={column.use}
                  onChange={(event) => onColumn(header[column.index] ?? '', event.target.value)}
                >
                  {choices.map((choice) => (
                    <option key={choice.use} value={choice.use}>
                      {choice.means}
                    </option>
                  ))}
                </select>
              </td>
              <td data-head="Cells" className={column.standing === 'unused' ? 'soft' : undefined}>
                {column.standing}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {skipped.length > 0 && (
        <details>
          <summary>Rows not read as doors ({skipped.length})</summary>
          <ul className="reasons">
            {skipped.map(({ row, why }) => (
              <li key={row.number}>
                <strong>Row {row.number}</strong>: {why}{' '}
                {row.cells
                  .filter((cell) => cell !== '')
                  .join(' · ')
                  .slice(0, 120)}{' '}
                <button
                  type="button"
                  className="button button-quiet button-small"
                  onClick={() => onRow(row.number, 'opening')}
                >
                  This is a door
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      <Cells imported={imported} onRow={onRow} />
      {noted.length > 0 && (
        <details>
          <summary>Not read, left blank ({noted.length})</summary>
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
          <span>Import valid rows and skip rejected ones</span>
        </label>
      )}
      {!may.ok && <output className="remark">{may.says}</output>}
      <div className="row">
        <button type="button" className="button button-main" disabled={!may.ok} onClick={onBringIn}>
          Import {counted(imported.openings.length, 'opening')}
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

/** One door at a time: what stands in the file beside what was read. */
function Cells({ imported, onRow }: Pick<Props, 'imported' | 'onRow'>) {
  const [at, setAt] = useState(0);
  const opening = imported.openings[Math.min(at, imported.openings.length - 1)];
  const row = opening && imported.from.get(opening.id);
  if (!opening || !row) return null;
  return (
    <details>
      <summary>Cells: original and reading</summary>
      <div className="row">
        <select
          className="input"
          aria-label="Door to check"
          value={Math.min(at, imported.openings.length - 1)}
          onChange={(event) => setAt(Number(event.target.value))}
        >
          {imported.openings.map((one, index) => (
            <option key={one.id} value={index}>
              {one.mark}
            </option>
          ))}
        </select>
        <button
          type="button"
          className="button button-quiet button-small"
          onClick={() => onRow(row.number, 'omit')}
        >
          Leave row {row.number} out
        </button>
      </div>
      <table className="schedule schedule-close schedule-folds">
        <thead>
          <tr>
            <th scope="col">Column</th>
            <th scope="col">In the file</th>
            <th scope="col">Read as</th>
          </tr>
        </thead>
        <tbody>
          {cellsOf(imported, opening.id).map((cell) => (
            <tr key={`${cell.header} ${cell.original}`}>
              <th scope="row" data-head="Column">
                {cell.header}
              </th>
              <td data-head="In the file">{cell.original}</td>
              <td data-head="Read as">
                {cell.reading}
                {cell.doubt !== '' && <span className="field-error"> {cell.doubt}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
