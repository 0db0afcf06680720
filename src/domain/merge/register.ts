import { type History, others, type Sibling, startDots, wasSeen, whole } from '../model/history.ts';
import { isPlain } from '../model/parts.ts';
import { textOf } from '../model/sorted.ts';

/** All values of one part that no edit known here has replaced, in the order of their edits. Nearly always one. */
export type Register = readonly Sibling[];

/** Marks a record that is there; its fields are parts of their own. */
export const isThere = true;

const own = <T>(table: Readonly<Record<string, T>> | undefined, key: string): T | undefined =>
  table && Object.hasOwn(table, key) ? table[key] : undefined;

/** The dots that a part has without saying so. */
export function impliedDots(history: History, record: string, field: string): readonly string[] {
  const dots = own(history.dots, record);
  const said = field === whole ? undefined : (dots?.[others] ?? dots?.[whole]);
  return said === undefined ? startDots(history) : said.split(' ');
}

export function registerOf(history: History, record: string, field: string, value: unknown): Register {
  const kept = own(own(history.kept, record), field);
  if (kept) return kept;
  const said = own(own(history.dots, record), field);
  // A part that is not there and that nobody removed says nothing.
  if (said === undefined && value === undefined) return [];
  const dots = said?.split(' ') ?? impliedDots(history, record, field);
  return dots.map((dot) => (value === undefined ? { dot } : { dot, value }));
}

/** What stands when two copies meet: all that either side wrote and the other has not replaced. */
export function join(a: Register, seenA: History['seen'], b: Register, seenB: History['seen']): Register {
  const stands = (one: Sibling, there: Register, seenThere: History['seen']) =>
    !wasSeen(seenThere, one.dot) || there.some((other) => other.dot === one.dot);
  const both = [...a.filter((one) => stands(one, b, seenB)), ...b.filter((one) => stands(one, a, seenA))];
  // Each side says that it replaced the other's: the files were changed by other means. Nothing may be lost.
  return unique(both.length > 0 ? both : [...a, ...b]);
}

/** A file changed by other means may show two values under one edit, so the value counts as well. */
function unique(all: Register): Register {
  const byText = new Map(all.map((one) => [`${one.dot} ${meaning(one.value)}`, one]));
  const keys = [...byText.keys()].toSorted();
  return keys.map((key) => byText.get(key) as Sibling);
}

/** What a value says, less when and by whom: two people who enter the same agree. */
export function meaning(value: unknown): string {
  if (!isPlain(value)) return textOf(value);
  const { at: _at, by: _by, ...said } = value;
  return textOf(said);
}

type AnyFact = { readonly is: string } & Readonly<Record<string, unknown>>;
export const isFact = (value: unknown): value is AnyFact => isPlain(value) && typeof value['is'] === 'string';

/** Taking one of these away is an act of its own; elsewhere null says only that nobody knows yet. */
const isMark = (field: string) => field === 'override';

/** Seen weighs more than assumed, and any answer more than none. */
function weight(value: unknown, field: string): number {
  if (value === null) return isMark(field) ? 3 : 1;
  return !isFact(value) || value.is === 'known' ? 3 : value.is === 'assumed' ? 2 : 1;
}

/** What is worth asking about. That a value was taken away on one side counts against any answer, not against none. */
function heaviest(register: Register, field: string): Register {
  const there = register.filter((one) => one.value !== undefined);
  const most = Math.max(0, ...there.map((one) => weight(one.value, field)));
  const top = there.filter((one) => weight(one.value, field) === most);
  return most === 1 ? top : [...top, ...register.filter((one) => one.value === undefined)];
}

export interface Standing {
  /** What stands in the project meanwhile; undefined is not there. */
  readonly value: unknown;
  /** A person must say which of them holds. */
  readonly asked: boolean;
}

/**
 * What stands in the project for values side by side. A fact that two people saw differently is not known until one
 * of them is believed; a choice or a mark of review is not made; for texts the later one stands meanwhile. A record
 * that one side removed and the other edited stays.
 */
export function standing(register: Register, field: string, when: (one: Sibling) => string): Standing {
  const top = heaviest(register, field);
  const later = [...top].toSorted((x, y) => compare(key(x, when), key(y, when)));
  const last = later.at(-1);
  if (!last) return { value: undefined, asked: false };
  if (new Set(top.map((one) => meaning(one.value))).size < 2) return { value: last.value, asked: false };
  if (field === whole) return { value: isThere, asked: true };
  if (top.some((one) => isFact(one.value))) return { value: { is: 'unknown' }, asked: true };
  if (isMark(field)) return { value: null, asked: true };
  // A text that one side removed stays until somebody decides.
  return { value: later.findLast((one) => one.value !== undefined)?.value, asked: true };
}

const key = (one: Sibling, when: (one: Sibling) => string) => `${when(one)} ${one.dot} ${textOf(one.value)}`;
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
