import { moveTo } from '../../app/addresses.ts';
import { useId, useState } from 'react';
import type { Opening, Project } from '../../domain/model/project.ts';
import { askMarkAndFloor, nextMarkOn } from '../../domain/survey/markOnFloor.ts';
import { openingLikeOn, templateWords } from '../../domain/survey/templates.ts';
import { useApplication } from '../context.ts';

interface Props {
  readonly project: Project;
  /** Where one stands: its floor is the one proposed. */
  readonly near: Opening;
  readonly like: Opening;
  readonly goesTo: 'opening' | 'walk';
  readonly onDone: () => void;
}

/** A new opening like another: mark and floor are proposed, and where they disagree that is asked before it is added. */
export function NewLike({ project, near, like, goesTo, onDone }: Props) {
  const app = useApplication();
  const ids = useId();
  const [floorId, setFloorId] = useState(near.floorId);
  /** What somebody typed; null follows the floor. */
  const [typed, setTyped] = useState<string | null>(null);
  const [kept, setKept] = useState('');
  const [problem, setProblem] = useState('');
  const proposed = nextMarkOn(project, floorId, near);
  const mark = (typed ?? proposed ?? '').trim();
  const doubt = kept === `${mark} ${floorId}` ? undefined : askMarkAndFloor(project, mark, floorId, near);
  const floors = Object.values(project.floors).toSorted((a, b) => a.level - b.level);
  const add = () => {
    const id = app.newId();
    const value = openingLikeOn(id, mark, like, floorId);
    const result = app.store.getState().dispatch(`New opening ${mark}`, [{ kind: 'putOpening', id, value }]);
    if (!result.ok) return setProblem(result.says);
    onDone();
    moveTo(goesTo, id);
  };
  return (
    <form
      className="stack stack-tight"
      aria-labelledby={`${ids}title`}
      onSubmit={(event) => {
        event.preventDefault();
        if (!doubt) add();
      }}
    >
      <h3 id={`${ids}title`}>{templateWords.beside}</h3>
      <div className="row">
        <label className="field" htmlFor={`${ids}mark`}>
          <span className="field-label">Mark</span>
          <input
            id={`${ids}mark`}
            className="input"
            autoComplete="off"
            value={typed ?? proposed ?? ''}
            aria-invalid={problem !== ''}
            onChange={(event) => {
              setTyped(event.target.value);
              setProblem('');
            }}
          />
        </label>
        {floors.length > 0 && (
          <label className="field" htmlFor={`${ids}floor`}>
            <span className="field-label">Floor</span>
            <select
              id={`${ids}floor`}
              className="input"
              value={floorId ?? ''}
              onChange={(event) => setFloorId(event.target.value || null)}
            >
              <option value="">Not stated</option>
              {floors.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.name}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
      {mark === '' && <p className="note">{templateWords.noMark}</p>}
      {doubt && (
        <div className="remark stack stack-tight" role="group" aria-label={doubt.says}>
          <p role="status">{doubt.says}</p>
          <div className="row">
            {doubt.move && (
              <button
                type="button"
                className="button"
                onClick={() => {
                  setTyped(mark);
                  setFloorId(doubt.move?.floorId ?? null);
                }}
              >
                {doubt.move.says}
              </button>
            )}
            {doubt.rename && (
              <button type="button" className="button" onClick={() => setTyped(doubt.rename?.mark ?? null)}>
                {doubt.rename.says}
              </button>
            )}
            <button type="button" className="button" onClick={() => setKept(`${mark} ${floorId}`)}>
              {doubt.keep}
            </button>
          </div>
        </div>
      )}
      {problem !== '' && (
        <p role="alert" className="field-error">
          {problem}
        </p>
      )}
      <button
        type="submit"
        className="button button-main self-start"
        disabled={mark === '' || doubt !== undefined}
      >
        {templateWords.add(mark === '' ? '…' : mark, like.mark)}
      </button>
    </form>
  );
}
