import { linkTo } from '../../app/addresses.ts';
import { useId, useRef } from 'react';
import type { GridColumn, GridRow, Ground } from '../../domain/grid/columns.ts';
import { cellReader, namesFor } from '../../domain/grid/readCells.ts';
import { stepLabelOf } from '../../domain/grid/plan.ts';
import { useApplication } from '../context.ts';
import { choicesOf, shownValue } from '../opening/answers.ts';
import { placeOfFact } from '../opening/placeOfFact.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useDraft } from '../parts/useDraft.ts';

interface Props {
  readonly column: GridColumn;
  readonly row: GridRow;
  readonly ground: Ground;
  /** Back to the grid with the cursor, unless it already went elsewhere. */
  readonly onDone: (left: boolean) => void;
}

/** One cell being edited: Enter or leaving it keeps, Escape leaves it as it was, a wrong value stays with its sentence. */
export function CellEditor({ column, row, ground, onDone }: Props) {
  const { store, newId } = useApplication();
  const { opening } = row;
  const { fact, field } = column;
  const label = `${column.head}, ${opening.mark}`;
  const held = useDraft(
    fact ? placeOfFact(opening, fact) : { place: `${field}/${opening.id}`, label, href: linkTo('schedule') },
    fact ? shownValue(opening.facts[fact]) : column.text(row, ground),
  );
  const { value: draft, type: setDraft } = held;
  const names = namesFor(column, ground.project);
  const listId = useId();

  /** Leaving the field that just went away must not keep it a second time. */
  const over = useRef(false);
  const byPointer = useRef(false);
  const done = (left: boolean) => {
    over.current = true;
    onDone(left);
  };

  const keep = (text: string, left = false) => {
    if (over.current) return;
    const read = cellReader(ground.project, newId)(column, opening, text);
    const result = read.ok ? store.getState().dispatch(stepLabelOf(column, opening), read.edits) : read;
    if (result.ok) {
      held.done();
      return done(left);
    }
    held.settle(result.says);
    // Nobody looks at this cell any more; the sentence must not be lost with it.
    if (left) store.getState().tell({ kind: 'problem', says: `${label}: ${result.says}` });
  };

  const choices = fact ? choicesOf(fact) : undefined;
  const keys = (event: {
    key: string;
    shiftKey: boolean;
    preventDefault: () => void;
    stopPropagation: () => void;
  }) => {
    byPointer.current = false;
    if (event.key === 'Escape') {
      held.done();
      done(false);
    } else if ((event.key === 'Enter' && !event.shiftKey) || event.key === 'Tab') keep(draft);
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
      ) : field === 'notes' ? (
        <textarea
          className="input"
          rows={4}
          aria-label={label}
          aria-invalid={held.problem !== ''}
          autoFocus
          value={draft}
          readOnly={held.isReadOnly}
          onChange={(event) => setDraft(event.target.value)}
          onKeyDown={keys}
          onBlur={() => keep(draft, true)}
        />
      ) : (
        <input
          className="input"
          list={names.length > 0 ? listId : undefined}
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
      {names.length > 0 && (
        <datalist id={listId}>
          {names.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </datalist>
      )}
      <DraftNote draft={held} />
    </span>
  );
}
