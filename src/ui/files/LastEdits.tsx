import { useState } from 'react';
import { useApp, useApplication } from '../context.ts';
import { useTold } from './useTold.ts';
import { when } from './when.ts';

const atOnce = 25;

/** What was done in this browser, newest first; undo and redo stand in it too. */
export function LastEdits() {
  const app = useApplication();
  const saving = useApp((state) => state.saving.kind);
  const told = useTold(app.listCommands, saving);
  const [shown, setShown] = useState(atOnce);
  if (told === undefined) return <p className="note">Loading…</p>;
  if (!told.ok) {
    return (
      <p role="alert" className="field-error">
        {told.says}
      </p>
    );
  }
  const commands = told.commands.toReversed();
  if (commands.length === 0) return <p className="note">No edits in this browser yet.</p>;
  return (
    <div className="stack">
      <table className="schedule schedule-close schedule-folds">
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">What</th>
            <th scope="col">By</th>
            <th scope="col" className="num">
              Changes
            </th>
          </tr>
        </thead>
        <tbody>
          {commands.slice(0, shown).map((command) => (
            <tr key={command.id}>
              <td data-head="When">{when(command.at)}</td>
              <td data-head="What">{command.label}</td>
              <td data-head="By">{command.by === '' ? 'not named' : command.by}</td>
              <td data-head="Changes" className="num">
                {command.edits.length}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {commands.length > shown && (
        <div className="row">
          <button type="button" className="button button-small" onClick={() => setShown(shown + atOnce)}>
            Show older ({commands.length - shown})
          </button>
        </div>
      )}
    </div>
  );
}
