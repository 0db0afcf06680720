import { type Facts, type AnyFact } from '../model/fact.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import { newOpening } from '../model/newProject.ts';
import { longestName } from '../model/ids.ts';
import {
  type Floor,
  type Opening,
  openingSchema,
  type Override,
  overrideSchema,
  type Project,
  type Space,
} from '../model/project.ts';
import { quote, readArchitect, type Said } from './architect.ts';
import type { ChosenWords, UndecidedWord } from './words.ts';
import type { GridRow } from './grid.ts';
import { type Column, mappedHeaders, type Role, useName } from './headers.ts';
import { type ClassifiedRow, classifyRows, type Table } from './layout.ts';
import { isOurOwn, PlaceBook, type Places } from './places.ts';
import { type RoomUses, roomUsesOf } from './roomProposals.ts';
import { roomUseOf } from './rooms.ts';
import { oneSpelling, readCell } from '../survey/readValue.ts';
import { counted } from '../text/counted.ts';
import { valueInWords } from '../text/format.ts';

export interface ImportProblem {
  /** As counted in the file, the header being row 1 unless told otherwise; null speaks of the whole file. */
  readonly row: number | null;
  readonly column: string | null;
  readonly says: string;
  /** The row was left out because of it. */
  readonly refuses: boolean;
}

export interface RefusedRow {
  readonly row: number;
  readonly mark: string;
  readonly cells: readonly string[];
}

export interface Imported {
  readonly openings: readonly Opening[];
  readonly floors: readonly Floor[];
  readonly spaces: readonly Space[];
  /** Facts of the whole building that every row agreed on. */
  readonly building: Facts;
  readonly problems: readonly ImportProblem[];
  readonly refused: readonly RefusedRow[];
  /** Rows that are no doors, each with why. */
  readonly skipped: readonly ClassifiedRow[];
  /** The row each opening came from, by id. */
  readonly from: ReadonlyMap<string, GridRow>;
  readonly columns: readonly Column[];
  /** Doors of the project that a row stands for: by the id of what was read, the id of the opening that is there. */
  readonly meets: ReadonlyMap<string, string>;
  /** What the rooms of a building model may be used for; empty for a list. */
  readonly rooms: RoomUses;
  /** Words that may mean two things, each once; a person may say which. */
  readonly undecided: readonly UndecidedWord[];
}

export interface ImportOptions {
  readonly newId: () => string;
  /** The project the rows are to go into: its marks are taken, its floors and spaces are used again. */
  readonly into?: Pick<Project, 'floors' | 'spaces' | 'openings'>;
  /** What a person said about columns, by heading. */
  readonly columns?: Readonly<Record<string, string>>;
  /** What a person said about rows, by the number they have in the file. */
  readonly rows?: ReadonlyMap<number, 'opening' | 'omit'>;
  /** What a person said about words that may mean two things, by column and word. */
  readonly words?: ChosenWords;
}

const nobody = { floors: {}, spaces: {}, openings: {} };

/**
 * Rows of a schedule → openings, and a sentence for everything that could not be taken. Nothing is stored: the
 * caller shows the result and decides whether all of it comes in or nothing. A cell that cannot be read leaves its
 * fact unknown and its words in the notes; only a row without a mark of its own is refused.
 */
