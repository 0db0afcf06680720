import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { orderedOpenings } from '../../app/order.ts';
import { shows } from '../../domain/grid/filters.ts';
import { foundInWords, undecided } from '../../domain/grid/placeColumns.ts';
import { useApp, useStore } from '../context.ts';
import { useLater } from '../frame/later.ts';
import { useMedia } from '../parts/useMedia.ts';
import { decidedGrid } from './decidedGrid.ts';
import { NewOpening } from './NewOpening.tsx';
import { deskRowPx, phoneRowPx } from './rowHeights.ts';
import { UndecidedGrid } from './UndecidedGrid.tsx';

export default function SchedulePage() {
  const store = useStore();
  const project = useApp((state) => state.document.project);
  const filters = useApp((state) => state.session.filters);
  const grid = useLater(decidedGrid);
  const phone = useMedia('(max-width: 40rem)');
  const first = grid ? undefined : undecided(orderedOpenings(project), phone);
  const [found, setFound] = useState('');
  const total = Object.keys(project.openings).length;
  const floors = Object.values(project.floors).toSorted((a, b) => a.level - b.level);

  return (
    <div className="sheet sheet-full">
      <div className="sheet-body stack">
        <div className="row row-baseline">
          <h1>{project.name}</h1>
          <p className="note" role="status">
            {total === 0 ? foundInWords(0, 0) : (first?.says ?? found)}
          </p>
        </div>
        <div className="toolbar" role="search">
          <input
            className="input toolbar-search"
            type="search"
            aria-label="Find in every field"
            placeholder="Mark, room, fact, note"
            value={filters.text}
            onChange={(event) => store.getState().filter({ text: event.target.value })}
          />
          <select
            className="input"
            aria-label="Floor"
            value={filters.floorId ?? ''}
            onChange={(event) => store.getState().filter({ floorId: event.target.value || null })}
          >
            <option value="">Every floor</option>
            {floors.map((floor) => (
              <option key={floor.id} value={floor.id}>
                {floor.name}
              </option>
            ))}
          </select>
          <select
            className="input"
            aria-label="Show"
            value={filters.show}
            onChange={(event) => store.getState().filter({ show: event.target.value })}
          >
            {Object.entries(shows).map(([value, label]) => (
              <option key={value} value={value}>
                {label}
              </option>
            ))}
          </select>
          <div className="toolbar-end row">
            <NewOpening />
          </div>
        </div>
        {total === 0 ? (
          <div className="empty stack">
            <h2>No openings yet</h2>
            <p>
              Start with “New opening” and the mark on the drawing, or import an architect’s door schedule
              under <a href={linkTo('files')}>Files</a>. What holds for every opening, floors and spaces are
              set under <a href={linkTo('project')}>Project</a>.
            </p>
          </div>
        ) : first ? (
          <UndecidedGrid {...first} project={project} rowHeightPx={phone ? phoneRowPx : deskRowPx} />
        ) : (
          grid && <grid.DecidedGrid onFound={setFound} />
        )}
        <p className="note grid-keys">
          Arrow keys move, letters find a mark, <kbd>Enter</kbd> opens, <kbd>F2</kbd> edits, <kbd>?</kbd>{' '}
          tells more. Italic values are assumed; “?” was not surveyed.
        </p>
      </div>
    </div>
  );
}
