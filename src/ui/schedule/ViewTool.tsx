import { useState } from 'react';
import { firstView } from '../../domain/grid/view.ts';
import { Unfolded } from '../parts/Unfolded.tsx';
import type { ViewDesk } from './useGridView.ts';

/** Views saved by name: columns, order, filters and groups together. */
export function ViewTool({ desk }: { desk: ViewDesk }) {
  const [name, setName] = useState('');
  return (
    <Unfolded className="grid-tool" summary="Saved views">
      <div className="grid-panel stack stack-tight">
        <form
          className="row grid-form"
          onSubmit={(event) => {
            event.preventDefault();
            desk.save(name);
            setName('');
          }}
        >
          <label className="field">
            <span className="field-label">Name of this view</span>
            <input className="input" value={name} onChange={({ target }) => setName(target.value)} />
          </label>
          <button type="submit" className="button" disabled={name.trim() === ''}>
            Save view
          </button>
          <button type="button" className="button button-quiet" onClick={() => desk.change(firstView)}>
            View as at first
          </button>
        </form>
        <ul className="grid-views">
          {desk.saved.map(({ name: called, view }) => (
            <li key={called} className="row">
              <button type="button" className="button" onClick={() => desk.change(view)}>
                {called}
              </button>
              <button
                type="button"
                className="button button-small button-quiet"
                onClick={() => desk.remove(called)}
                aria-label={`Delete view ${called}`}
              >
                Delete
              </button>
            </li>
          ))}
        </ul>
        <p className="note">Kept in this browser for this project. A view changes nothing in the project.</p>
      </div>
    </Unfolded>
  );
}
