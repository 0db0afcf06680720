import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import type { Project } from '../../domain/model/project.ts';
import { closetsInOrder } from '../../domain/power/place.ts';
import { closetEdit, feedEdits, runLengthEdit } from '../../domain/project/powerDrafts.ts';
import type { ClosetPart, RunLine } from '../../exporting/sheets/powerSheet.ts';
import { TextField } from '../project/TextField.tsx';
import { useCommand } from '../project/useCommand.ts';

/** Runs closet by closet; one closet is unfolded at a time, a big building would be a long table otherwise. */
export function Runs({ project, parts }: { project: Project; parts: readonly ClosetPart[] }) {
  const [open, setOpen] = useState<string | null>(null);
  return (
    <div className="stack">
      {parts
        .filter(({ runs }) => runs.length > 0)
        .map((part) => {
          const key = part.id ?? '';
          return (
            <details
              key={key}
              open={open === key}
              onToggle={(event) => {
                if (event.currentTarget.open) setOpen(key);
                else if (open === key) setOpen(null);
              }}
            >
              <summary>
                {part.name}: {part.runs.length}
              </summary>
              {open === key && <RunTable project={project} runs={part.runs} />}
            </details>
          );
        })}
    </div>
  );
}

function RunTable({ project, runs }: { project: Project; runs: readonly RunLine[] }) {
  return (
    <table className="schedule schedule-close schedule-folds power-runs">
      <thead>
        <tr>
          <th scope="col">Mark</th>
          <th scope="col">Closet, supply and run</th>
          <th scope="col">Loads</th>
          <th scope="col">Cable</th>
          <th scope="col">Drop</th>
          <th scope="col">At the lock</th>
          <th scope="col">End of battery</th>
        </tr>
      </thead>
      <tbody>
        {runs.map((run) => (
          <tr key={run.id}>
            <th scope="row">
              <a className="mark" href={linkTo('opening', run.id)}>
                {run.mark}
              </a>
            </th>
            <td data-head="Closet, supply and run">
              <RunFields project={project} run={run} />
            </td>
            <td data-head="Loads">{run.loads}</td>
            <td data-head="Cable">{run.cable}</td>
            <td data-head="Drop">{run.drop}</td>
            <td data-head="At the lock">{run.atLock}</td>
            <td data-head="End of battery">{run.onBattery}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function RunFields({ project, run }: { project: Project; run: RunLine }) {
  const command = useCommand();
  const said = project.runs[run.id];
  const label = `${run.mark}: run`;
  const closetId = said?.closetId?.value ?? '';
  const supplyId = said?.supplyId?.value ?? '';
  return (
    <div className="power-run-fields">
      <select
        className="input"
        aria-label={`Closet of ${run.mark}`}
        value={Object.hasOwn(project.closets, closetId) ? closetId : ''}
        onChange={(event) => command(label, [closetEdit(run.id, event.target.value)])}
      >
        <option value="">No closet</option>
        {closetsInOrder(project).map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      <select
        className="input"
        aria-label={`Supply of ${run.mark}`}
        value={Object.hasOwn(project.supplies, supplyId) ? supplyId : ''}
        onChange={(event) => command(label, feedEdits(project, run.id, event.target.value))}
      >
        <option value="">No supply</option>
        {Object.values(project.supplies).map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
      <TextField
        label={`Run of ${run.mark}, feet one way`}
        hideLabel
        at={{ place: `run/${run.id}`, href: linkTo('power') }}
        value={said?.lengthFt ? String(said.lengthFt.value) : ''}
        placeholder={run.length}
        onKeep={(text) => {
          const read = runLengthEdit(run.id, text);
          return read.ok ? command(label, [read.value]) : read.says;
        }}
      />
    </div>
  );
}
