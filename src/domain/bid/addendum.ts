import type { Decision } from '../decide/decision.ts';
import { compareMarks, type Project } from '../model/project.ts';
import { type OpeningColumn, openingColumns, type OpeningRow, scheduleRows } from '../schedules/openings.ts';
import { hardwareSets, setInWords } from '../sets/sets.ts';
import { type Bill, billOf } from './bill.ts';

/** A project with what was decided for it: an issued edition, or how it stands today. */
export interface Stand {
  readonly project: Project;
  readonly decisions: ReadonlyMap<string, Decision>;
}

export interface CellChange {
  readonly column: string;
  readonly was: string;
  readonly is: string;
}
export interface OpeningChange {
  readonly mark: string;
  readonly kind: 'added' | 'removed' | 'changed';
  readonly cells: readonly CellChange[];
}
export interface QuantityChange {
  readonly name: string;
  readonly was: number;
  readonly is: number;
}
export interface Addendum {
  readonly openings: readonly OpeningChange[];
  readonly sets: readonly { readonly id: string; readonly says: string }[];
  readonly quantities: readonly QuantityChange[];
}

/** What differs between two editions, or one and today: openings cell by cell, sets, and quantities. Nothing else. */
export function addendumOf(before: Stand, after: Stand): Addendum {
  return {
    openings: openingChanges(rowsById(before), rowsById(after)),
    sets: setChanges(before, after),
    quantities: quantityChanges(
      billOf(before.project, before.decisions),
      billOf(after.project, after.decisions),
    ),
  };
}

const rowsById = ({ project, decisions }: Stand) =>
  new Map(scheduleRows(project, decisions).map((row) => [row.openingId, row]));

function openingChanges(
  before: ReadonlyMap<string, OpeningRow>,
  after: ReadonlyMap<string, OpeningRow>,
): readonly OpeningChange[] {
  const removed = [...before.values()].filter((row) => !after.has(row.openingId));
  return [
    ...removed.map((row): OpeningChange => ({ mark: row.mark, kind: 'removed', cells: [] })),
    ...[...after.values()].flatMap((row): readonly OpeningChange[] => {
      const was = before.get(row.openingId);
      if (!was) return [{ mark: row.mark, kind: 'added', cells: cellsOf(undefined, row) }];
      const cells = cellsOf(was, row);
      return cells.length === 0 ? [] : [{ mark: row.mark, kind: 'changed', cells }];
    }),
  ].toSorted((a, b) => compareMarks(a.mark, b.mark));
}

function cellsOf(was: OpeningRow | undefined, is: OpeningRow): readonly CellChange[] {
  return (Object.keys(openingColumns) as OpeningColumn[]).flatMap((column) => {
    const [before, after] = [was === undefined ? '' : String(was[column]), String(is[column])];
    return before === after ? [] : [{ column: openingColumns[column], was: before, is: after }];
  });
}

function setChanges(before: Stand, after: Stand): Addendum['sets'] {
  const [old, now] = [before, after].map(
    ({ project, decisions }) => new Map(hardwareSets(project, decisions).map((set) => [set.id, set])),
  );
  if (!old || !now) return [];
  return [...new Set([...old.keys(), ...now.keys()])].toSorted(compareMarks).flatMap((id) => {
    const [was, is] = [old.get(id), now.get(id)];
    if (!is) return [{ id, says: 'not used any more' }];
    if (!was) return [{ id, says: `new: ${is.title}` }];
    const marks = (set: typeof is) => set.openings.map((one) => one.mark).join(', ');
    const said = [
      ...(was.content === is.content ? [] : [`now ${setInWords(is)}: ${is.title}, was ${was.title}`]),
      ...(marks(was) === marks(is) ? [] : [`openings were ${marks(was)}, are ${marks(is)}`]),
    ];
    return said.length === 0 ? [] : [{ id, says: said.join('; ') }];
  });
}

function quantityChanges(before: Bill, after: Bill): readonly QuantityChange[] {
  const counts = (bill: Bill) => new Map(bill.rows.map((row) => [row.key, row]));
  const [old, now] = [counts(before), counts(after)];
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((key) => {
    const [was, is] = [old.get(key), now.get(key)];
    const row = is ?? was;
    if (!row || was?.quantity === is?.quantity) return [];
    const name = row.detail === '' ? row.name : `${row.name} (${row.detail})`;
    return [{ name, was: was?.quantity ?? 0, is: is?.quantity ?? 0 }];
  });
}
