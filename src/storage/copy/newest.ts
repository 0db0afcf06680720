import { type Line, linesFrom, positionOf } from './lines.ts';
import { type Position, samePosition } from './position.ts';

/** Which whole state to go on from, and the edits that lead on from it. */
export interface Newest {
  readonly base: 'database' | 'copy';
  readonly lines: readonly Line[];
  readonly at: Position;
  /**
   * How the two disagree. `unsaved`: edits that had not reached the database, which is usual after a page was
   * closed at once. `missing`, `behind`: the database lost what it had. `apart`: two histories of one length.
   * `copyBehind`: the copy missed edits, and the database has them.
   */
  readonly differs: 'no' | 'unsaved' | 'missing' | 'behind' | 'apart' | 'copyBehind' | 'noCopy';
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
    samePosition(at, fromCopy.at) ||
    [copy, ...fromCopy.lines.map(positionOf)].some((one) => samePosition(one, stored));
  if (onOnePath) {
    return { base: 'database', ...fromStored, differs: fromStored.lines.length > 0 ? 'unsaved' : 'no' };
  }
  if (fromCopy.at.revision > at.revision) return { base: 'copy', ...fromCopy, differs: 'behind' };
  const differs = fromCopy.at.revision === at.revision ? 'apart' : 'copyBehind';
  return { base: 'database', ...fromStored, differs };
}

function reach(start: Position, lines: readonly Line[]): { lines: readonly Line[]; at: Position } {
  const found = linesFrom(start, lines);
  const last = found.at(-1);
  return { lines: found, at: last ? positionOf(last) : start };
}
