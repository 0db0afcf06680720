import { useEffect, useMemo } from 'react';
import { whileIdle } from '../whileIdle.ts';
import { wordsOf } from '../../domain/grid/lines.ts';
import type { ShownDecisions } from '../../app/buildingCheck.ts';
import { rowsOf } from '../../app/gridRows.ts';
import { groundOf } from '../../domain/grid/columns.ts';
import { noFilters } from '../../domain/grid/filters.ts';
import { shownInWords, shownOf } from '../../domain/grid/shown.ts';
import type { Project } from '../../domain/model/project.ts';
import { useApp, useStore } from '../context.ts';
import { useGridView } from './useGridView.ts';

/** Which openings this tab shows, by what stands above the schedule and by what its columns are narrowed to. */
export function useShown(project: Project, decided: ShownDecisions) {
  const store = useStore();
  const filters = useApp((state) => state.session.filters);
  const desk = useGridView();
  const { only } = desk.view;
  const ground = useMemo(() => groundOf(project, decided.decisions), [project, decided]);
  const all = useMemo(() => rowsOf(project, decided), [project, decided]);
  const shown = useMemo(() => shownOf(all, filters, only, ground), [all, filters, only, ground]);
  // The words of thousands of rows take a second: they are made while nobody waits.
  useEffect(
    () => (decided.checking ? undefined : whileIdle(all, (row) => wordsOf(row, ground))),
    [all, ground, decided.checking],
  );
  return {
    desk,
    ground,
    shown,
    says: shownInWords(filters, only, project, shown.left.length, all.length),
    showAll: () => {
      store.getState().filter(noFilters);
      desk.change({ only: {} });
    },
  };
}
