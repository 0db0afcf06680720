import { useId } from 'react';
import type { Opening, Project } from '../../domain/model/project.ts';
import { useStore } from '../context.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly before: Opening | undefined;
  readonly after: Opening | undefined;
}

/** Mark, place and neighbours; the words a drawing carries in its title block. */
export function OpeningHead({ project, opening, before, after }: Props) {
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
  const remove = () => {
    store
      .getState()
      .dispatch(`Remove ${opening.mark}`, [{ kind: 'putOpening', id: opening.id, value: null }]);
    store.getState().tell({ kind: 'told', says: `${opening.mark} was removed. Undo brings it back.` });
    store.getState().goTo('schedule');
  };
  return (
    <div className="stack stack-tight">
      <nav className="row" aria-label="Openings">
        <a href="#/schedule">Schedule</a>
        {before && <a href={`#/opening/${encodeURIComponent(before.id)}`}>← {before.mark}</a>}
        {after && <a href={`#/opening/${encodeURIComponent(after.id)}`}>{after.mark} →</a>}
        <button type="button" className="button button-quiet button-small row-end" onClick={remove}>
          Remove this opening
        </button>
      </nav>
      <div className="row row-baseline opening-head">
        <h1 className="mark mark-large">{opening.mark}</h1>
        <Pick label="Floor" value={opening.floorId} onPick={set('floorId')} options={floors} />
        <Pick label="Secure side" value={opening.fromSpaceId} onPick={set('fromSpaceId')} options={spaces} />
        <Pick label="Egress side" value={opening.toSpaceId} onPick={set('toSpaceId')} options={spaces} />
      </div>
      <Notes opening={opening} />
    </div>
  );
}

function Pick(props: {
  label: string;
  value: string | null;
  onPick: (id: string) => void;
  options: readonly { id: string; name: string }[];
}) {
  return (
    <label className="field pick">
      <span className="lettering soft">{props.label}</span>
      <select
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
    </label>
  );
}

/** Kept with every key: a tab that is killed in the middle of a sentence keeps its beginning. */
function Notes({ opening }: { opening: Opening }) {
  const store = useStore();
  const visit = useId();
  return (
    <label className="field">
      <span className="lettering soft">Notes</span>
      <textarea
        className="input notes"
        rows={1}
        value={opening.notes}
        onChange={(event) =>
          store
            .getState()
            .dispatch(
              `${opening.mark}: notes`,
              [{ kind: 'setOpening', id: opening.id, field: 'notes', value: event.target.value }],
              `notes ${visit}`,
            )
        }
      />
    </label>
  );
}
