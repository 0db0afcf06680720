import { useState } from 'react';

interface Props {
  readonly name: string;
  readonly isBusy: boolean;
  readonly onErase: () => void;
}

/** Asked twice: nothing of it can be brought back. */
export function EraseForGood({ name, isBusy, onErase }: Props) {
  const [asks, setAsks] = useState(false);
  if (!asks) {
    return (
      <button
        type="button"
        className="button button-quiet button-small"
        disabled={isBusy}
        onClick={() => setAsks(true)}
      >
        <span>
          Erase for good<span className="visually-hidden"> {name}</span> …
        </span>
      </button>
    );
  }
  return (
    <>
      <p>
        Erase <strong>{name}</strong> for good, with its backups, second copy and list of edits? It cannot be
        brought back, except from a file you saved.
      </p>
      <button type="button" className="button button-remove button-small" disabled={isBusy} onClick={onErase}>
        Erase {name}
      </button>{' '}
      <button type="button" className="button button-quiet button-small" onClick={() => setAsks(false)}>
        Keep it all
      </button>
    </>
  );
}
