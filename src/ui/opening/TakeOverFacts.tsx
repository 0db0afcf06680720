import { useId, useState } from 'react';
import { orderedOpenings } from '../../app/order.ts';
import type { FieldGroup } from '../../domain/model/field.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { surveyGroups } from '../../domain/survey/fieldGroups.ts';
import { groupsToTake, takenOver, takenOverInWords, takeOverInWords } from '../../domain/survey/takeOver.ts';
import { useStore } from '../context.ts';

interface Props {
  readonly project: Project;
  readonly opening: Opening;
}

/** Copies chosen parts of another opening's survey; one step to undo. */
export function TakeOverFacts({ project, opening }: Props) {
  const [open, setOpen] = useState(false);
  if (Object.keys(project.openings).length < 2) return null;
  if (!open) {
    return (
      <button type="button" className="button self-start" onClick={() => setOpen(true)}>
        Copy facts from …
      </button>
    );
  }
  return <TakeOverForm project={project} opening={opening} onDone={() => setOpen(false)} />;
}

function TakeOverForm({ project, opening, onDone }: Props & { readonly onDone: () => void }) {
  const store = useStore();
  const id = useId();
  const others = orderedOpenings(project).filter((one) => one.id !== opening.id);
  const order = orderedOpenings(project);
  const before = order[order.findIndex((one) => one.id === opening.id) - 1];
  const [fromId, setFromId] = useState((before ?? others[0])?.id ?? '');
  const [left, setLeft] = useState<ReadonlySet<FieldGroup>>(new Set());
  const [replace, setReplace] = useState(false);
  const from = project.openings[fromId];
  if (!from) return null;
  const offered = groupsToTake(from);
  const groups = new Set([...offered].filter((group) => !left.has(group)));
  const facts = takenOver(from, opening, { groups, replace });

  const takeOver = () => {
    const edits = facts.map(({ key, fact }) => ({
      kind: 'setFact' as const,
      id: opening.id,
      fact: key,
      value: fact,
    }));
    const result = store.getState().dispatch(`${opening.mark}: facts of ${from.mark}`, edits);
    const says = result.ok ? takenOverInWords(facts.length, from.mark) : result.says;
    store.getState().tell({ kind: result.ok ? 'told' : 'problem', says });
    onDone();
  };
  return (
    <form
      className="section stack"
      aria-labelledby={`${id}title`}
      onSubmit={(event) => {
        event.preventDefault();
        takeOver();
      }}
    >
      <h3 id={`${id}title`}>Copy facts</h3>
      <label className="field" htmlFor={`${id}from`}>
        <span className="field-label">From</span>
        <select
          id={`${id}from`}
          className="input"
          autoFocus
          value={fromId}
          onChange={(event) => setFromId(event.target.value)}
        >
          {others.map((one) => (
            <option key={one.id} value={one.id}>
              {one.mark}
            </option>
          ))}
        </select>
      </label>
      <fieldset className="field">
        <legend>Which parts</legend>
        <div className="choices">
          {surveyGroups
            .filter(({ group }) => offered.has(group))
            .map(({ group, name }) => (
              <label key={group} className="choice">
                <input
                  type="checkbox"
                  checked={!left.has(group)}
                  onChange={(event) => {
                    const next = new Set(left);
                    if (event.target.checked) next.delete(group);
                    else next.add(group);
                    setLeft(next);
                  }}
                />
                {name}
              </label>
            ))}
        </div>
      </fieldset>
      <label className="choice">
        <input type="checkbox" checked={replace} onChange={(event) => setReplace(event.target.checked)} />
        Also replace what is already known here
      </label>
      <p role="status">{takeOverInWords(facts.length, from.mark)}</p>
      <div className="row">
        <button type="submit" className="button button-main" disabled={facts.length === 0}>
          Copy
        </button>
        <button type="button" className="button button-quiet" onClick={onDone}>
          Cancel
        </button>
      </div>
    </form>
  );
}
