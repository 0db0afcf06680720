import { useId, useRef, useState } from 'react';
import './addName.css';

interface Props {
  readonly label: string;
  readonly button: string;
  readonly onAdd: (name: string) => string | undefined;
}

/** A name and a button; after adding, the field is empty and ready for the next. */
export function AddName({ label, button, onAdd }: Props) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [name, setName] = useState('');
  const [problem, setProblem] = useState('');
  return (
    <form
      className="stack stack-tight"
      onSubmit={(event) => {
        event.preventDefault();
        const says = onAdd(name) ?? '';
        setProblem(says);
        if (says === '') setName('');
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
          value={name}
          aria-invalid={problem !== ''}
          aria-describedby={`${id}problem`}
          onChange={(event) => setName(event.target.value)}
        />
        <button type="submit" className="button">
          {button}
        </button>
      </div>
      <div id={`${id}problem`}>
        {problem !== '' && (
          <p role="alert" className="field-error">
            {problem}
          </p>
        )}
      </div>
    </form>
  );
}
