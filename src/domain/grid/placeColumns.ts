import type { FactKey } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { counted } from '../text/counted.ts';

/** The columns that say where an opening is: known before anything is decided. */

/** What of an opening a cell edits, besides facts. */
type OpeningField = 'mark' | 'floorId' | 'fromSpaceId' | 'toSpaceId' | 'notes';
/** Sorts after everything that is known. */
export type SortKey = string | number | undefined;

export interface ColumnOf<Row, Ground> {
  readonly key: string;
  readonly head: string;
  /** Width in rem at a desk. */
  readonly width: number;
  /** As the cell shows it: empty where nothing is entered, “?” where nobody knows. */
  readonly text: (row: Row, ground: Ground) => string;
  /** By what it sorts, where that is not its text. */
  readonly sortKey?: (row: Row, ground: Ground) => SortKey;
  /** The fact a cell edits, or the field of the opening; neither where what stands there is worked out. */
  readonly fact?: FactKey;
  readonly field?: OpeningField;
}

interface PlaceRow {
  readonly opening: Opening;
}
interface PlaceGround {
  readonly project: Project;
}
type PlaceColumn = ColumnOf<PlaceRow, PlaceGround>;

const nameOf = (things: Readonly<Record<string, { readonly name: string }>>, id: string | null) =>
  id !== null && Object.hasOwn(things, id) ? (things[id]?.name ?? '') : '';

const side = (key: string, head: string, field: 'fromSpaceId' | 'toSpaceId'): PlaceColumn => ({
  key,
  head,
  width: 10,
  field,
  text: ({ opening }, { project }) => nameOf(project.spaces, opening[field]),
});

export const placeColumns: readonly PlaceColumn[] = [
  { key: 'mark', head: 'Mark', width: 5.5, field: 'mark', text: ({ opening }) => opening.mark },
  {
    key: 'floor',
    head: 'Floor',
    width: 7,
    field: 'floorId',
    text: ({ opening }, { project }) => nameOf(project.floors, opening.floorId),
    sortKey: ({ opening }, { project }) =>
      opening.floorId === null ? undefined : project.floors[opening.floorId]?.level,
  },
  side('from', 'Secure side', 'fromSpaceId'),
  side('to', 'Egress side', 'toSpaceId'),
];

export const stateHead = { key: 'state', head: 'State', width: 9.5 } as const;

/** Stands in the column of states while the rules are still being loaded. */
export const notDecidedYet = 'Deciding…';

/** The column of marks is as wide as the longest mark needs, up to where a phone would see nothing else. */
export function markWidth(rows: readonly PlaceRow[], phone: boolean): number {
  const longest = Math.max(0, ...rows.map(({ opening }) => opening.mark.length));
  // At a desk the head of the row stands beside the mark.
  return phone
    ? Math.min(7, Math.max(5.5, 1.5 + longest * 0.7))
    : Math.min(28, Math.max(6.5, 2.5 + longest * 0.7));
}

/** So many rows stand there until all are decided: more than any screen shows at once. */
const mostRows = 60;

export interface Undecided {
  readonly openings: readonly Opening[];
  readonly columns: readonly PlaceColumn[];
  readonly says: string;
  /** What else is to be waited for. */
  readonly waits: string;
}

/** How many of all openings pass the search and the filters. */
export const foundInWords = (found: number, all: number) =>
  found === all ? counted(all, 'opening') : `${found} of ${counted(all, 'opening')}`;

/** The schedule before the first decision: where each opening is, and that it is being decided. Nothing is narrowed yet. */
export function undecided(openings: readonly Opening[], phone: boolean): Undecided {
  const first = openings.slice(0, mostRows);
  const state: PlaceColumn = { ...stateHead, text: () => notDecidedYet };
  const [mark, ...places] = placeColumns.map((column) =>
    column.key === 'mark'
      ? {
          ...column,
          width: markWidth(
            openings.map((opening) => ({ opening })),
            phone,
          ),
        }
      : column,
  );
  const rest = phone ? [state, ...places] : [...places, state];
  const columns = mark ? [mark, ...rest] : rest;
  const all = openings.length;
  return {
    openings: first,
    columns,
    says: `${counted(all, 'opening')}, being decided`,
    waits: `${first.length < all ? `The first ${first.length} are listed until then. ` : ''}Search and filters apply once they are decided.`,
  };
}