export function importTable(table: Table, options: ImportOptions): Imported {
  const columns = mappedHeaders(table.header, options.columns ?? {});
  const into = options.into ?? nobody;
  const book = new PlaceBook(into, options.newId, table.places);
  const problems: ImportProblem[] = [];
  const refused: RefusedRow[] = [];
  const openings: Opening[] = [];
  const from = new Map<string, GridRow>();
  const building = new Map<FactKey, { fact: AnyFact; row: number }>();
  const seen: Seen = new Map();
  const undecided = new Map<string, UndecidedWord>();
  const there = new Met(Object.values(into.openings));
  const meets = new Map<string, string>();

  const markColumn = columns.find(({ use }) => useName(use) === 'mark');
  const sorted = classifyRows(table, markColumn?.index, options.rows);
  const skipped = sorted.filter(({ is }) => is !== 'opening' && is !== 'broken');
  const result = () => ({
    openings,
    from,
    floors: book.floors,
    spaces: book.spaces,
    building: Object.fromEntries([...building].map(([key, { fact }]) => [key, fact])) as Facts,
    problems,
    refused,
    skipped,
    columns,
    meets,
    rooms: roomUsesOf(book.rooms, into.spaces),
    undecided: [...undecided.values()],
  });
  if (!markColumn) {
    const says = 'No column holds the door mark; choose it below.';
    problems.push({ row: null, column: null, says, refuses: true });
    return result();
  }

  let floorHeading: Said | undefined;
  book.addGiven();
  for (const says of book.alike) problems.push({ row: null, column: null, says, refuses: false });
  for (const { row: gridRow, is, why } of sorted) {
    const { number: row, cells } = gridRow;
    const complain = (column: string | null, says: string, refuses: boolean) =>
      problems.push({ row, column, says, refuses });
    const mark = (cells[markColumn.index] ?? '').trim();
    if (is === 'floor') {
      const text = cells.find((cell) => cell.trim() !== '') ?? '';
      floorHeading = { role: 'level', header: `heading in row ${row}`, text, unit: undefined };
    }
    if (is === 'broken') {
      complain(null, why, true);
      refused.push({ row, mark, cells });
    }
    if (is !== 'opening') continue;

    const before = problems.length;
    const asWritten = saidCells(columns, cells);
    const long = asWritten.filter(isTooLong);
    for (const cell of long) complain(cell.header, tooLong(cell, mostOf(cell, asWritten)), false);
    const said = asWritten.filter((cell) => !long.includes(cell));
    // Behind the cells: the first that says a floor counts.
    if (floorHeading) said.push(floorHeading);
    const floor = said.find((cell) => cell.role === 'level' && cell.text.trim() !== '')?.text.trim();
    const externalId = said.find((cell) => cell.role === 'globalId')?.text.trim() ?? '';
    const named = checkMark(mark, row, floor, externalId, seen, there);
    if (!named.ok) complain(markColumn.header, named.says, true);
    else if (named.says !== undefined) complain(markColumn.header, named.says, false);
    checkWidth(cells, table.header.length, complain);
    if (gridRow.remark !== undefined) complain(null, gridRow.remark, false);
    for (const [column, says] of gridRow.doubts ?? []) {
      complain(table.header[column]?.trim() ?? null, says, column === markColumn.index);
    }
    const own = readOwnColumns(columns, cells, complain);
    const counted: Kept[] = [];
    const count = said.find((cell) => cell.role === 'count');
    if (count && /^\d+$/.test(count.text.trim()) && Number(count.text) !== 1) {
      const says = `The row stands for ${count.text.trim()} doors and comes in as one. Give each of the others a mark of its own.`;
      complain(count.header, says, false);
      counted.push({ header: count.header, text: count.text });
    }
    const read = readArchitect(said, options.words);
    for (const one of read.undecided) undecided.set(`${one.key} ${one.word}`, one);
    for (const problem of read.problems) complain(problem.column, problem.says, false);

    if (!named.ok || problems.slice(before).some((problem) => problem.refuses)) {
      refused.push({ row, mark, cells });
      continue;
    }
    const facts = new Map([...read.facts, ...own.opening]);
    const against = contradictions(columns, cells, read.facts, own.opening);
    for (const { key, column, says } of against) {
      facts.delete(key);
      complain(column, says, false);
    }
    const exterior = facts.get('exterior');
    const places = book.read(
      said,
      exterior !== undefined && exterior.is !== 'unknown' && exterior.value === true,
    );
    assumeFromRooms(places, facts);
    for (const [key, { fact, column }] of own.building) {
      agreeOnBuilding(building, key, fact, row, (says) => complain(column, says, false));
    }
    const override = choiceIn(said, complain);
    const id = options.newId();
    from.set(id, gridRow);
    if (named.meets !== undefined) meets.set(id, named.meets);
    openings.push({
      ...newOpening(id, named.mark),
      floorId: places.floorId,
      fromSpaceId: places.fromSpaceId,
      toSpaceId: places.toSpaceId,
      facts: Object.fromEntries(facts) as Facts,
      override,
      ...(externalId === '' ? {} : { externalId }),
      notes: notesOf(columns, cells, said, [
        ...read.kept,
        ...own.kept,
        ...long,
        ...counted,
        ...keptOf(columns, cells, said, against),
      ]),
    });
  }
  return result();
}

