import type { Addendum } from '../../domain/bid/addendum.ts';
import { counted } from '../../domain/text/counted.ts';

export interface AddendumSheet {
  readonly head: string;
  readonly says: string;
  readonly openings: readonly {
    readonly mark: string;
    readonly kind: string;
    readonly cells: readonly string[];
  }[];
  readonly sets: Addendum['sets'];
  readonly quantities: readonly (readonly [string, string])[];
}

const kinds = { added: 'Added', removed: 'Removed', changed: 'Changed' } as const;

/** Just what differs; each row says what it was and what it is. */
export function addendumSheet(addendum: Addendum, from: string, to: string): AddendumSheet {
  const { openings, sets, quantities } = addendum;
  const nothing = openings.length + sets.length + quantities.length === 0;
  return {
    head: `Addendum: ${from} to ${to}`,
    says: nothing
      ? 'Nothing differs.'
      : `${counted(openings.length, 'opening')}, ${counted(sets.length, 'set')} and ${counted(quantities.length, 'quantity', 'quantities')} differ.`,
    openings: openings.map(({ mark, kind, cells }) => ({
      mark,
      kind: kinds[kind],
      cells: cells.map(
        ({ column, was, is }) =>
          `${column}: ${is || 'empty'}${kind === 'added' ? '' : `, was ${was || 'empty'}`}`,
      ),
    })),
    sets,
    quantities: quantities.map(({ name, was, is }) => [name, `${is}, was ${was}`] as const),
  };
}
