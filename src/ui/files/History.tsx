import { useMemo, useState } from 'react';
import type { Project } from '../../domain/model/project.ts';
import { type HistoryLine, historyLines, historyRule } from '../../domain/trail/history.ts';
import { historyCsv } from '../../exporting/csv/historyCsv.ts';
import { commandsKept } from '../../app/whatIsKept.ts';
import { useApp, useApplication } from '../context.ts';
import { downloadText, fileName } from './download.ts';
import { useTold } from './useTold.ts';
import { when } from './when.ts';

const atOnce = 25;
const byWhom = (by: string) => (by === '' ? 'not named' : by);

/** What was done, by whom and when, newest first: to the whole project, or to one opening. */
export function History({ openingId }: { openingId?: string }) {
  const app = useApplication();
  const project = useApp((state) => state.document.project);
  const saving = useApp((state) => state.saving.kind);
  const told = useTold(app.listCommands, saving);
  if (told === undefined) return <p className="note">Loading…</p>;
  if (!told.ok) {
    return (
      <p role="alert" className="field-error">
        {told.says}
      </p>
    );
  }
  return <Lines project={project} commands={told.commands} openingId={openingId} />;
}

interface Props {
  readonly project: Project;
  readonly commands: Parameters<typeof historyLines>[1];
  readonly openingId: string | undefined;
}

function Lines({ project, commands, openingId }: Props) {
  const [shown, setShown] = useState(atOnce);
  const [who, setWho] = useState('');
  const all = useMemo(() => historyLines(project, commands, openingId), [project, commands, openingId]);
  const people = useMemo(() => [...new Set(all.map(({ by }) => by))].toSorted(), [all]);
  const lines = who === '' ? all : all.filter(({ by }) => byWhom(by) === who);
  const save = () => {
    const mark = openingId === undefined ? '' : `${project.openings[openingId]?.mark ?? ''} `;
    downloadText(fileName(project.name, `${mark}history.csv`), historyCsv(project, lines));
  };
  if (all.length === 0) return <p className="note">Nothing was done here yet.</p>;
  return (
    <div className="stack">
      <div className="row">
        <label className="field">
          <span className="field-label">By</span>
          <select className="input" value={who} onChange={(event) => setWho(event.target.value)}>
            <option value="">Everybody</option>
            {people.map((by) => (
              <option key={by}>{byWhom(by)}</option>
            ))}
          </select>
        </label>
        <button type="button" className="button" onClick={save}>
          Save the history as CSV
        </button>
      </div>
      <Table lines={lines.slice(0, shown)} />
      {lines.length > shown && (
        <button
          type="button"
          className="button button-small self-start"
          onClick={() => setShown(shown + atOnce)}
        >
          Show older ({lines.length - shown})
        </button>
      )}
      <p className="note">{historyRule(commandsKept)}</p>
    </div>
  );
}

function Table({ lines }: { lines: readonly HistoryLine[] }) {
  return (
    <table className="schedule schedule-close schedule-folds">
      <thead>
        <tr>
          <th scope="col">When</th>
          <th scope="col">Who</th>
          <th scope="col">What</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <tr key={line.id}>
            <td data-head="When">{when(line.at)}</td>
            <td data-head="Who">{byWhom(line.by)}</td>
            <td data-head="What">{line.says}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
