import { useId, useState } from 'react';
import { emptyBeside, openingLike, sameAsInWords } from '../../domain/survey/takeOver.ts';
import { nextMark } from '../../domain/survey/nextMark.ts';
import { compareMarks } from '../../domain/model/project.ts';
import { useApp, useApplication } from '../context.ts';

interface Props {
  /** The page that shows the new opening. */
  readonly goesTo?: 'opening' | 'walk';
  /** The opening to be offered as the one it is like. */
  readonly likeId?: string;
}

/** Adds an opening, empty or with all facts of another one: in a corridor the next door is like the last. */
export function NewOpening({ goesTo = 'opening', likeId }: Props) {
  const app = useApplication();
  const { store } = app;
  const openings = useApp((state) => state.document.project.openings);
  const selectedId = useApp((state) => state.session.selectedId);
  const nearId = likeId ?? selectedId;
  const [open, setOpen] = useState(false);
  const [mark, setMark] = useState('');
  const [copyFrom, setCopyFrom] = useState('');
  const [problem, setProblem] = useState('');
  const ids = useId();
  const sorted = Object.values(openings).toSorted((a, b) => compareMarks(a.mark, b.mark));

  const start = () => {
    const last = nearId === null ? undefined : openings[nearId];
    setMark(
      nextMark(
        sorted.map((one) => one.mark),
        last?.mark,
      ),
    );
    setCopyFrom(last?.id ?? '');
    setProblem('');
    setOpen(true);
  };
  const add = () => {
    const id = app.newId();
    const like = openings[copyFrom];
    const near = goesTo === 'walk' && nearId !== null ? openings[nearId] : undefined;
    const opening = like ? openingLike(id, mark.trim(), like) : emptyBeside(id, mark.trim(), near);
    const result = store
      .getState()
      .dispatch(`New opening ${mark.trim()}`, [{ kind: 'putOpening', id, value: opening as never }]);
    if (!result.ok) return setProblem(result.says);
    setOpen(false);
    location.hash = `#/${goesTo}/${encodeURIComponent(id)}`;
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
          aria-invalid={problem !== ''}
          onChange={(event) => setMark(event.target.value)}
        />
      </label>
      <label className="field" htmlFor={`${ids}like`}>
        <span className="field-label">Facts</span>
        <select
          id={`${ids}like`}
          className="input"
          value={copyFrom}
          onChange={(event) => setCopyFrom(event.target.value)}
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
      <button type="button" className="button button-quiet" onClick={() => setOpen(false)}>
        Cancel
      </button>
      {copyFrom !== '' && <p className="note new-opening-note">{sameAsInWords}</p>}
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
    </form>
  );
}
