import { shownStateWords } from '../words/states.ts';
import { compareMarks } from '../model/project.ts';
import { counted } from '../text/counted.ts';
import {
  allColumns,
  columnOf,
  type GridColumn,
  type GridRow,
  type Ground,
  nothing,
  notKnown,
  signatureAt,
  valueAt,
} from './columns.ts';
import type { AnyValue, FactKey } from '../model/fields.ts';
import { shortSignatures } from '../review/status.ts';
import { valueInWords } from '../text/format.ts';

/**
 * The set number and the signature are looked up only where they are asked for: sets of thousands of openings take their
 * time, and to work out who must sign takes three times as long as all other words of a row.
 */
const lookedUp: readonly string[] = ['set', 'signOff'];
const searched = allColumns.filter(({ key, fact }) => !lookedUp.includes(key) && fact === undefined);
const searchedFacts = allColumns.flatMap(({ fact }) => fact ?? []);

/** Words of an answer, small, each made once: thousands of openings share a few hundred answers. */
function answerWords(key: FactKey, value: AnyValue): string {
  const known = answers.get(key)?.get(value);
  if (known !== undefined) return known;
  const words = valueInWords(key, value).toLowerCase();
  answers.set(key, (answers.get(key) ?? new Map<AnyValue, string>()).set(value, words));
  return words;
}
const answers = new Map<FactKey, Map<AnyValue, string>>();

/** Words of every field of a row, small: what the search looks in. Asked for ahead, the first search has them at hand. */
export function wordsOf(row: GridRow, ground: Ground): string {
  const parts = partsOf(ground);
  const before = remembered.get(row);
  if (before && before.parts.every((part, at) => part === parts[at])) return before.words;
  let words = searched
    .map((column) => column.text(row, ground))
    .join('\n')
    .toLowerCase();
  let open = false;
  for (const key of searchedFacts) {
    const value = valueAt(key, row, ground);
    if (value === undefined) open = true;
    else words += `\n${answerWords(key, value)}`;
  }
  if (open) words += `\n${notKnown}`;
  remembered.set(row, { words, parts });
  return words;
}
const remembered = new WeakMap<GridRow, { readonly words: string; readonly parts: readonly unknown[] }>();
const partsOf = ({ project }: Ground) => [project.floors, project.spaces, project.building];

/** Whether every word that was typed stands somewhere in the row: mark, sides, notes, facts, device, state. */
export function isFound(row: GridRow, typed: string, ground: Ground): boolean {
  const wanted = typed.toLowerCase().split(/\s+/).filter(Boolean);
  if (wanted.length === 0) return true;
  const words = wordsOf(row, ground);
  return wanted.every(
    (word) =>
      words.includes(word) ||
      (word.startsWith('hs-') && setHas(row, word, ground)) ||
      (aSignatureSays(word) && (signatureAt(row, ground).short || nothing).toLowerCase().includes(word)),
  );
}
const signatures = [...shortSignatures, nothing].map((short) => short.toLowerCase());
const aSignatureSays = (word: string) => signatures.some((short) => short.includes(word));
const setHas = ({ opening }: GridRow, word: string, { setOf }: Ground) =>
  setOf(opening.id).toLowerCase().includes(word);

/** Values a column is narrowed to, by its key; a column without an entry shows all. */
export type Narrowed = Readonly<Record<string, readonly string[]>>;

export function narrowed(rows: readonly GridRow[], by: Narrowed, ground: Ground): readonly GridRow[] {
  const filters = Object.entries(by).flatMap(([key, values]) => {
    const column = columnOf(key);
    return column ? [{ column, values: new Set(values) }] : [];
  });
  if (filters.length === 0) return rows;
  return rows.filter((row) => filters.every(({ column, values }) => values.has(column.text(row, ground))));
}

export interface ValueCount {
  readonly value: string;
  readonly words: string;
  readonly count: number;
}

/** What stands in a column and how often, as people count; what is empty or not known last. */
export function valuesIn(
  column: GridColumn,
  rows: readonly GridRow[],
  ground: Ground,
): readonly ValueCount[] {
  const counts = new Map<string, number>();
  for (const row of rows) {
    const value = column.text(row, ground);
    counts.set(value, (counts.get(value) ?? 0) + 1);
  }
  const last = (value: string) => Number(value === '' || value === notKnown || value === '—');
  return [...counts]
    .toSorted(([a], [b]) => last(a) - last(b) || compareMarks(a, b))
    .map(([value, count]) => ({ value, words: valueWords(value), count }));
}

const valueWords = (value: string): string =>
  value === '' ? 'Empty' : value === notKnown ? 'Not surveyed' : value === '—' ? 'None' : value;

export const groupings = {
  none: 'No groups',
  floor: 'Floor',
  set: 'Hardware set',
  state: 'State',
} as const;
export type Grouping = keyof typeof groupings;

export type Line =
  | { readonly is: 'row'; readonly row: GridRow }
  | {
      readonly is: 'group';
      readonly key: string;
      readonly head: string;
      /** How many openings, and what of them is not settled. */
      readonly says: string;
      readonly folded: boolean;
    };

interface Group {
  readonly key: string;
  readonly head: string;
  readonly order: string | number;
}

function groupOf({ opening, state }: GridRow, by: Grouping, { project, setOf }: Ground): Group {
  switch (by) {
    case 'floor': {
      const floor = opening.floorId === null ? undefined : project.floors[opening.floorId];
      return floor
        ? { key: floor.id, head: floor.name, order: floor.level }
        : { key: '', head: 'No floor', order: Infinity };
    }
    case 'set': {
      const set = setOf(opening.id);
      return set === ''
        ? { key: '', head: 'No hardware set', order: '\uffff' }
        : { key: set, head: set, order: set };
    }
    case 'state':
      return { key: state, head: shownStateWords[state].word, order: shownStateWords[state].word };
    case 'none':
      return { key: '', head: '', order: 0 };
  }
}

/** Rows under heads with their counts; under a folded head they are counted and not shown. */
export function linesOf(
  rows: readonly GridRow[],
  by: Grouping,
  folded: ReadonlySet<string>,
  ground: Ground,
): readonly Line[] {
  if (by === 'none') return rows.map((row) => ({ is: 'row', row }));
  const groups = new Map<string, Group & { readonly rows: GridRow[] }>();
  for (const row of rows) {
    const group = groupOf(row, by, ground);
    const known = groups.get(group.key);
    if (known) known.rows.push(row);
    else groups.set(group.key, { ...group, rows: [row] });
  }
  return [...groups.values()]
    .toSorted(({ order: a }, { order: b }) =>
      typeof a === 'number' && typeof b === 'number'
        ? Math.sign(a - b) || 0
        : a === '\uffff' || b === '\uffff'
          ? Number(a === '\uffff') - Number(b === '\uffff')
          : compareMarks(`${a}`, `${b}`),
    )
    .flatMap(({ key, head, rows: members }): Line[] => [
      { is: 'group', key, head, says: countsInWords(members), folded: folded.has(key) },
      ...(folded.has(key) ? [] : members.map((row): Line => ({ is: 'row', row }))),
    ]);
}

function countsInWords(rows: readonly GridRow[]): string {
  const open = rows.filter(({ decision }) => decision.state !== 'settled').length;
  const all = counted(rows.length, 'opening');
  return open === 0 ? all : `${all}, ${open} not settled`;
}
