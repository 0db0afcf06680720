import type { Project } from '../model/project.ts';
import { reviewState } from '../review/status.ts';
import { counted } from '../text/counted.ts';
import { columnOf, type GridRow, type Ground } from './columns.ts';
import { type Filters, shows } from './filters.ts';
import { isFound, type Narrowed, narrowed } from './lines.ts';

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

export interface Shown {
  /** What passes the search, the floor and the list: of these the values of a column are counted. */
  readonly listed: readonly GridRow[];
  /** What of it has the values that columns are narrowed to: what is shown. */
  readonly left: readonly GridRow[];
}

/** Which openings are shown: the schedule, what is copied and filled there, and sheets by opening all read it here. */
export function shownOf(rows: readonly GridRow[], filters: Filters, only: Narrowed, ground: Ground): Shown {
  const listed = rows.filter(
    (row) =>
      (filters.floorId === null || row.opening.floorId === filters.floorId) &&
      isShown(ground.project, row, filters.show) &&
      isFound(row, filters.text, ground),
  );
  return { listed, left: narrowed(listed, only, ground) };
}

/** Heads of the columns that show only some of their values. */
const headsOf = (only: Narrowed): string =>
  Object.keys(only)
    .flatMap((key) => columnOf(key)?.head ?? [])
    .join(', ');

const onlySome = (heads: string) => `only some values are shown of ${heads}`;

/** Which columns are narrowed, said beside the schedule so that no row is missed without a word; empty where none is. */
export function narrowedInWords(only: Narrowed, left: number, all: number): string {
  const heads = headsOf(only);
  return heads === '' ? '' : `${left} of ${counted(all, 'opening')}: ${onlySome(heads)}.`;
}

/** The same for paper: how many openings are shown, and every reason why it is not all of them. */
export function shownInWords(
  { text, floorId, show }: Filters,
  only: Narrowed,
  { floors }: Project,
  left: number,
  all: number,
): string {
  if (left === all) return `The schedule shows all ${counted(all, 'opening')}, so all are printed.`;
  const heads = headsOf(only);
  const floor = floorId === null ? undefined : floors[floorId]?.name;
  const reasons = [
    ...(text.trim() === '' ? [] : [`searched for “${text.trim()}”`]),
    ...(floor === undefined ? [] : [`floor ${floor}`]),
    ...(show !== 'all' && Object.hasOwn(shows, show)
      ? [shows[show as keyof typeof shows].toLowerCase()]
      : []),
    ...(heads === '' ? [] : [onlySome(heads)]),
  ];
  return `The schedule shows ${left} of ${counted(all, 'opening')} (${reasons.join('; ')}), so ${left === 1 ? 'that one is' : left === 0 ? 'none is' : 'those are'} printed.`;
}
