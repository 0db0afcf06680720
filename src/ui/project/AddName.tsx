import { useId, useRef } from 'react';
import { DraftNote } from '../parts/DraftNote.tsx';
import { type DraftPlace, useDraft } from '../parts/useDraft.ts';
import './addName.css';

interface Props {
  readonly label: string;
  readonly at: Omit<DraftPlace, 'label'>;
  readonly button: string;
  readonly onAdd: (name: string) => string | undefined;
}

/** A name and a button; after adding, the field is empty and ready for the next. */
export function AddName({ label, at, button, onAdd }: Props) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const draft = useDraft<string>({ ...at, label }, '');
  return (
    <form
      className="stack stack-tight"
      onSubmit={(event) => {
        event.preventDefault();
        draft.settle(onAdd(draft.value));
        input.current?.focus();
      }}
    >
      <label htmlFor={id} className="field-label">
        {label}
      </label>
      <div className="row add-name">
        <input
          ref={input}
          id={id}
          className="input"
          value={draft.value}
          readOnly={draft.isReadOnly}
          aria-invalid={draft.problem !== ''}
          aria-describedby={`${id}problem`}
          onChange={(event) => draft.type(event.target.value)}
        />
        <button type="submit" className="button">
          {button}
        </button>
      </div>
      <div id={`${id}problem`}>
        <DraftNote draft={draft} />
      </div>
    </form>
  );
}
