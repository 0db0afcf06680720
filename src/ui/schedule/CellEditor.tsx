import { useRef } from 'react';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { Opening } from '../../domain/model/project.ts';
import { useStore } from '../context.ts';
import { readFact } from '../../domain/survey/readFact.ts';
import { choicesOf, shownValue } from '../opening/answers.ts';
import { placeOfFact } from '../opening/placeOfFact.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useDraft } from '../parts/useDraft.ts';
import type { Column } from './columns.ts';

interface Props {
  readonly column: Column;
  readonly opening: Opening;
  /** Back to the grid with the cursor, unless it already went elsewhere. */
  readonly onDone: (left: boolean) => void;
}

/** One cell being edited: Enter or leaving it keeps, Escape leaves it as it was, a wrong value stays with its sentence. */
export function CellEditor({ column, opening, onDone }: Props) {
  const store = useStore();
  const fact = column.fact;
  const label = `${column.head}, ${opening.mark}`;
  const held = useDraft(
    fact ? placeOfFact(opening, fact) : { place: `mark/${opening.id}`, label, href: '#/schedule' },
    fact ? shownValue(opening.facts[fact]) : opening.mark,
  );
  const { value: draft, type: setDraft } = held;

  /** Leaving the field that just went away must not keep it a second time. */
  const over = useRef(false);
  const byPointer = useRef(false);
  const done = (left: boolean) => {
    over.current = true;
    onDone(left);
  };

  const keep = (text: string, left = false) => {
    if (over.current) return;
    const result = fact
      ? setFact(fact, text)
      : store
          .getState()
          .dispatch('Mark', [{ kind: 'setOpening', id: opening.id, field: 'mark', value: text.trim() }]);
    if (result.ok) {
      held.done();
      return done(left);
    }
    held.settle(result.says);
    // Nobody looks at this cell any more; the sentence must not be lost with it.
    if (left) store.getState().tell({ kind: 'problem', says: `${label}: ${result.says}` });
  };
  const setFact = (key: FactKey, text: string) => {
    const answer = readFact(key, text);
    if (!answer.ok) return answer;
    return store
      .getState()
      .dispatch(fieldInfo(key).label, [{ kind: 'setFact', id: opening.id, fact: key, value: answer.fact }]);
  };

  const choices = fact ? choicesOf(fact) : undefined;
  const keys = (event: { key: string; preventDefault: () => void; stopPropagation: () => void }) => {
    byPointer.current = false;
    if (event.key === 'Escape') {
      held.done();
      done(false);
    } else if (event.key === 'Enter' || event.key === 'Tab') keep(draft);
    else {
      event.stopPropagation();
      return;
    }
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <span className="cell-editor">
      {choices ? (
        <select
          className="input"
          aria-label={label}
          autoFocus
          value={draft}
          onPointerDown={() => {
            byPointer.current = true;
          }}
          onChange={(event) => {
            setDraft(event.target.value);
            // With the arrow keys every step is a change; only Enter or leaving keeps it.
            if (byPointer.current) keep(event.target.value);
          }}
          onKeyDown={keys}
          onBlur={() => keep(draft, true)}
        >
          <option value="">Not surveyed</option>
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
          <option value="?">Not known</option>
        </select>
      ) : (
        <input
          className="input"
          aria-label={label}
          aria-invalid={held.problem !== ''}
          autoFocus
          value={draft}
          readOnly={held.isReadOnly}
          onChange={(event) => setDraft(event.target.value)}
          onKeyDown={keys}
          onBlur={() => keep(draft, true)}
        />
      )}
      <DraftNote draft={held} />
    </span>
  );
}
