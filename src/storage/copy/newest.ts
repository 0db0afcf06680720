import { type Line, linesFrom, positionOf } from './lines.ts';
import { type Position, samePosition } from './position.ts';

/** A whole state that can be reached, and the edits that lead to it. */
export interface Reached {
  readonly lines: readonly Line[];
  readonly at: Position;
}

/** Which whole state to go on from, and the edits that lead on from it. */
export interface Newest extends Reached {
  readonly base: 'database' | 'copy';
  /**
   * How the two disagree. `unsaved`: edits that had not reached the database, which is usual after a page was
   * closed at once. `missing`, `behind`: the database lost what it had. `apart`: two histories of one length.
   * `copyBehind`: the database has more edits than the copy, which may be older or another history.
   */
  readonly differs: 'no' | 'unsaved' | 'missing' | 'behind' | 'apart' | 'copyBehind' | 'noCopy';
  /** What the copy leads to, where that may be work which the chosen state does not hold. */
  readonly other?: Reached;
}

/** The newer whole state wins; of two that cannot be told apart by age the database does. */
export function newestOf(
  stored: Position | undefined,
  copy: Position | undefined,
  lines: readonly Line[],
): Newest | undefined {
  const fromStored = stored && reach(stored, lines);
  const fromCopy = copy && reach(copy, lines);
  if (!fromStored) return fromCopy && { base: 'copy', ...fromCopy, differs: 'missing' };
  const { at } = fromStored;
  if (!copy || !fromCopy) {
    return { base: 'database', ...fromStored, differs: at.revision > stored.revision ? 'unsaved' : 'noCopy' };
  }
  const onOnePath =
    samePosition(at, fromCopy.at) || pathOf(copy, fromCopy.lines).some((one) => samePosition(one, stored));
  if (onOnePath) {
    return { base: 'database', ...fromStored, differs: fromStored.lines.length > 0 ? 'unsaved' : 'no' };
  }
  if (fromCopy.at.revision > at.revision) return { base: 'copy', ...fromCopy, differs: 'behind' };
  const differs = fromCopy.at.revision === at.revision ? 'apart' : 'copyBehind';
  return { base: 'database', ...fromStored, differs, other: fromCopy };
}

/** Every state on the way from a position through the lines that follow it. */
export const pathOf = (start: Position, lines: readonly Line[]): readonly Position[] => [
  start,
  ...lines.map(positionOf),
];

export function reach(start: Position, lines: readonly Line[]): Reached {
  const found = linesFrom(start, lines);
  const last = found.at(-1);
  return { lines: found, at: last ? positionOf(last) : start };
}
