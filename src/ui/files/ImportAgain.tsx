import { useState } from 'react';
import { type Again, againInWords, type AgainChoices, isTaken } from '../../domain/import/again.ts';
import { counted } from '../../domain/text/counted.ts';

interface Props {
  readonly again: Again;
  readonly choices: AgainChoices;
  readonly onChoices: (choices: AgainChoices) => void;
}

const shownAtFirst = 50;

/** A newer list beside the project: what it would change, thing by thing, and what it no longer lists. */
export function ImportAgain({ again, choices, onChoices }: Props) {
  const [all, setAll] = useState(false);
  const { changed, gone } = again;
  const shown = all ? changed : changed.slice(0, shownAtFirst);
  const set = (takes: AgainChoices['takes']) => onChoices({ ...choices, takes });
  return (
    <div className="stack stack-tight">
      <h4>Against the project</h4>
      <p>{againInWords(again)}</p>
      {changed.length > 0 && (
        <>
          <table className="schedule schedule-close schedule-folds">
            <thead>
              <tr>
                <th scope="col">Opening</th>
                <th scope="col">What</th>
                <th scope="col">In the project</th>
                <th scope="col">In the file</th>
                <th scope="col">Take the file’s</th>
              </tr>
            </thead>
            <tbody>
              {shown.map((change) => (
                <tr key={change.key}>
                  <th scope="row" data-head="Opening">
                    {change.mark}
                  </th>
                  <td data-head="What">{change.what}</td>
                  <td data-head="In the project">
                    {change.mine === '' ? '–' : change.mine}
                    {change.stays !== '' && <span className="soft"> ({change.stays})</span>}
                  </td>
                  <td data-head="In the file">{change.theirs}</td>
                  <td data-head="Take the file’s">
                    <label className="choice">
                      <input
                        type="checkbox"
                        aria-label={`Take ${change.what} of ${change.mark} from the file`}
                        checked={isTaken(change, choices)}
                        onChange={(event) => set({ ...choices.takes, [change.key]: event.target.checked })}
                      />
                      <span>{isTaken(change, choices) ? 'Taken' : 'Kept as it is'}</span>
                    </label>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          <div className="row">
            {shown.length < changed.length && (
              <button type="button" className="button button-small" onClick={() => setAll(true)}>
                Show all {changed.length}
              </button>
            )}
            <button
              type="button"
              className="button button-small"
              onClick={() => set(Object.fromEntries(changed.map(({ key }) => [key, true])))}
            >
              Take everything from the file
            </button>
            <button type="button" className="button button-quiet button-small" onClick={() => set({})}>
              Back to the proposal
            </button>
          </div>
        </>
      )}
      {gone.length > 0 && (
        <details>
          <summary>Not in the file ({gone.length})</summary>
          <p>{gone.map(({ mark }) => mark).join(', ')}</p>
          <label className="choice">
            <input
              type="checkbox"
              checked={choices.removeGone}
              onChange={(event) => onChoices({ ...choices, removeGone: event.target.checked })}
            />
            <span>Remove {counted(gone.length, 'opening')} that the file does not list</span>
          </label>
        </details>
      )}
    </div>
  );
}
