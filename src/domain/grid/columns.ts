import type { Decision } from '../decide/decision.ts';
import { candidateInWords, releaseInWords } from '../words/arrangement.ts';
import { type ShownState, shownStateWords } from '../words/states.ts';
import { type FactKey, fieldInfo, openingFactKeys, type AnyValue } from '../model/fields.ts';
import { type Opening, type Project } from '../model/project.ts';
import { type Signature, signatureOf } from '../review/status.ts';
import { setNumbersOf } from '../sets/sets.ts';
import { borrowedFor, borrowedValue } from '../survey/answers.ts';
import { writeCell } from '../survey/readValue.ts';
import { type ColumnOf, markWidth, placeColumns, type SortKey, stateHead } from './placeColumns.ts';
import { valueInWords } from '../text/format.ts';

export interface GridRow {
  readonly opening: Opening;
  readonly decision: Decision;
  readonly state: ShownState;
}

/** What the cells of all rows are said with. */
export interface Ground {
  readonly project: Project;
  /** Number of the hardware set by opening; worked out when it is first asked for. */
  readonly setOf: (openingId: string) => string;
}

export function groundOf(project: Project, decisions: ReadonlyMap<string, Decision>): Ground {
  let numbers: ReadonlyMap<string, string> | undefined;
  return {
    project,
    setOf: (id) => (numbers ??= setNumbersOf(project, decisions)).get(id) ?? '',
  };
}

export type GridColumn = ColumnOf<GridRow, Ground>;

export const notKnown = '?';
export const nothing = '—';

/** What was answered here, or else what the building or its space says; undefined where nobody knows. */
export function valueAt(
  key: FactKey,
  { opening, decision }: GridRow,
  { project }: Ground,
): AnyValue | undefined {
  const fact = opening.facts[key];
  if (fact === undefined) return borrowedValue(key, opening, project, decision);
  return fact.is === 'unknown' ? undefined : fact.value;
}

const factText = (key: FactKey) => (row: GridRow, ground: Ground) => {
  const value = valueAt(key, row, ground);
  return value === undefined ? notKnown : valueInWords(key, value);
};

const factNumber =
  (key: FactKey) =>
  (row: GridRow, ground: Ground): SortKey => {
    const value = valueAt(key, row, ground);
    return typeof value === 'number' ? value : undefined;
  };

const longestWord = (text: string) => Math.max(...text.split(/\s+/).map((word) => word.length));

/** Wide enough for the longest word of its head and of its answers. */
function widthOf(key: FactKey, head: string): number {
  const { kind, options = {} } = fieldInfo(key);
  const labels = Object.values(options);
  const words = Math.max(0, ...labels.map(longestWord)) * 0.58;
  const usual = kind === 'choice' ? Math.min(12, Math.max(0, ...labels.map((one) => one.length)) * 0.3) : 0;
  return Math.ceil(1.2 + Math.max(5, usual, words, longestWord(head) * 0.62));
}

const factColumn = (
  key: FactKey,
  head = fieldInfo(key).label,
  width: number = widthOf(key, head),
): GridColumn => ({
  key,
  head,
  width,
  text: factText(key),
  fact: key,
  ...(fieldInfo(key).kind === 'number' ? { sortKey: factNumber(key) } : {}),
});

/** All that a signature may rest on besides its opening and decision; the openings themselves change with every edit. */
const aroundOpenings = ({ openings: _openings, history: _history, ...rest }: Project) => Object.values(rest);
const signed = new WeakMap<GridRow, { readonly around: readonly unknown[]; readonly signature: Signature }>();
let lastAround: { readonly project: Project; readonly around: readonly unknown[] } | undefined;

/** The signature of a row, remembered: to hold a signed opening against what was signed takes longer than all its facts. */
export function signatureAt(row: GridRow, { project }: Ground): Signature {
  if (lastAround?.project !== project) {
    const around = aroundOpenings(project);
    const same = lastAround?.around.every((part, at) => part === around[at]) ?? false;
    lastAround = {
      project,
      around: same && lastAround?.around.length === around.length ? lastAround.around : around,
    };
  }
  const { around } = lastAround;
  const before = signed.get(row);
  if (before?.around === around) return before.signature;
  const signature = signatureOf(project, row.opening, row.decision);
  signed.set(row, { around, signature });
  return signature;
}

