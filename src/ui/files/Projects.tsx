import { moveTo, linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { firstProject } from '../../app/firstProject.ts';
import { randomIds } from '../../app/clock.ts';
import type { ProjectSummary } from '../../app/session/app.ts';
import type { Told } from '../../app/session/kit.ts';
import { projectNeedsName } from '../../domain/model/project.ts';
import { saveProjectText } from '../../domain/versions/file.ts';
import { useApp, useApplication } from '../context.ts';
import { AddName } from '../project/AddName.tsx';
import { EraseForGood } from './EraseForGood.tsx';
import { useTold } from './useTold.ts';
import { kilobytes, when } from './when.ts';

export function Projects({ changes, onChanged }: { changes: number; onChanged: () => void }) {
  const app = useApplication();
  const shownId = useApp((state) => state.document.project.id);
  const saving = useApp((state) => state.saving.kind);
  const told = useTold(app.listProjects, `${saving} ${changes}`);
  const [problem, setProblem] = useState('');
  const [busy, setBusy] = useState(false);
  const run = async (work: () => Promise<Told>) => {
    setBusy(true);
    setProblem('');
    const done = await work();
    setBusy(false);
    if (!done.ok) setProblem(done.says);
    onChanged();
    return done.ok;
  };
  /** A new project is set up before its first opening: what holds for every opening stands on the page of the project. */
  const start = async (name: string) => {
    if (await run(() => app.createProject(name))) moveTo('project');
  };
  return (
    <div className="stack">
      {told === undefined && <p className="note">Loading…</p>}
      {told && !told.ok && (
        <p role="alert" className="field-error">
          {told.says}
        </p>
      )}
      {told?.ok && (
        <div className="schedule-scroll">
          <table className="schedule schedule-folds">
            <thead>
              <tr>
                <th scope="col">Project</th>
                <th scope="col">Last changed</th>
                <th scope="col" className="num">
                  Size
                </th>
                <th scope="col">Action</th>
              </tr>
            </thead>
            <tbody>
              {told.projects.map((project) => (
                <ProjectRow
                  key={project.id}
                  project={project}
                  isShown={project.id === shownId}
                  isBusy={busy}
                  onOpen={() => void run(() => app.openProject(project.id))}
                  onRemove={() => void run(() => app.removeProject(project.id))}
                  onErase={() => void run(() => app.eraseProject(project.id))}
                />
              ))}
            </tbody>
          </table>
        </div>
      )}
      <AddName
        label="New project"
        at={{ place: 'project/new', href: linkTo('files') }}
        button="Start"
        onAdd={(name) => {
          if (name.trim() === '') return projectNeedsName;
          void start(name);
          return undefined;
        }}
      />
      <div className="row">
        <button
          type="button"
          className="button"
          disabled={busy}
          onClick={() =>
            void run(async () => {
              const demo = await firstProject(randomIds);
              if (Object.keys(demo.openings).length === 0) {
                return {
                  ok: false,
                  says: 'The demo building could not be downloaded. Try again with a network connection.',
                };
              }
              // Under an id of its own, so that no demo somebody worked on is written over.
              const text = saveProjectText({ ...demo, id: randomIds() });
              return app.openFile(new Blob([text]));
            })
          }
        >
          Open the demo building again
        </button>
      </div>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </div>
  );
}

interface RowProps {
  readonly project: ProjectSummary;
  readonly isShown: boolean;
  readonly isBusy: boolean;
  readonly onOpen: () => void;
  readonly onRemove: () => void;
  readonly onErase: () => void;
}

function ProjectRow({ project, isShown, isBusy, onOpen, onRemove, onErase }: RowProps) {
  const [asks, setAsks] = useState(false);
  const { name } = project;
  return (
    <tr {...(isShown && { 'aria-current': 'true' as const })}>
      <th scope="row" data-head="Project">
        {name}
      </th>
      <td data-head="Last changed">{when(project.changedAt)}</td>
      <td data-head="Size" className="num">
        {kilobytes(project.size)}
      </td>
      <td className="file-actions">
        {asks ? (
          <>
            <p>
              Remove <strong>{name}</strong> from this browser? A backup of it stays in the list below.
            </p>
            <button type="button" className="button button-remove button-small" onClick={onRemove}>
              Remove {name}
            </button>{' '}
            <button type="button" className="button button-quiet button-small" onClick={() => setAsks(false)}>
              Keep it
            </button>
          </>
        ) : (
          <>
            {isShown ? (
              <span className="tag">Open now</span>
            ) : (
              <button type="button" className="button button-small" disabled={isBusy} onClick={onOpen}>
                Open<span className="visually-hidden"> {name}</span>
              </button>
            )}{' '}
            <button
              type="button"
              className="button button-quiet button-small"
              disabled={isBusy}
              onClick={() => setAsks(true)}
            >
              <span>
                Remove<span className="visually-hidden"> {name}</span> …
              </span>
            </button>{' '}
            <EraseForGood name={name} isBusy={isBusy} onErase={onErase} />
          </>
        )}
      </td>
    </tr>
  );
}
