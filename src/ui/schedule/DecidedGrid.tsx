import { moveTo } from '../../app/addresses.ts';
import { useEffect } from 'react';
import { noFilters } from '../../domain/grid/filters.ts';
import { foundInWords } from '../../domain/grid/placeColumns.ts';
import { useApp, useStore } from '../context.ts';
import { useDecisions } from '../useDecisions.ts';
import { ScheduleGrid } from './ScheduleGrid.tsx';
import { useShown } from './useShown.ts';

interface Props {
  /** Told how many openings stand here, in words. */
  readonly onFound: (says: string) => void;
}

/** The openings that pass the search and the filters, with what is decided of each. */
export function DecidedGrid({ onFound }: Props) {
  const store = useStore();
  const project = useApp((state) => state.document.project);
  const startId = useApp((state) => state.session.selectedId);
  const { desk, shown, ground } = useShown(project, useDecisions());
  const total = Object.keys(project.openings).length;
  const says = foundInWords(shown.listed.length, total);
  useEffect(() => onFound(says), [onFound, says]);
  if (shown.listed.length === 0) {
    return (
      <div className="empty">
        <p>None of the {total} openings match the search and filters above.</p>
        <button type="button" className="button" onClick={() => store.getState().filter(noFilters)}>
          Show all openings
        </button>
      </div>
    );
  }
  return (
    <ScheduleGrid
      key={project.id}
      desk={desk}
      shown={shown}
      ground={ground}
      startId={startId}
      onOpen={(id) => moveTo('opening', id)}
    />
  );
}
