import { useMemo } from 'react';
import { allDecisions } from '../../app/decisions.ts';
import { orderedOpenings } from '../../app/derive.ts';
import { signOffReasons, worstGrade } from '../../domain/decide/signOff.ts';
import { useApp, useStore } from '../context.ts';
import type { GridRow } from './columns.ts';
import { NewOpening } from './NewOpening.tsx';
import { OpeningGrid } from './OpeningGrid.tsx';

/** What the list can be narrowed to. */
const shows = {
  all: 'All openings',
  unsettled: 'Not settled',
  signOff: 'Needs sign-off',
  findings: 'With contradictions',
} as const;

function isShown(row: GridRow, show: string): boolean {
  switch (show) {
    case 'unsettled':
      return row.decision.state !== 'settled';
    case 'signOff': {
      const grade = worstGrade(signOffReasons(row.decision));
      return grade === 'must' || grade === 'should';
    }
    case 'findings':
      return row.decision.findings.length > 0;
    default:
      return true;
  }
}

export function SchedulePage() {
  const store = useStore();
  const project = useApp((state) => state.document.project);
  const filters = useApp((state) => state.session.filters);
  const rows = useMemo(() => {
    const decisions = allDecisions(project);
    const wanted = filters.text.trim().toLowerCase();
    return orderedOpenings(project).flatMap((opening): GridRow[] => {
      const decision = decisions.get(opening.id);
      if (!decision) return [];
      const row = { opening, decision };
      const spaces = [opening.fromSpaceId, opening.toSpaceId].map(
        (id) => (id ? project.spaces[id]?.name : '') ?? '',
      );
      const hit =
        wanted === '' || [opening.mark, ...spaces].some((text) => text.toLowerCase().includes(wanted));
      const onFloor = filters.floorId === null || opening.floorId === filters.floorId;
      return hit && onFloor && isShown(row, filters.show) ? [row] : [];
    });
  }, [project, filters]);
  const total = Object.keys(project.openings).length;
  const floors = Object.values(project.floors).sort((a, b) => a.level - b.level);

  return (
    <div className="sheet sheet-full">
      <div className="sheet-body stack">
        <div className="row row-baseline">
          <h1>{project.name}</h1>
          <p className="note" role="status">
            {rows.length === total ? `${total} openings` : `${rows.length} of ${total} openings`}
          </p>
        </div>
        <div className="toolbar" role="search">
          <input
            className="input toolbar-search"
            type="search"
            aria-label="Find a mark or a room"
            placeholder="Mark or room"
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
              Start with “New opening” and the mark on the drawing, or bring in an architect’s door schedule
              under <a href="#/files">Files</a>.
            </p>
          </div>
        ) : rows.length === 0 ? (
          <p className="empty">Nothing matches. Clear the search or choose “All openings”.</p>
        ) : (
          <OpeningGrid
            rows={rows}
            project={project}
            onOpen={(id) => (location.hash = `#/opening/${encodeURIComponent(id)}`)}
          />
        )}
        <p className="note">
          Arrow keys move, <kbd>Enter</kbd> opens an opening, <kbd>F2</kbd> edits a cell, <kbd>Ctrl</kbd>{' '}
          <kbd>Z</kbd> undoes. Italic values are assumed; “?” was not surveyed.
        </p>
      </div>
    </div>
  );
}
