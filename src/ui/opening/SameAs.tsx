import { useId, useState } from 'react';
import type { Opening, Project } from '../../domain/model/project.ts';
import { surveyGroups } from '../../domain/survey/fieldGroups.ts';
import { sameAsInWords, takenOver, takenOverInWords } from '../../domain/survey/takeOver.ts';
import { standardTemplates, templateById } from '../../domain/survey/standardTemplates.ts';
import { templatesFor, templateWords } from '../../domain/survey/templates.ts';
import { useStore } from '../context.ts';
import { NewLike } from './NewLike.tsx';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
  /** The page that shows the new opening. */
  readonly goesTo: 'opening' | 'walk';
}

/** Any opening as the one that this door, or a new one, is like: found by mark. */
export function SameAs({ project, opening, goesTo }: Props) {
  const [open, setOpen] = useState(false);
  const [likeId, setLikeId] = useState<string | null>(null);
  const like = likeId === null ? undefined : templateById(project, likeId);
  if (Object.keys(project.openings).length + standardTemplates(project).length < 2) return null;
  if (!open)
    return (
      <button type="button" className="button self-start" onClick={() => setOpen(true)}>
        {templateWords.open}
      </button>
    );
  const close = () => {
    setOpen(false);
    setLikeId(null);
  };
  return (
    <section className="section stack stack-tight" aria-label={templateWords.title}>
      <h2>{like ? templateWords.chosen(like.mark) : templateWords.title}</h2>
      {like ? (
        <>
          <p className="note">{sameAsInWords}</p>
          <TakeHere opening={opening} like={like} onDone={close} />
          <NewLike project={project} near={opening} like={like} goesTo={goesTo} onDone={close} />
          <button type="button" className="button self-start" onClick={() => setLikeId(null)}>
            {templateWords.other}
          </button>
        </>
      ) : (
        <Find project={project} near={opening} onPick={setLikeId} />
      )}
      <button type="button" className="button button-quiet self-start" onClick={close}>
        Cancel
      </button>
    </section>
  );
}

function Find(props: { project: Project; near: Opening; onPick: (id: string) => void }) {
  const [typed, setTyped] = useState('');
  const id = useId();
  const { shown, more } = templatesFor(props.project, typed, props.near);
  return (
    <>
      <label className="field" htmlFor={id}>
        <span className="field-label">{templateWords.find}</span>
        <input
          id={id}
          className="input"
          type="search"
          autoFocus
          autoComplete="off"
          value={typed}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      {shown.length === 0 ? (
        <p role="status">{typed.trim() === '' ? templateWords.nothing : templateWords.none(typed)}</p>
      ) : (
        <div className="answer-list">
          {shown.map((one) => (
            <button key={one.id} type="button" onClick={() => props.onPick(one.id)}>
              <strong>{one.mark}</strong> {one.says}
            </button>
          ))}
        </div>
      )}
      {more > 0 && <p className="note">{templateWords.more(more)}</p>}
    </>
  );
}

const everyGroup = new Set(surveyGroups.map(({ group }) => group));

/** At a door that is in the project already: what nobody saw here yet is taken over as assumed. */
function TakeHere({ opening, like, onDone }: { opening: Opening; like: Opening; onDone: () => void }) {
  const store = useStore();
  const facts = takenOver(like, opening, { groups: everyGroup, replace: false });
  if (like.id === opening.id || facts.length === 0) return null;
  const take = () => {
    const result = store.getState().dispatch(
      `${opening.mark}: same as ${like.mark}`,
      facts.map(({ key, fact }) => ({ kind: 'setFact', id: opening.id, fact: key, value: fact })),
    );
    const says = result.ok ? takenOverInWords(facts.length, like.mark) : result.says;
    store.getState().tell({ kind: result.ok ? 'told' : 'problem', says });
    onDone();
  };
  return (
    <button type="button" className="button button-main self-start" onClick={take}>
      {templateWords.here(opening.mark, facts.length)}
    </button>
  );
}
