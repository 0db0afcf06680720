import { useId, useState } from 'react';
import { type Project, securityLevels, type Space } from '../../domain/model/project.ts';
import {
  floorsInOrder,
  securityLevelWords,
  type SpaceDraft,
  spaceKinds,
} from '../../domain/project/places.ts';
import { focusFirst } from './useDraft.ts';

interface Props {
  readonly project: Project;
  readonly start: SpaceDraft;
  readonly button: string;
  /** Keeps the space; what is refused comes back with its field. */
  readonly onKeep: (draft: SpaceDraft) => { readonly field: string; readonly says: string } | undefined;
  readonly onCancel: () => void;
}

export function SpaceForm({ project, start, button, onKeep, onCancel }: Props) {
  const id = useId();
  const [draft, setDraft] = useState(start);
  const [problem, setProblem] = useState({ field: '', says: '' });
  const set = (change: Partial<SpaceDraft>) => setDraft({ ...draft, ...change });
  const error = (field: string) =>
    problem.field === field && (
      <p role="alert" className="field-error">
        {problem.says}
      </p>
    );
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        const refused = onKeep(draft);
        if (refused) setProblem(refused);
      }}
    >
      <div className="project-fields">
        <div className="field">
          <label htmlFor={`${id}name`}>Name</label>
          <input
            id={`${id}name`}
            className="input"
            ref={focusFirst}
            value={draft.name}
            aria-invalid={problem.field === 'name'}
            onChange={(event) => set({ name: event.target.value })}
          />
          {error('name')}
        </div>
        <Pick
          label="Floor"
          value={draft.floorId}
          onPick={(floorId) => set({ floorId })}
          none="Not stated"
          options={floorsInOrder(project).map((floor) => [floor.id, floor.name])}
        />
        <Pick
          label="Kind"
          value={draft.kind}
          onPick={(kind) => set({ kind: kind as Space['kind'] })}
          options={Object.entries(spaceKinds)}
        />
        <Pick
          label="Security level"
          value={draft.securityLevel}
          onPick={(securityLevel) => set({ securityLevel })}
          none="Not known"
          options={securityLevels.map((level) => [level, securityLevelWords[level]])}
        />
        <div className="field">
          <label htmlFor={`${id}load`}>Occupant load</label>
          <span className="with-unit">
            <input
              id={`${id}load`}
              className="input"
              inputMode="numeric"
              placeholder="Not known"
              value={draft.occupantLoad}
              aria-invalid={problem.field === 'occupantLoad'}
              onChange={(event) => set({ occupantLoad: event.target.value })}
            />
            <span className="dim">people</span>
          </span>
          {error('occupantLoad')}
        </div>
      </div>
      <div className="row">
        <button type="submit" className="button button-main">
          {button}
        </button>
        <button type="button" className="button button-quiet" onClick={onCancel}>
          Cancel
        </button>
      </div>
    </form>
  );
}

export function Pick(props: {
  label: string;
  value: string;
  onPick: (value: string) => void;
  none?: string;
  options: readonly (readonly [value: string, label: string])[];
}) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{props.label}</label>
      <select
        id={id}
        className="input"
        value={props.value}
        onChange={(event) => props.onPick(event.target.value)}
      >
        {props.none !== undefined && <option value="">{props.none}</option>}
        {props.options.map(([value, label]) => (
          <option key={value} value={value}>
            {label}
          </option>
        ))}
      </select>
    </div>
  );
}
