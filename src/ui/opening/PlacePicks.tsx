import { useId } from 'react';
import type { Opening, Project } from '../../domain/model/project.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import { useStore } from '../context.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
}

/** Where the opening is: its floor and the spaces on its two sides. */
export function PlacePicks({ project, opening }: Props) {
  const store = useStore();
  const floors = Object.values(project.floors).toSorted((a, b) => a.level - b.level);
  const spaces = Object.values(project.spaces).toSorted((a, b) => (a.name < b.name ? -1 : 1));
  const set = (field: 'floorId' | 'fromSpaceId' | 'toSpaceId') => (value: string) => {
    store
      .getState()
      .dispatch(`${opening.mark}: place`, [
        { kind: 'setOpening', id: opening.id, field, value: value || null },
      ]);
  };
  return (
    <>
      <Pick label="Floor" value={opening.floorId} onPick={set('floorId')} options={floors} />
      <Pick
        label="Secure side"
        help={surveyWords.secureSide}
        value={opening.fromSpaceId}
        onPick={set('fromSpaceId')}
        options={spaces}
      />
      <Pick
        label="Egress side"
        help={surveyWords.egressSide}
        value={opening.toSpaceId}
        onPick={set('toSpaceId')}
        options={spaces}
      />
    </>
  );
}

function Pick(props: {
  label: string;
  help?: string;
  value: string | null;
  onPick: (id: string) => void;
  options: readonly { id: string; name: string }[];
}) {
  const id = useId();
  return (
    <div className="field pick">
      <label htmlFor={id} className="lettering soft">
        {props.label}
      </label>
      <select
        id={id}
        aria-describedby={props.help && `${id}help`}
        className="input"
        value={props.value ?? ''}
        onChange={(event) => props.onPick(event.target.value)}
      >
        <option value="">Not stated</option>
        {props.options.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
      {props.help && (
        <span id={`${id}help`} className="note">
          {props.help}
        </span>
      )}
    </div>
  );
}
