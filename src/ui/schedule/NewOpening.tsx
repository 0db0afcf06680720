import { moveTo, linkTo } from '../../app/addresses.ts';
import { useId, useState } from 'react';
import { emptyBeside, openingLike, sameAsInWords } from '../../domain/survey/takeOver.ts';
import { nextMark } from '../../domain/survey/nextMark.ts';
import { compareMarks } from '../../domain/model/project.ts';
import { useApp, useApplication } from '../context.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useDraft } from '../parts/useDraft.ts';

interface Props {
  /** The page that shows the new opening. */
  readonly goesTo?: 'opening' | 'walk';
  /** The opening to be offered as the one it is like. */
  readonly likeId?: string;
}

interface NewDoor {
  readonly mark: string;
  readonly copyFrom: string;
}

/** Adds an opening, empty or with all facts of another one: in a corridor the next door is like the last. */
export function NewOpening({ goesTo = 'opening', likeId }: Props) {
  const app = useApplication();
  const { store } = app;
  const openings = useApp((state) => state.document.project.openings);
  const selectedId = useApp((state) => state.session.selectedId);
  const nearId = likeId ?? selectedId;
  const [suggested, suggest] = useState<NewDoor>({ mark: '', copyFrom: '' });
  const draft = useDraft({ place: 'opening/new', label: 'New opening', href: linkTo('schedule') }, suggested);
  const { mark, copyFrom } = draft.value;
  const [asked, setOpen] = useState(false);
  const open = asked || draft.isChanged;
  const type = (next: NewDoor) => {
    setOpen(true);
    draft.type(next);
  };
  const ids = useId();
  const sorted = Object.values(openings).toSorted((a, b) => compareMarks(a.mark, b.mark));

  const start = () => {
    const last = nearId === null ? undefined : openings[nearId];
    suggest({
      mark: nextMark(
        sorted.map((one) => one.mark),
        last?.mark,
      ),
      copyFrom: last?.id ?? '',
    });
    setOpen(true);
  };
  const add = () => {
    const id = app.newId();
    const like = openings[copyFrom];
    const near = goesTo === 'walk' && nearId !== null ? openings[nearId] : undefined;
    const opening = like ? openingLike(id, mark.trim(), like) : emptyBeside(id, mark.trim(), near);
    const result = store
      .getState()
      .dispatch(`New opening ${mark.trim()}`, [{ kind: 'putOpening', id, value: opening }]);
    draft.settle(result.ok ? undefined : result.says);
    if (!result.ok) return;
    setOpen(false);
    moveTo(goesTo, id);
  };

  if (!open) {
    return (
      <button type="button" className="button button-main" onClick={start}>
        New opening
      </button>
    );
  }
  return (
    <form
      className="row new-opening"
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <label className="field" htmlFor={`${ids}mark`}>
        <span className="field-label">Mark</span>
        <input
          id={`${ids}mark`}
          className="input"
          autoFocus
          value={mark}
          readOnly={draft.isReadOnly}
          aria-invalid={draft.problem !== ''}
          onChange={(event) => type({ mark: event.target.value, copyFrom })}
        />
      </label>
      <label className="field" htmlFor={`${ids}like`}>
        <span className="field-label">Facts</span>
        <select
          id={`${ids}like`}
          className="input"
          value={copyFrom}
          onChange={(event) => type({ mark, copyFrom: event.target.value })}
        >
          <option value="">Start empty</option>
          {sorted.map((one) => (
            <option key={one.id} value={one.id}>
              Same as {one.mark}
            </option>
          ))}
        </select>
      </label>
      <button type="submit" className="button button-main">
        Add
      </button>
      <button
        type="button"
        className="button button-quiet"
        onClick={() => {
          draft.done();
          setOpen(false);
        }}
      >
        Cancel
      </button>
      {copyFrom !== '' && <p className="note new-opening-note">{sameAsInWords}</p>}
      <DraftNote draft={draft} />
    </form>
  );
}
