import { z } from 'zod';
import { longestName } from '../model/ids.ts';
import { allColumns, columnOf } from './columns.ts';
import { groupings } from './lines.ts';
import { boxOf, withoutProject } from './viewBox.ts';

const keys = Object.keys(groupings) as [keyof typeof groupings, ...(keyof typeof groupings)[]];

/** How the schedule is looked at: nothing of it is part of the project, and every part of it can be missing. */
const viewSchema = z.object({
  /** Columns in their order; null are the first ones. */
  columns: z.array(z.string()).nullable().catch(null),
  sort: z.object({ column: z.string(), descending: z.boolean() }).nullable().catch(null),
  /** Values each column is narrowed to. */
  only: z.record(z.string(), z.array(z.string())).catch({}),
  group: z.enum(keys).catch('none'),
});
export type GridView = Readonly<z.infer<typeof viewSchema>>;

export const firstView: GridView = { columns: null, sort: null, only: {}, group: 'none' };

const keptSchema = z.object({
  now: viewSchema,
  saved: z.array(z.object({ name: z.string().min(1).max(longestName), view: viewSchema })).catch([]),
});
/** What this browser keeps of one project: the view of the last visit and those saved by name. */
export type KeptViews = Readonly<z.infer<typeof keptSchema>>;
const noViews: KeptViews = { now: firstView, saved: [] };

/** Projects of long ago give their place to those of today. */
const mostProjects = 50;

/** What is kept may be of another version, cut off or edited by hand: what cannot be read is as if it were not there. */
export function viewsOf(kept: string, projectId: string): KeptViews {
  const box = boxOf(kept);
  const read = keptSchema.safeParse(Object.hasOwn(box, projectId) ? box[projectId] : undefined);
  return read.success ? read.data : noViews;
}

export function withViews(kept: string, projectId: string, views: KeptViews): string {
  const others = Object.entries(boxOf(withoutProject(kept, projectId)));
  return JSON.stringify(Object.fromEntries([...others.slice(1 - mostProjects), [projectId, views]]));
}

/** The present view under a name, in place of the one that had it. */
export function savedAs(views: KeptViews, name: string): KeptViews {
  const called = name.trim().slice(0, longestName);
  const others = views.saved.filter((one) => one.name !== called);
  if (called === '') return views;
  const saved = [...others, { name: called, view: views.now }].toSorted((a, b) => (a.name < b.name ? -1 : 1));
  return { ...views, saved };
}

export function without(views: KeptViews, name: string): KeptViews {
  return { ...views, saved: views.saved.filter((one) => one.name !== name) };
}

/** A column of the schedule shown or left out; the mark always leads. */
export function toggled(shown: readonly string[], key: string): readonly string[] {
  if (key === 'mark' || !columnOf(key)) return shown;
  return shown.includes(key) ? shown.filter((one) => one !== key) : [...shown, key];
}

/** A column one place to the left or right; the mark always leads. */
export function shifted(shown: readonly string[], key: string, by: 1 | -1): readonly string[] {
  const at = shown.indexOf(key);
  const to = at + by;
  if (at < 1 || to < 1 || to >= shown.length) return shown;
  return shown.toSpliced(at, 1).toSpliced(to, 0, key);
}

/** The columns that could be shown besides, by their heads. */
export const columnsLeft = (shown: readonly string[]) => allColumns.filter(({ key }) => !shown.includes(key));

/** Pressed once a column sorts up, twice down, and a third time the order of the schedule is back. */
export function nextSort(before: GridView['sort'], column: string): GridView['sort'] {
  if (before?.column !== column) return { column, descending: false };
  return before.descending ? null : { column, descending: true };
}

/** A value shown or left out of a column that is narrowed; with no value left the column shows all again. */
export function withValue(
  only: GridView['only'],
  column: string,
  value: string,
  shown: boolean,
): GridView['only'] {
  const before = only[column] ?? [];
  const after = shown
    ? [...before.filter((one) => one !== value), value]
    : before.filter((one) => one !== value);
  const others = Object.fromEntries(Object.entries(only).filter(([key]) => key !== column));
  return after.length === 0 ? others : { ...others, [column]: after };
}
