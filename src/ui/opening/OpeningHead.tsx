import { linkTo } from '../../app/addresses.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { placeOf } from '../../domain/survey/place.ts';
import { useStore } from '../context.ts';
import { useStartAtTop } from '../parts/useStartAtTop.ts';
import { wideAtFirst } from '../parts/wideAtFirst.ts';
import { Notes } from './Notes.tsx';
import { PlacePicks } from './PlacePicks.tsx';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  readonly before: Opening | undefined;
  readonly after: Opening | undefined;
}

/** Mark, place and neighbors; the words a drawing carries in its title block. */
export function OpeningHead({ project, opening, before, after }: Props) {
  const top = useStartAtTop();
  const store = useStore();
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
        <a className="step-link" href={linkTo('schedule')}>
          Schedule
        </a>
        <NeighborLink to={before} words={before && `← ${before.mark}`} />
        <NeighborLink to={after} words={after && `${after.mark} →`} />
        <a className="step-link row-end" href={linkTo('walk', opening.id)}>
          Walk from here
        </a>
      </nav>
      <h1 ref={top} className="mark mark-large" tabIndex={-1}>
        {opening.mark}
      </h1>
      <details open={wideAtFirst()}>
        <summary>{placeOf(project, opening)}</summary>
        <div className="row opening-head">
          <PlacePicks project={project} opening={opening} />
          <Notes opening={opening} />
          <button type="button" className="button button-remove button-small remove-opening" onClick={remove}>
            Remove {opening.mark}
          </button>
        </div>
      </details>
    </div>
  );
}

function NeighborLink({ to, words }: { to: Opening | undefined; words: string | undefined }) {
  if (!to) return null;
  return (
    <a className="step-link" href={linkTo('opening', to.id)}>
      {words}
    </a>
  );
}
