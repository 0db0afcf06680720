import { noFilters, shows } from '../../domain/grid/shown.ts';
import { useApp, useStore } from '../context.ts';
import { useDecisions } from '../useDecisions.ts';
import { NewOpening } from './NewOpening.tsx';
import { ScheduleGrid } from './ScheduleGrid.tsx';
import { useShown } from './useShown.ts';

export default function SchedulePage() {
  const store = useStore();
  const project = useApp((state) => state.document.project);
  const filters = useApp((state) => state.session.filters);
  const startId = useApp((state) => state.session.selectedId);
  const { desk, shown, ground } = useShown(project, useDecisions());
  const { listed } = shown;
  const total = Object.keys(project.openings).length;
  const floors = Object.values(project.floors).toSorted((a, b) => a.level - b.level);

  return (
    <div className="sheet sheet-full">
      <div className="sheet-body stack">
        <div className="row row-baseline">
          <h1>{project.name}</h1>
          <p className="note" role="status">
            {listed.length === total ? `${total} openings` : `${listed.length} of ${total} openings`}
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
              under <a href="#/files">Files</a>. What holds for every opening, floors and spaces are set under{' '}
              <a href="#/project">Project</a>.
            </p>
          </div>
        ) : listed.length === 0 ? (
          <div className="empty">
            <p>None of the {total} openings match the search and filters above.</p>
            <button type="button" className="button" onClick={() => store.getState().filter(noFilters)}>
              Show all openings
            </button>
          </div>
        ) : (
          <ScheduleGrid
            key={project.id}
            desk={desk}
            shown={shown}
            ground={ground}
            startId={startId}
            onOpen={(id) => (location.hash = `#/opening/${encodeURIComponent(id)}`)}
          />
        )}
        <p className="note grid-keys">
          Arrow keys move, letters find a mark, <kbd>Enter</kbd> opens, <kbd>F2</kbd> edits, <kbd>?</kbd>{' '}
          tells more. Italic values are assumed; “?” was not surveyed.
        </p>
      </div>
    </div>
  );
}
