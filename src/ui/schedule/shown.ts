import type { ShownDecisions } from '../../app/buildingCheck.ts';
import { orderedOpenings } from '../../app/derive.ts';
import type { Filters } from '../../app/store.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import { type ShownState, shownState } from '../../domain/decide/words.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { reviewState } from '../../domain/review/status.ts';
import { type GridRow, type Ground, groundOf } from '../../domain/grid/columns.ts';
import { isFound } from '../../domain/grid/lines.ts';

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

/** The same row for the same answer, so that only rows are drawn anew in which something changed. */
function rowOf(opening: Opening, decision: Decision, state: ShownState): GridRow {
  const before = rows.get(opening);
  if (before?.decision === decision && before.state === state) return before;
  const row = { opening, decision, state };
  rows.set(opening, row);
  return row;
}
const rows = new WeakMap<Opening, GridRow>();

/** The openings the schedule shows: those that pass the search, the floor and the list. */
export function shownRows(
  project: Project,
  filters: Filters,
  { decisions, checking }: ShownDecisions,
  ground: Ground = groundOf(project, decisions),
): readonly GridRow[] {
  return orderedOpenings(project).flatMap((opening): GridRow[] => {
    const decision = decisions.get(opening.id);
    if (!decision) return [];
    const row = rowOf(opening, decision, shownState(decision, checking));
    if (!isFound(row, filters.text, ground)) return [];
    const onFloor = filters.floorId === null || opening.floorId === filters.floorId;
    return onFloor && isShown(project, row, filters.show) ? [row] : [];
  });
}
