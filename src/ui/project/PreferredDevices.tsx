import { useId, useState } from 'react';
import { deviceIds, devices } from '../../domain/devices/devices.ts';
import type { Project } from '../../domain/model/project.ts';
import {
  noLongerPreferred,
  preferEdits,
  preferenceLines,
  preferenceMeans,
  preferencePoints,
} from '../../domain/project/preferences.ts';
import { useCommand } from './useCommand.ts';

/** Devices the owner would rather have, each with its points and its reason. */
export function PreferredDevices({ project }: { project: Project }) {
  const command = useCommand();
  const id = useId();
  const [device, setDevice] = useState('');
  const [points, setPoints] = useState(preferencePoints[0]?.[0] ?? 1);
  const [says, setSays] = useState('');
  const [problem, setProblem] = useState('');
  const lines = preferenceLines(project);
  return (
    <section className="stack" aria-label="Preferred devices">
      <h3>Preferred devices</h3>
      <p className="note">{preferenceMeans}</p>
      {lines.length > 0 && (
        <ul className="reasons">
          {lines.map((line) => (
            <li key={line.device}>
              <strong>{line.name}</strong>: {line.says}{' '}
              <button
                type="button"
                className="button button-quiet button-small"
                onClick={() =>
                  setProblem(
                    command(`No preference for ${line.name}`, noLongerPreferred(project, line.device)) ?? '',
                  )
                }
              >
                Remove<span className="visually-hidden"> the preference for {line.name}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      <form
        className="stack"
        aria-label="Prefer a device"
        onSubmit={(event) => {
          event.preventDefault();
          const read = preferEdits(project, device, points, says);
          if (!read.ok) return setProblem(read.says);
          const name = deviceIds.find((one) => one === device);
          const refused = command(`Prefer ${name === undefined ? device : devices[name].name}`, read.edits);
          setProblem(refused ?? '');
          if (refused === undefined) setSays('');
        }}
      >
        <div className="project-fields">
          <label className="field" htmlFor={`${id}device`}>
            <span className="field-label">Device</span>
            <select
              id={`${id}device`}
              className="input"
              value={device}
              onChange={(event) => setDevice(event.target.value)}
            >
              <option value="">Choose</option>
              {deviceIds.map((one) => (
                <option key={one} value={one}>
                  {devices[one].name}
                </option>
              ))}
            </select>
          </label>
          <label className="field" htmlFor={`${id}points`}>
            <span className="field-label">How much</span>
            <select
              id={`${id}points`}
              className="input"
              value={points}
              onChange={(event) => setPoints(Number(event.target.value))}
            >
              {preferencePoints.map(([value, words]) => (
                <option key={value} value={value}>
                  {words}
                </option>
              ))}
            </select>
          </label>
          <label className="field" htmlFor={`${id}says`}>
            <span className="field-label">Why</span>
            <input
              id={`${id}says`}
              className="input"
              value={says}
              onChange={(event) => setSays(event.target.value)}
            />
          </label>
        </div>
        {problem !== '' && (
          <p role="alert" className="field-error">
            {problem}
          </p>
        )}
        <div className="row">
          <button type="submit" className="button">
            Prefer this device
          </button>
        </div>
      </form>
    </section>
  );
}
