import { commandProblemInWords, type Edit } from '../commands/command.ts';
import { fieldInfo } from '../model/fields.ts';
import { newSpace } from '../model/newProject.ts';
import {
  compareMarks,
  floorSchema,
  type Opening,
  openingSchema,
  type Project,
  spaceSchema,
} from '../model/project.ts';
import { readFireRating } from '../import/fireRating.ts';
import { oneSpelling, readCell, writeCell } from '../survey/readValue.ts';
import { valueInWords } from '../text/format.ts';
import { type GridColumn, notKnown } from './columns.ts';

export type CellEdits =
  | { readonly ok: true; readonly edits: readonly Edit[]; readonly after: string }
  | { readonly ok: false; readonly says: string };

/**
 * Text for a cell → the edits it takes, or why it cannot stand there. One reader serves all cells of one step: a mark,
 * a floor or a space that one cell brings is there for the next.
 */
export type CellReader = (column: GridColumn, opening: Opening, text: string) => CellEdits;

const refused = (says: string | undefined): CellEdits => ({ ok: false, says: says ?? 'This does not fit.' });

export function cellReader(project: Project, newId: () => string): CellReader {
  const marks = new Map(Object.values(project.openings).map(({ id, mark }) => [mark, id]));
  const markNow = new Map<string, string>();
  const floors = new Map(Object.values(project.floors).map(({ id, name }) => [oneSpelling(name), id]));
  const floorNow = new Map<string, string | null>();
  const spaces = Object.values(project.spaces).map(({ id, name, floorId }) => ({ id, name, floorId }));
  let level = Math.max(0, ...Object.values(project.floors).map((one) => one.level));

  const readMark = ({ id, mark: before }: Opening, text: string): CellEdits => {
    const mark = text.trim();
    const parsed = openingSchema.shape.mark.safeParse(mark);
    if (!parsed.success) return refused(parsed.error.issues[0]?.message);
    const taken = marks.get(mark);
    if (taken !== undefined && taken !== id) {
      return refused(commandProblemInWords({ kind: 'markTaken', mark }));
    }
    marks.delete(markNow.get(id) ?? before);
    marks.set(mark, id);
    markNow.set(id, mark);
    return { ok: true, edits: [{ kind: 'setOpening', id, field: 'mark', value: mark }], after: mark };
  };

  const readFloor = ({ id }: Opening, text: string): CellEdits => {
    const name = text.trim();
    const set = (value: string | null): Edit => ({ kind: 'setOpening', id, field: 'floorId', value });
    const there = name === '' ? null : floors.get(oneSpelling(name));
    if (there !== undefined) {
      floorNow.set(id, there);
      return { ok: true, edits: [set(there)], after: name };
    }
    const value = { id: newId(), name, level: level + 1 };
    const parsed = floorSchema.safeParse(value);
    if (!parsed.success) return refused(parsed.error.issues[0]?.message);
    level += 1;
    floors.set(oneSpelling(name), value.id);
    floorNow.set(id, value.id);
    return {
      ok: true,
      edits: [{ kind: 'putFloor', id: value.id, value }, set(value.id)],
      after: `${name} (new floor)`,
    };
  };

  /** On the floor of the opening, else on none, such as a stair; any other where the opening has no floor. */
  const spaceNamed = (name: string, floorId: string | null) => {
    const called = spaces.filter((one) => oneSpelling(one.name) === oneSpelling(name));
    return (
      called.find((one) => one.floorId === floorId) ??
      called.find((one) => one.floorId === null) ??
      (floorId === null && called.length === 1 ? called[0] : undefined)
    );
  };

  const readSpace = (field: 'fromSpaceId' | 'toSpaceId', opening: Opening, text: string): CellEdits => {
    const { id } = opening;
    const name = text.trim();
    const set = (value: string | null): Edit => ({ kind: 'setOpening', id, field, value });
    if (name === '') return { ok: true, edits: [set(null)], after: '' };
    const floorId = floorNow.has(id) ? (floorNow.get(id) ?? null) : opening.floorId;
    const there = spaceNamed(name, floorId);
    if (there) return { ok: true, edits: [set(there.id)], after: there.name };
    const value = { ...newSpace(newId(), name), floorId };
    const parsed = spaceSchema.safeParse(value);
    if (!parsed.success) return refused(parsed.error.issues[0]?.message);
    spaces.push(value);
    return {
      ok: true,
      edits: [{ kind: 'putSpace', id: value.id, value }, set(value.id)],
      after: `${name} (new space)`,
    };
  };

  return (column, opening, text) => {
    if (column.fact !== undefined) return readFactCell(column.fact, opening, text);
    if (column.field === undefined) return refused(cannotBeEntered(column));
    switch (column.field) {
      case 'mark':
        return readMark(opening, text);
      case 'floorId':
        return readFloor(opening, text);
      case 'fromSpaceId':
      case 'toSpaceId':
        return readSpace(column.field, opening, text);
      case 'notes': {
        const value = text.trim();
        return {
          ok: true,
          edits: [{ kind: 'setOpening', id: opening.id, field: 'notes', value }],
          after: value,
        };
      }
    }
  };
}

/** Names that are there already, offered while a floor or a side is typed; any other makes a new one. */
export function namesFor({ field }: GridColumn, project: Project): readonly string[] {
  if (field === 'floorId') {
    return Object.values(project.floors)
      .toSorted((a, b) => a.level - b.level)
      .map(({ name }) => name);
  }
  if (field !== 'fromSpaceId' && field !== 'toSpaceId') return [];
  return [...new Set(Object.values(project.spaces).map(({ name }) => name))].toSorted(compareMarks);
}

/** What a value for all selected cells could be: the answers of the one column, or names that are there. */
export function offeredFor(columns: readonly GridColumn[], project: Project): readonly string[] {
  const [column] = columns;
  if (!column || columns.length > 1) return [];
  if (column.fact === undefined) return namesFor(column, project);
  const info = fieldInfo(column.fact);
  return info.kind === 'yesNo' ? ['yes', 'no'] : Object.values(info.options ?? {});
}

/** Said of a cell under a column that nobody types into. */
export const cannotBeEntered = ({ head }: GridColumn): string =>
  `${head} is worked out from the facts and cannot be entered.`;

function readFactCell(key: NonNullable<GridColumn['fact']>, { id }: Opening, text: string): CellEdits {
  const read = readCell(key, text);
  const rating = read.ok || key !== 'fireRatingMin' ? undefined : readFireRating(text);
  if (rating?.ok && rating.minutes !== null && !rating.smoke) {
    return readFactCell(key, { id } as Opening, `${rating.minutes} ${fieldInfo(key).unit}`);
  }
  if (!read.ok) return refused(read.says);
  const { fact } = read;
  return {
    ok: true,
    edits: [{ kind: 'setFact', id, fact: key, value: fact }],
    after: fact?.is === 'unknown' ? notKnown : writeCell(fact ?? undefined, (one) => valueInWords(key, one)),
  };
}
