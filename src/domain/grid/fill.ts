import type { Edit } from '../commands/command.ts';
import { takenOver } from '../survey/takeOver.ts';
import type { GridColumn, GridRow, Ground } from './columns.ts';
import { cannotBeEntered } from './readCells.ts';
import type { Part } from './paste.ts';
import { type Plan, type PlannedCell, planTexts } from './plan.ts';
import { oneSpelling } from '../survey/readValue.ts';

/**
 * The first row of a range into the rows below it. Facts are taken over as assumed, for nobody has looked at those doors
 * yet; floor, sides and notes are the same.
 */
export function fillDown({ rows, columns }: Part, ground: Ground): Plan {
  const [first, ...below] = rows;
  if (!first) return { cells: [], edits: [], outside: [] };
  const edits: Edit[] = [];
  const cells = below.flatMap((row) =>
    columns.map((column): PlannedCell => {
      const here = filled(first, row, column);
      if (here.ok) edits.push(...here.edits);
      const [before, above] = [column.text(row, ground), column.text(first, ground)];
      const changes = here.ok && here.edits.length > 0;
      return {
        openingId: row.opening.id,
        mark: row.opening.mark,
        column: column.key,
        head: column.head,
        text: above,
        before,
        after: changes ? above : before,
        is: !here.ok ? 'refused' : changes ? 'changes' : 'same',
        says: here.ok ? '' : here.says,
      };
    }),
  );
  return { cells, edits, outside: [] };
}

type Filled =
  | { readonly ok: true; readonly edits: readonly Edit[] }
  | { readonly ok: false; readonly says: string };

function filled({ opening: above }: GridRow, { opening }: GridRow, column: GridColumn): Filled {
  const { fact, field } = column;
  const { id } = opening;
  if (fact !== undefined) {
    const taken = takenOver(above, opening, { facts: new Set([fact]), replace: true });
    return {
      ok: true,
      edits: taken.map((one) => ({ kind: 'setFact', id, fact: one.key, value: one.fact })),
    };
  }
  if (field === 'mark') return { ok: false, says: 'Every opening needs a mark of its own.' };
  if (field === undefined) return { ok: false, says: cannotBeEntered(column) };
  const same = above[field] === opening[field];
  return { ok: true, edits: same ? [] : [{ kind: 'setOpening', id, field, value: above[field] }] };
}

/** The same text into every cell of a range. */
export function setForAll(text: string, { rows, columns }: Part, ground: Ground, newId: () => string): Plan {
  const targets = rows.flatMap((row) => columns.map((column) => ({ row, column, text })));
  return planTexts(targets, ground, newId, 'clear');
}

/** Facts become “not known”: somebody was asked and could not tell. Floor, sides and notes become empty. */
export function cleared({ rows, columns }: Part, ground: Ground, newId: () => string): Plan {
  const targets = rows.flatMap((row) =>
    columns.map((column) => ({ row, column, text: column.fact === undefined ? '' : 'unknown' })),
  );
  return planTexts(targets, ground, newId, 'clear');
}

export interface Replacing {
  readonly find: string;
  readonly by: string;
  /** The whole cell must read so; else a part of it is enough. */
  readonly whole: boolean;
}

/** Words of cells by other words, large and small letters alike; what comes of it is read like a paste. */
export function planReplace(
  { find, by, whole }: Replacing,
  { rows, columns }: Part,
  ground: Ground,
  newId: () => string,
): Plan {
  if (find.trim() === '') return { cells: [], edits: [], outside: [] };
  const pattern = new RegExp(find.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`), 'giu');
  const targets = rows.flatMap((row) =>
    columns.flatMap((column) => {
      const text = column.text(row, ground);
      const found = whole ? oneSpelling(text) === oneSpelling(find) : text.search(pattern) >= 0;
      if (!found) return [];
      return [{ row, column, text: whole ? by : text.replaceAll(pattern, () => by) }];
    }),
  );
  return planTexts(targets, ground, newId, 'clear');
}
