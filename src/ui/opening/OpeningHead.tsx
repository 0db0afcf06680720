import { useId } from 'react';
import type { Opening, Project } from '../../domain/model/project.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import { placeOf } from '../../domain/survey/place.ts';
import { useStore } from '../context.ts';
import { useStartAtTop } from '../parts/useStartAtTop.ts';
import { wideAtFirst } from '../parts/wideAtFirst.ts';
import { Notes } from './Notes.tsx';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly before: Opening | undefined;
  readonly after: Opening | undefined;
}

/** Mark, place and neighbours; the words a drawing carries in its title block. */
export function OpeningHead({ project, opening, before, after }: Props) {
  const top = useStartAtTop();
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
        <a className="step-link" href="#/schedule">
          Schedule
        </a>
        <NeighbourLink to={before} words={before && `← ${before.mark}`} />
        <NeighbourLink to={after} words={after && `${after.mark} →`} />
        <a className="step-link row-end" href={`#/walk/${encodeURIComponent(opening.id)}`}>
          Walk from here
        </a>
      </nav>
      <h1 ref={top} className="mark mark-large" tabIndex={-1}>
        {opening.mark}
      </h1>
      <details open={wideAtFirst()}>
        <summary>{placeOf(project, opening)}</summary>
        <div className="row opening-head">
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
          <Notes opening={opening} />
          <button type="button" className="button button-remove button-small remove-opening" onClick={remove}>
            Remove {opening.mark}
          </button>
        </div>
      </details>
    </div>
  );
}

function NeighbourLink({ to, words }: { to: Opening | undefined; words: string | undefined }) {
  if (!to) return null;
  return (
    <a className="step-link" href={`#/opening/${encodeURIComponent(to.id)}`}>
      {words}
    </a>
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
