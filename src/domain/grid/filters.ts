/** What the list can be narrowed to. */
export const shows = {
  all: 'All openings',
  unsettled: 'Not settled',
  signOff: 'Needs sign-off',
  findings: 'With contradictions',
} as const;

/** What stands above the schedule: words searched, a floor, a part of the list. */
export interface Filters {
  readonly text: string;
  readonly floorId: string | null;
  /** A key of `shows`. */
  readonly show: string;
}

export const noFilters: Filters = { text: '', floorId: null, show: 'all' };
