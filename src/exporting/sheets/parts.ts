import { type SheetId, sheetKinds } from './sheetKinds.ts';

/** Items of a list, the first of them and the one behind the last. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** A sheet, or as much of it as goes to the printer at once. */
export interface Piece extends Range {
  readonly id: SheetId;
  /** How many items the whole sheet has. */
  readonly of: number;
}

/** What goes to the printer at once. */
export type PrintPart = readonly Piece[];

export interface Sized {
  readonly id: SheetId;
  /** Rows, sets, openings: what the sheet can be divided between. */
  readonly items: number;
}

const pagesEach = (id: SheetId) => sheetKinds[id].pagesEach;
const weightEach = (id: SheetId) => pagesEach(id) * (sheetKinds[id].weight ?? 1);

/** A browser holds all pages of a print in memory: so many are printed at once without a second thought, */
const mostAtOnce = 150;
/** and what is more than that in parts of so many, which a machine with little memory can hold. */
const mostInPart = 40;

/**
 * What was chosen as one or more runs of the printer, in the order in which it is bound. A sheet is divided only where it
 * would not fit into a run by itself, and then into runs of one size.
 */
export function partsOf(sheets: readonly Sized[]): readonly PrintPart[] {
  const all = sheets.reduce((sum, { id, items }) => sum + items * pagesEach(id), 0);
  const each = all <= mostAtOnce ? pagesEach : weightEach;
  const most = all <= mostAtOnce ? mostAtOnce : mostInPart;
  const parts: Piece[][] = [];
  let room = 0;
  for (const { id, items } of sheets) {
    if (items === 0) continue;
    const pages = items * each(id);
    const count = Math.min(items, Math.ceil(pages / most));
    if (pages > room) {
      parts.push([]);
      room = most;
    }
    for (let part = 0; part < count; part++) {
      if (part > 0) parts.push([]);
      const [from, to] = [part, part + 1].map((at) => Math.round((at * items) / count)) as [number, number];
      parts.at(-1)?.push({ id, from, to, of: items });
    }
    room = (count > 1 ? most : room) - pages / count;
  }
  return parts;
}

export const isWhole = ({ from, to, of }: Piece): boolean => from === 0 && to === of;

/** "251 to 500 of 1000"; empty for a whole sheet. */
export const rangeInWords = (piece: Piece): string =>
  isWhole(piece) ? '' : `${piece.from + 1} to ${piece.to} of ${piece.of}`;

/** "Opening sheets 101 to 200 of 500, Legend". */
export const partInWords = (part: PrintPart): string =>
  part.map((piece) => `${sheetKinds[piece.id].name} ${rangeInWords(piece)}`.trim()).join(', ');

/** About how much paper it is. */
export const pagesOf = (part: PrintPart): number =>
  Math.ceil(part.reduce((sum, { id, from, to }) => sum + (to - from) * pagesEach(id), 0));

const within = <T>(list: readonly T[], { from, to }: Range, before: number): readonly T[] =>
  list.slice(Math.max(0, from - before), Math.max(0, to - before));

/** The same items of several lists that follow one another. */
export function cutLists<L extends readonly (readonly unknown[])[]>(lists: L, range: Range): L {
  let before = 0;
  return lists.map((list) => {
    const cut = within(list, range, before);
    before += list.length;
    return cut;
  }) as unknown as L;
}

/** Lines under heads: a head stays where one of its lines does. */
export function cutLines<G extends { readonly lines: readonly unknown[] }>(
  groups: readonly G[],
  range: Range,
): readonly G[] {
  const lists = cutLists(
    groups.map(({ lines }) => lines),
    range,
  );
  return groups
    .map((group, at) => ({ ...group, lines: lists[at] ?? [] }))
    .filter(({ lines }) => lines.length > 0);
}

export const countLines = (groups: readonly { readonly lines: readonly unknown[] }[]): number =>
  groups.reduce((sum, { lines }) => sum + lines.length, 0);
