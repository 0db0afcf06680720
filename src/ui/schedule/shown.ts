import type { ShownDecisions } from '../../app/buildingCheck.ts';
import { orderedOpenings } from '../../app/derive.ts';
import type { Filters } from '../../app/store.ts';
import { shownState } from '../../domain/decide/words.ts';
import type { Project } from '../../domain/model/project.ts';
import { reviewState } from '../../domain/review/status.ts';
import type { GridRow } from './columns.ts';

/** What the list can be narrowed to. */
export const shows = {
  all: 'All openings',
  unsettled: 'Not settled',
  signOff: 'Needs sign-off',
  findings: 'With contradictions',
} as const;

function isShown(project: Project, row: GridRow, show: string): boolean {
  switch (show) {
    case 'unsettled':
      return row.decision.state !== 'settled';
    case 'signOff': {
      const { state } = reviewState(project, row.opening, row.decision);
      return !['notNeeded', 'approved', 'approvedWithConditions'].includes(state);
    }
    case 'findings':
      return row.decision.findings.length > 0;
    default:
      return true;
  }
}

/** The openings the schedule shows: those that pass the search, the floor and the list. */
export function shownRows(
  project: Project,
  filters: Filters,
  { decisions, checking }: ShownDecisions,
): readonly GridRow[] {
  const wanted = filters.text.trim().toLowerCase();
  return orderedOpenings(project).flatMap((opening): GridRow[] => {
    const decision = decisions.get(opening.id);
    if (!decision) return [];
    const row = { opening, decision, state: shownState(decision, checking) };
    const spaces = [opening.fromSpaceId, opening.toSpaceId].map(
      (id) => (id ? project.spaces[id]?.name : '') ?? '',
    );
    const hit =
      wanted === '' || [opening.mark, ...spaces].some((text) => text.toLowerCase().includes(wanted));
    const onFloor = filters.floorId === null || opening.floorId === filters.floorId;
    return hit && onFloor && isShown(project, row, filters.show) ? [row] : [];
  });
}
