import { linkTo } from '../../app/addresses.ts';
import { undoAndSay } from '../../app/undoAndSay.ts';
import type { ShownState } from '../../domain/words/states.ts';
import type { Opening } from '../../domain/model/project.ts';
import { floorPlanWords } from '../../domain/project/floorPlans.ts';
import { useApp, useStore } from '../context.ts';
import { photoPlace, photoWords } from '../../domain/survey/photos.ts';
import { PhotoButton } from '../photos/PhotoButton.tsx';
import { openingOf } from '../../domain/trail/says.ts';
import { notesId } from '../opening/notes.ts';
import { DecisionStateMark } from '../parts/DecisionStateMark.tsx';

interface Props {
  readonly opening: Opening;
  readonly order: readonly Opening[];
  readonly state: ShownState;
  readonly headline: string;
  /** Where on the way round the door a picture would be taken now. */
  readonly station: string;
}

/** Always under the thumb: where the decision stands, the openings before and after, and the last answer taken back. */
export function ThumbBar({ opening, order, state, headline, station }: Props) {
  const index = order.findIndex((one) => one.id === opening.id);
  return (
    <div className="thumb-bar walk-bar">
      <div className="walk-top">
        <a className="walk-state" href={linkTo('opening', opening.id)}>
          <span role="status" className="row">
            <DecisionStateMark state={state} />
            {(state === 'settled' || state === 'open' || state === 'checking') && (
              <span className="walk-headline">{headline}</span>
            )}
          </span>
        </a>
        <button type="button" className="button" onClick={() => document.getElementById(notesId)?.focus()}>
          Note
        </button>
      </div>
      <nav className="walk-steps" aria-label="Openings">
        <Step to={order[index - 1]} before />
        <UndoHere openingId={opening.id} />
        <PhotoButton opening={opening} about={photoPlace(station) ?? ''} label={photoWords.bar} />
        <a className="button" href={linkTo('plan')} aria-label={floorPlanWords.fromWalk}>
          {floorPlanWords.inBar}
        </a>
        <Step to={order[index + 1]} />
      </nav>
    </div>
  );
}

function Step({ to, before = false }: { to: Opening | undefined; before?: boolean }) {
  if (!to) return <span />;
  return (
    <a className="button" href={linkTo('walk', to.id)}>
      <span>{before ? `← ${to.mark}` : `${to.mark} →`}</span>
    </a>
  );
}

/** Takes back the last thing done at this opening; never something at another door that nobody sees here. */
function UndoHere({ openingId }: { openingId: string }) {
  const store = useStore();
  const last = useApp((state) => state.document.past.at(-1)?.command);
  const here = last?.edits.some(
    (edit) => edit.kind === 'setBuildingFact' || edit.kind === 'setUsual' || openingOf(edit) === openingId,
  );
  return (
    <button
      type="button"
      className="button"
      disabled={!here}
      aria-label={here && last ? `Undo: ${last.label}` : 'Nothing to undo here'}
      onClick={() => undoAndSay(store)}
    >
      Undo
    </button>
  );
}
