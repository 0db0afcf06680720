import { useState } from 'react';
import type { BackupSummary } from '../../app/session/app.ts';
import type { Told } from '../../app/session/kit.ts';
import { whatIsKept } from '../../app/whatIsKept.ts';
import { useApp, useApplication } from '../context.ts';
import { EraseForGood } from './EraseForGood.tsx';
import { useTold } from './useTold.ts';
import { when } from './when.ts';

const reasons: Record<BackupSummary['reason'], string> = {
  migration: 'before it was updated to the current format',
  import: 'before a file replaced it',
  list: 'before a door list was imported',
  copy: 'in the database, older than the second copy',
  apart: 'another history of the project, out of the second copy',
  restore: 'before a backup replaced it',
  remove: 'when it was removed',
  damaged: 'as found, with damaged parts',
  day: 'first save of a day',
  edition: 'issued',
};

/** Of all projects: one that was removed can only be found here. */
export function Backups({ changes, onChanged }: { changes: number; onChanged: () => void }) {
  const app = useApplication();
  const saving = useApp((state) => state.saving.kind);
  const told = useTold(() => app.listBackups(), `${saving} ${changes}`);
  const listed = useTold(app.listProjects, `${saving} ${changes}`);
  const isListed = (id: string) => !listed?.ok || listed.projects.some((project) => project.id === id);
  const [asks, setAsks] = useState<number | null>(null);
  const [problem, setProblem] = useState('');
  const run = async (work: () => Promise<Told>) => {
    const done = await work();
    setProblem(done.ok ? '' : done.says);
    setAsks(null);
    onChanged();
  };
  if (told === undefined) return <p className="note">Loading…</p>;
  if (!told.ok) {
    return (
      <p role="alert" className="field-error">
        {told.says}
      </p>
    );
  }
  return (
    <div className="stack">
      {told.backups.length === 0 ? (
        <p className="note">
          None yet. One is made every day you work, and before anything replaces a project.
        </p>
      ) : (
        <div className="schedule-scroll">
          <table className="schedule schedule-folds">
            <thead>
              <tr>
                <th scope="col">Project</th>
                <th scope="col">Made</th>
                <th scope="col">Why</th>
                <th scope="col">Action</th>
              </tr>
            </thead>
            <tbody>
              {told.backups.map((backup, index) => (
                <tr key={backup.id}>
                  <th scope="row" data-head="Project">
                    {backup.name}
                  </th>
                  <td data-head="Made">{when(backup.at)}</td>
                  <td data-head="Why">{reasons[backup.reason]}</td>
                  <td className="file-actions">
                    {asks === backup.id ? (
                      <>
                        <p>
                          Put <strong>{backup.name}</strong> back as it was on {when(backup.at)}? Today’s
                          state is kept as a backup.
                        </p>
                        <button
                          type="button"
                          className="button button-small"
                          onClick={() => void run(() => app.restoreBackup(backup.id))}
                        >
                          Restore {backup.name}
                        </button>{' '}
                        <button
                          type="button"
                          className="button button-quiet button-small"
                          onClick={() => setAsks(null)}
                        >
                          Leave it
                        </button>
                      </>
                    ) : (
                      <button
                        type="button"
                        className="button button-small"
                        onClick={() => setAsks(backup.id)}
                      >
                        <span>
                          Restore
                          <span className="visually-hidden">
                            {' '}
                            {backup.name} of {when(backup.at)}
                          </span>{' '}
                          …
                        </span>
                      </button>
                    )}
                    {!isListed(backup.projectId) &&
                      told.backups.findIndex((one) => one.projectId === backup.projectId) === index && (
                        <EraseForGood
                          name={backup.name}
                          isBusy={false}
                          onErase={() => void run(() => app.eraseProject(backup.projectId))}
                        />
                      )}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
      <details>
        <summary>What is kept here and for how long</summary>
        <ul>
          {whatIsKept.map((says) => (
            <li key={says}>{says}</li>
          ))}
        </ul>
      </details>
    </div>
  );
}