/** Marks and GlobalIds by the rows and floors they stand at; neither is written with a line break. */
type Seen = Map<string, { row: number; floor: string | undefined }>;
const asId = (externalId: string) => `GlobalId\n${externalId}`;
const onFloor = (mark: string, floor: string) => `${mark}\n${oneSpelling(floor)}`;
type NamedMark =
  | { readonly ok: true; readonly mark: string; readonly says?: string; readonly meets?: string | undefined }
  | { readonly ok: false; readonly says: string };

/** Openings of the project by what a row may call them. */
class Met {
  readonly #byMark = new Map<string, Opening>();
  readonly #byExternalId = new Map<string, Opening>();
  readonly #met = new Set<string>();
  constructor(openings: readonly Opening[]) {
    for (const opening of openings) {
      this.#byMark.set(opening.mark, opening);
      if (opening.externalId !== undefined) this.#byExternalId.set(opening.externalId, opening);
    }
  }
  has(mark: string): boolean {
    return this.#byMark.has(mark);
  }
  /** The GlobalId says more than the mark: under one mark two models may mean two doors. Each is met once. */
  take(mark: string, externalId: string): string | undefined {
    const named = this.#byMark.get(mark);
    const fits = named?.externalId === undefined || externalId === '';
    const met = this.#byExternalId.get(externalId) ?? (fits ? named : undefined);
    if (!met || this.#met.has(met.id)) return undefined;
    this.#met.add(met.id);
    return met.id;
  }
}

function checkMark(
  mark: string,
  row: number,
  floor: string | undefined,
  externalId: string,
  seen: Seen,
  there: Met,
): NamedMark {
  const parsed = openingSchema.shape.mark.safeParse(mark);
  if (!parsed.success)
    return { ok: false, says: parsed.error.issues[0]?.message ?? 'This mark cannot be used.' };
  if (/[\p{Cc}\p{Cf}\u2028\u2029]/u.test(mark))
    return { ok: false, says: 'The mark holds a line break or a sign that cannot be seen.' };
  if (/^"|"$/.test(mark))
    return { ok: false, says: `The mark ${mark} has a quotation mark at its end; a quote may be missing.` };
  const listed = seen.get(asId(externalId));
  if (listed) {
    return { ok: false, says: `GlobalId ${externalId} stands in row ${listed.row} and again in row ${row}.` };
  }
  if (externalId !== '') seen.set(asId(externalId), { row, floor });
  const first = seen.get(mark);
  if (!first) {
    const meets = there.take(mark, externalId);
    if (meets !== undefined || !there.has(mark)) {
      seen.set(mark, { row, floor });
      return { ok: true, mark, meets };
    }
  }
  // Two doors of a model are two doors, whatever they are called.
  const known = there.take('', externalId);
  if (known !== undefined) return { ok: true, mark, meets: known };
  // Two floors may number their doors alike: two doors, which need two marks here.
  const longer = `${mark} (${floor})`;
  if (
    first &&
    floor !== undefined &&
    first.floor !== undefined &&
    oneSpelling(floor) !== oneSpelling(first.floor) &&
    openingSchema.shape.mark.safeParse(longer).success &&
    !seen.has(longer) &&
    !seen.has(onFloor(mark, floor))
  ) {
    const meets = there.take(longer, externalId);
    if (meets !== undefined || !there.has(longer)) {
      seen.set(longer, { row, floor });
      seen.set(onFloor(mark, floor), { row, floor });
      const says = `Mark ${mark} stands in row ${first.row} on ${first.floor} as well. This one comes in as ${longer}.`;
      return { ok: true, mark: longer, says, meets };
    }
  }
  const counted = externalId === '' ? undefined : freeMark(mark, seen, there);
  if (counted !== undefined) {
    seen.set(counted, { row, floor });
    const where = first ? `stands in row ${first.row} as well` : 'is in the project already';
    const says = `Mark ${mark} ${where}, under another GlobalId. This one comes in as ${counted}.`;
    return { ok: true, mark: counted, says };
  }
  if (!first)
    return { ok: false, says: `Mark ${mark} is in the project already, and another row stands for it.` };
  return { ok: false, says: `Mark ${mark} stands in row ${first.row} and again in row ${row}.` };
}

function freeMark(mark: string, seen: Seen, there: Met): string | undefined {
  for (let count = 2; count <= 999; count += 1) {
    const next = `${mark} (${count})`;
    if (!openingSchema.shape.mark.safeParse(next).success) return undefined;
    if (!seen.has(next) && !there.has(next)) return next;
  }
  return undefined;
}

type Complain = (column: string | null, says: string, refuses: boolean) => void;

function checkWidth(cells: readonly string[], width: number, complain: Complain): void {
  if (cells.slice(width).some((cell) => cell.trim() !== '')) {
    complain(null, 'The row has more cells than the heading; a separator may stand inside a text.', true);
  }
  if (cells.length < width) {
    const says = `The row has ${counted(cells.length, 'cell')} under ${width} headings; what is missing at the end stays unknown.`;
    complain(null, says, false);
  }
}

/** A choice by hand as our own table writes it: candidate, reason, who and when stand in columns of their own. */
function choiceIn(said: readonly Said[], complain: Complain): Override | null {
  const of = (role: Role) => said.find((cell) => cell.role === role);
  const candidate = of('choice');
  if (!candidate || candidate.text.trim() === '') return null;
  const read = overrideSchema.safeParse({
    candidate: candidate.text.trim(),
    reason: of('choiceReason')?.text ?? '',
    by: of('choiceBy')?.text ?? '',
    at: of('choiceAt')?.text.trim() ?? '',
  });
  if (read.success) return read.data;
  complain(
    candidate.header,
    'A choice by hand needs its reason and its time beside it; it was not taken.',
    false,
  );
  return null;
}

function readOwnColumns(columns: readonly Column[], cells: readonly string[], complain: Complain) {
  const opening = new Map<FactKey, AnyFact>();
  const building = new Map<FactKey, { readonly fact: AnyFact; readonly column: string }>();
  const kept: Kept[] = [];
  for (const column of columns) {
    if (column.use.kind !== 'fact') continue;
    const { fact: key, ofBuilding } = column.use;
    const text = cells[column.index] ?? '';
    const read = readCell(key, text);
    if (!read.ok) {
      complain(column.header.trim(), read.says, false);
      kept.push({ header: column.header.trim(), text });
    } else if (read.fact) {
      const { fact } = read;
      if (ofBuilding || fieldInfo(key).scope === 'building')
        building.set(key, { fact, column: column.header.trim() });
      else opening.set(key, fact);
    }
  }
  return { opening, building, kept };
}

interface Against {
  readonly key: FactKey;
  readonly column: string;
  readonly says: string;
}

/**
 * Two columns that say different things about one fact: neither is believed. The second is read as the first would
 * be, so that 1-1/2 HR beside 90 min is no contradiction.
 */
function contradictions(
  columns: readonly Column[],
  cells: readonly string[],
  said: ReadonlyMap<FactKey, AnyFact>,
  own: ReadonlyMap<FactKey, AnyFact>,
): readonly Against[] {
  const found: Against[] = [];
  const hold = (facts: ReadonlyMap<FactKey, AnyFact>, against: typeof said, named?: string) => {
    for (const [key, fact] of facts) {
      const other = against.get(key);
      if (fact.is !== 'known' || other?.is !== 'known' || fact.value === other.value) continue;
      if (found.some((one) => one.key === key)) continue;
      const [one, two] = [other.value, fact.value].map((value) => valueInWords(key, value));
      const says = `Two columns say different things about ${fieldInfo(key).label}: ${one} and ${two}. It stays unknown.`;
      const own = columns.find(({ use }) => use.kind === 'fact' && use.fact === key);
      found.push({ key, column: named ?? own?.header.trim() ?? '', says });
    }
  };
  for (const column of columns) {
    if (column.use.kind !== 'unused' || column.use.sameAs === undefined) continue;
    const first = columns[column.use.sameAs];
    if (!first) continue;
    const text = cells[column.index] ?? '';
    const asFirst = { ...first, index: 0, header: column.header };
    if (first.use.kind === 'fact') {
      const read = readCell(first.use.fact, text);
      if (read.ok && read.fact) hold(new Map([[first.use.fact, read.fact]]), own, column.header.trim());
    } else hold(readArchitect(saidCells([asFirst], [text])).facts, said, column.header.trim());
  }
  hold(own, said);
  return found;
}

/** Both sides of a contradiction stay in the notes. */
function keptOf(
  columns: readonly Column[],
  cells: readonly string[],
  said: readonly Said[],
  against: readonly Against[],
): readonly Kept[] {
  if (against.length === 0) return [];
  const own = columns.filter(({ use }) => use.kind === 'fact' && against.some(({ key }) => key === use.fact));
  return [
    ...said.filter((cell) => valueRoles.has(cell.role)),
    ...own.map(({ header, index }) => ({ header: header.trim(), text: cells[index] ?? '' })),
  ];
}
const valueRoles: ReadonlySet<Role> = new Set([
  'size',
  'width',
  'height',
  'thickness',
  'frame',
  'rating',
  'hand',
]);

const placeRoles: ReadonlySet<Role> = new Set([
  'level',
  'room',
  'roomNumber',
  'adjoining',
  'adjoiningNumber',
]);
/** A name and a number become one name with a blank between them; alone each may be as long as a name. */
const longestPart = Math.floor((longestName - 1) / 2);
const tooLong = ({ role }: Said, most: number) =>
  `${role === 'globalId' ? 'A GlobalId' : 'The name of a place'} has at most ${most} characters; it stays in the notes.`;
const partOf: Partial<Record<Role, Role>> = {
  room: 'roomNumber',
  roomNumber: 'room',
  adjoining: 'adjoiningNumber',
  adjoiningNumber: 'adjoining',
};
function mostOf({ role }: Said, said: readonly Said[]): number {
  const isJoined = said.some((other) => other.role === partOf[role] && other.text.trim() !== '');
  return isJoined ? longestPart : longestName;
}
const isTooLong = (cell: Said, _index: number, said: readonly Said[]) =>
  (placeRoles.has(cell.role) || cell.role === 'globalId') && cell.text.trim().length > mostOf(cell, said);

function saidCells(columns: readonly Column[], cells: readonly string[]): Said[] {
  return columns.flatMap((column) => {
    if (column.use.kind !== 'role') return [];
    const { role, unit } = column.use;
    return [{ role, unit, header: column.header.trim(), text: cells[column.index] ?? '' }];
  });
}

/** Names of rooms say little for certain; what they do say is assumed, and never against a value that is written. */
function assumeFromRooms(places: Places, facts: Map<FactKey, AnyFact>): void {
  const type = facts.get('doorType');
  const single = type !== undefined && type.is !== 'unknown' && type.value === 'single';
  const { from, to } = places;
  if (isOurOwn(from) || isOurOwn(to)) return;
  if (to && !facts.has('roomUse')) {
    const use = roomUseOf(to.said.text, single);
    if (use) facts.set('roomUse', { is: 'assumed', value: use, from: quote(to.said) });
  }
  const stair = [from, to].find((room) => room?.kind === 'stair');
  if (stair && !facts.has('egressRole')) {
    const outside = facts.get('exterior');
    const outdoors = outside !== undefined && outside.is !== 'unknown' && outside.value === true;
    const value =
      outdoors || [from, to].some((room) => room?.kind === 'outside') ? 'stairDischarge' : 'stairEntry';
    facts.set('egressRole', { is: 'assumed', value, from: quote(stair.said) });
  }
}

function agreeOnBuilding(
  building: Map<FactKey, { fact: AnyFact; row: number }>,
  key: FactKey,
  fact: AnyFact,
  row: number,
  complain: (says: string) => void,
): void {
  const before = building.get(key);
  if (!before) building.set(key, { fact, row });
  else if (JSON.stringify(before.fact) !== JSON.stringify(fact)) {
    complain(
      `${fieldInfo(key).label} belongs to the whole building, and row ${before.row} says otherwise; that one was kept.`,
    );
  }
}

/** A cell that goes into the notes under its heading. */
type Kept = Pick<Said, 'header' | 'text'>;

/** Nothing written is lost: what no column of ours holds is kept with its heading behind the remarks. */
function notesOf(
  columns: readonly Column[],
  cells: readonly string[],
  said: readonly Said[],
  kept: readonly Kept[],
): string {
  const remarks = said.filter((cell) => cell.role === 'notes').map((cell) => cell.text.trim());
  const unused = columns
    .filter((column) => column.use.kind === 'unused')
    .map((column) => ({ header: column.header.trim(), text: (cells[column.index] ?? '').trim() }));
  // Descriptions are read only in part, so their words are kept as well.
  const read: Kept[] = [
    ...kept,
    ...said.filter((cell) => cell.role === 'typeText' || cell.role === 'reader'),
  ];
  const rest = [...new Set(read)].map((cell) => ({ header: cell.header, text: cell.text.trim() }));
  const pairs = [...rest, ...unused].filter((one) => one.text !== '');
  return [...remarks, pairs.map((one) => `${one.header}: ${one.text}`).join('; ')]
    .filter((part) => part !== '')
    .join('\n');
}
