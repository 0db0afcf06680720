import type { Decision } from '../domain/decide/decision.ts';
import { type ShownState, shownState } from '../domain/words/states.ts';
import type { GridRow } from '../domain/grid/columns.ts';
import type { Opening, Project } from '../domain/model/project.ts';
import type { ShownDecisions } from './buildingCheck.ts';
import { orderedOpenings } from './order.ts';

/** The same row for the same answer, so that only rows are drawn anew in which something changed. */
function rowOf(opening: Opening, decision: Decision, state: ShownState): GridRow {
  const before = rows.get(opening);
  if (before?.decision === decision && before.state === state) return before;
  const row = { opening, decision, state };
  rows.set(opening, row);
  return row;
}
const rows = new WeakMap<Opening, GridRow>();

/** Every opening as a row of the schedule, in its order. */
export const rowsOf = (project: Project, { decisions, checking }: ShownDecisions): readonly GridRow[] =>
  orderedOpenings(project).flatMap((opening): GridRow[] => {
    const decision = decisions.get(opening.id);
    return decision ? [rowOf(opening, decision, shownState(decision, checking))] : [];
  });
