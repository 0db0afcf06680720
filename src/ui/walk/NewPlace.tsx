import { useId, useState } from 'react';
import { newSpace } from '../../domain/model/newProject.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { useApplication } from '../context.ts';

/** A room or a floor made at the door, by its name or number. */
export function NewPlace({ project, opening }: { project: Project; opening: Opening }) {
  const app = useApplication();
  const dispatch = (...[label, edits]: Parameters<ReturnType<typeof app.store.getState>['dispatch']>) =>
    app.store.getState().dispatch(label, edits);
  const room = (name: string) => {
    const id = app.newId();
    const value = { ...newSpace(id, name), floorId: opening.floorId };
    return dispatch(`${opening.mark}: room ${name}`, [
      { kind: 'putSpace', id, value },
      { kind: 'setOpening', id: opening.id, field: 'toSpaceId', value: id },
    ]);
  };
  const floor = (name: string) => {
    const id = app.newId();
    const level = Math.max(0, ...Object.values(project.floors).map((one) => one.level)) + 1;
    return dispatch(`${opening.mark}: floor ${name}`, [
      { kind: 'putFloor', id, value: { id, name, level } },
      { kind: 'setOpening', id: opening.id, field: 'floorId', value: id },
    ]);
  };
  return (
    <>
      <NameField label="Room behind the door, by name or number" onName={room} />
      <NameField label="New floor" onName={floor} />
    </>
  );
}

function NameField(props: { label: string; onName: (name: string) => { ok: boolean; says?: string } }) {
  const id = useId();
  const [name, setName] = useState('');
  const [problem, setProblem] = useState('');
  return (
    <form
      className="field pick"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() === '') return;
        const result = props.onName(name.trim());
        setProblem(result.ok ? '' : (result.says ?? ''));
        if (result.ok) setName('');
      }}
    >
      <label htmlFor={id} className="lettering soft">
        {props.label}
      </label>
      <span className="row">
        <input
          id={id}
          className="input"
          enterKeyHint="done"
          value={name}
          onChange={(event) => setName(event.target.value)}
        />
        <button type="submit" className="button" aria-label={`Add: ${props.label}`}>
          Add
        </button>
      </span>
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </form>
  );
}