/** Columns that stand there until somebody chooses others, in their order. */
const firstColumns: readonly GridColumn[] = [
  ...placeColumns,
  { ...stateHead, text: ({ state }) => shownStateWords[state].word },
  {
    key: 'device',
    head: 'Locked by',
    width: 16.5,
    text: ({ decision }) => (decision.chosen ? candidateInWords(decision.chosen.candidate) : nothing),
  },
  {
    key: 'release',
    head: 'Egress',
    width: 13.5,
    text: ({ decision }) => (decision.chosen ? releaseInWords(decision.chosen.candidate) : nothing),
  },
  {
    key: 'signOff',
    head: 'Sign-off',
    width: 12,
    text: (row, ground) => signatureAt(row, ground).short || nothing,
  },
  factColumn('doorType', 'Door', 11),
  factColumn('leafMaterial', 'Leaf', 10),
  factColumn('frameMaterial', 'Frame', 9),
  factColumn('latch', 'Latch', 13),
  factColumn('fireRatingMin', 'Label', 6),
  factColumn('egressRole', 'Egress role', 14),
  factColumn('occupantLoad', 'Load', 7),
  factColumn('readerSides', 'Reader', 11),
  factColumn('securityNeed', 'Need', 8),
  { key: 'notes', head: 'Notes', width: 20, field: 'notes', text: ({ opening }) => opening.notes },
];

const others: readonly GridColumn[] = [
  { key: 'set', head: 'Set', width: 6, text: ({ opening }, { setOf }) => setOf(opening.id) || nothing },
  ...openingFactKeys
    .filter((key) => !firstColumns.some((column) => column.fact === key))
    .map((key) => factColumn(key)),
];

export const allColumns: readonly GridColumn[] = [...firstColumns, ...others];
export const firstKeys: readonly string[] = firstColumns.map(({ key }) => key);
const byKey = new Map(allColumns.map((column) => [column.key, column]));
export const columnOf = (key: string): GridColumn | undefined => byKey.get(key);

/** On a phone the decision comes right after the mark; at a desk the place does. */
const phoneFirst = ['mark', 'state', 'device', 'signOff'];
/** Paragraphs would make the rows of a phone longer than its screen. */
const notOnPhone: ReadonlySet<string> = new Set(['notes']);

/** The columns to draw: those chosen, in their order, or the first ones. The mark leads every row. */
export function columnsFor(
  rows: readonly GridRow[],
  phone: boolean,
  chosen: readonly string[] | null = null,
): readonly GridColumn[] {
  const keys = chosen ?? (phone ? phoneKeys : firstKeys);
  return ['mark', ...keys.filter((key) => key !== 'mark')].flatMap((key) => {
    const column = columnOf(key);
    if (!column) return [];
    if (key === 'mark') return [{ ...column, width: markWidth(rows, phone) }];
    if (phone && key === 'device') return [{ ...column, width: 10 }];
    return [column];
  });
}

const phoneKeys = [
  ...phoneFirst,
  ...firstKeys.filter((key) => !phoneFirst.includes(key) && !notOnPhone.has(key)),
];

/**
 * A cell as text for the clipboard: what it shows, and of a value that is only assumed or borrowed where it is from, so
 * that pasted elsewhere it is assumed there too.
 */
export function copyText({ fact: key, text }: GridColumn, row: GridRow, ground: Ground): string {
  if (key === undefined) return text(row, ground).replace(/^—$/, '');
  const { opening, decision } = row;
  const inWords = (value: AnyValue) => valueInWords(key, value);
  if (opening.facts[key] !== undefined) return writeCell(opening.facts[key], inWords);
  const borrowed = borrowedFor(key, opening, ground.project, decision);
  return writeCell(borrowed && { is: 'assumed', value: borrowed.value, from: borrowed.from }, inWords);
}
