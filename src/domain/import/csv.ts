import type { Edit } from '../commands/command.ts';
import type { Fact, Facts } from '../model/fact.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import { newOpening } from '../model/newProject.ts';
import { type Floor, type Opening, openingSchema, type Project, type Space } from '../model/project.ts';
import { quote, readArchitect, type Said } from './architect.ts';
import { type Column, readHeaders } from './headers.ts';
import { PlaceBook, type Places } from './places.ts';
import { roomUseOf } from './rooms.ts';
import { readCell, type Value } from '../survey/readValue.ts';

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
  readonly columns: readonly Column[];
}

export interface ImportOptions {
  readonly newId: () => string;
  /** Row number of the first data row in the file. */
  readonly firstRow?: number;
  /** The project the rows are to go into: its marks are taken, its floors and spaces are used again. */
  readonly into?: Pick<Project, 'floors' | 'spaces' | 'openings'>;
}

/**
 * Rows of a schedule → openings, and a sentence for everything that could not be taken. Nothing is stored: the
 * caller shows the result and decides whether all of it comes in or nothing.
 */
export function importRows(
  header: readonly string[],
  rows: readonly (readonly string[])[],
  options: ImportOptions,
): Imported {
  const columns = readHeaders(header);
  const into = options.into ?? { floors: {}, spaces: {}, openings: {} };
  const book = new PlaceBook(into, options.newId);
  const problems: ImportProblem[] = [];
  const refused: RefusedRow[] = [];
  const openings: Opening[] = [];
  const building = new Map<FactKey, { fact: Fact<Value>; row: number }>();
  const seen = new Map<string, number>();
  const taken = new Set(Object.values(into.openings).map((opening) => opening.mark));

  const markColumn = columns.find((column) => column.use.kind === 'role' && column.use.role === 'mark');
  if (!markColumn) {
    const says = 'No column holds the mark of the openings; name one “mark” or “Door No.”.';
    problems.push({ row: null, column: null, says, refuses: true });
    return { openings, floors: [], spaces: [], building: {}, problems, refused, columns };
  }

  rows.forEach((cells, index) => {
    if (cells.every((cell) => cell.trim() === '')) return;
    const row = index + (options.firstRow ?? 2);
    const mark = (cells[markColumn.index] ?? '').trim();
    const before = problems.length;
    const complain = (column: string | null, says: string, refuses: boolean) =>
      problems.push({ row, column, says, refuses });

    const markProblem = checkMark(mark, row, seen, taken);
    if (markProblem !== undefined) complain(markColumn.header, markProblem, true);
    else seen.set(mark, row);
    if (cells.length > header.length && cells.slice(header.length).some((cell) => cell.trim() !== '')) {
      complain(null, 'The row has more cells than the header; a separator may stand inside a text.', true);
    }
    const own = readOwnColumns(columns, cells, complain);
    const said = saidCells(columns, cells);
    const count = said.find((cell) => cell.role === 'count');
    if (count && /^\d+$/.test(count.text.trim()) && Number(count.text) !== 1) {
      const says = `The row stands for ${count.text.trim()} doors; give each its own row and mark.`;
      complain(count.header, says, true);
    }
    const read = readArchitect(said);
    for (const problem of read.problems) complain(problem.column, problem.says, false);

    if (problems.slice(before).some((problem) => problem.refuses)) {
      refused.push({ row, mark, cells });
      return;
    }
    const facts = new Map([...read.facts, ...own.opening]);
    const exterior = facts.get('exterior');
    const places = book.read(
      said,
      exterior !== undefined && exterior.is !== 'unknown' && exterior.value === true,
    );
    assumeFromRooms(places, facts);
    for (const [key, fact] of own.building) agreeOnBuilding(building, key, fact, row, complain);
    openings.push({
      ...newOpening(options.newId(), mark),
      floorId: places.floorId,
      fromSpaceId: places.fromSpaceId,
      toSpaceId: places.toSpaceId,
      facts: Object.fromEntries(facts) as Facts,
      notes: notesOf(columns, cells, said, read.kept),
    });
  });
  return {
    openings,
    floors: book.floors,
    spaces: book.spaces,
    building: Object.fromEntries([...building].map(([key, { fact }]) => [key, fact])) as Facts,
    problems,
    refused,
    columns,
  };
}

/**
 * The edits that bring an import into a project, to be done and undone together: floors, spaces, openings, and facts
 * of the building where the project has no answer yet.
 */
export function importEdits(project: Project, imported: Imported): readonly Edit[] {
  return [
    ...imported.floors.map((value): Edit => ({ kind: 'putFloor', id: value.id, value })),
    ...imported.spaces.map((value): Edit => ({ kind: 'putSpace', id: value.id, value })),
    ...imported.openings.map(
      (value): Edit => ({
        kind: 'putOpening',
        id: value.id,
        value: value as Extract<Edit, { kind: 'putOpening' }>['value'],
      }),
    ),
    ...Object.entries(imported.building).flatMap(([fact, value]): Edit[] => {
      const before = project.building[fact as FactKey];
      return value && (before === undefined || before.is === 'unknown')
        ? [{ kind: 'setBuildingFact', fact, value }]
        : [];
    }),
  ];
}

function checkMark(
  mark: string,
  row: number,
  seen: ReadonlyMap<string, number>,
  taken: ReadonlySet<string>,
): string | undefined {
  const parsed = openingSchema.shape.mark.safeParse(mark);
  if (!parsed.success) return parsed.error.issues[0]?.message ?? 'This mark cannot be used.';
  const first = seen.get(mark);
  if (first !== undefined) return `Mark ${mark} stands in row ${first} and again in row ${row}.`;
  return taken.has(mark) ? `Mark ${mark} is already in the project.` : undefined;
}

type Complain = (column: string | null, says: string, refuses: boolean) => void;

function readOwnColumns(columns: readonly Column[], cells: readonly string[], complain: Complain) {
  const opening = new Map<FactKey, Fact<Value>>();
  const building = new Map<FactKey, Fact<Value>>();
  for (const column of columns) {
    if (column.use.kind !== 'fact') continue;
    const { fact: key } = column.use;
    const read = readCell(key, cells[column.index] ?? '');
    if (!read.ok) complain(column.header, read.says, true);
    else if (read.fact) (fieldInfo(key).scope === 'building' ? building : opening).set(key, read.fact);
  }
  return { opening, building };
}

function saidCells(columns: readonly Column[], cells: readonly string[]): readonly Said[] {
  return columns.flatMap((column) => {
    if (column.use.kind !== 'role') return [];
    const { role, unit } = column.use;
    return [{ role, unit, header: column.header.trim(), text: cells[column.index] ?? '' }];
  });
}

/** Names of rooms say little for certain; what they do say is assumed, and never against a value that is written. */
function assumeFromRooms(places: Places, facts: Map<FactKey, Fact<Value>>): void {
  const type = facts.get('doorType');
  const single = type !== undefined && type.is !== 'unknown' && type.value === 'single';
  const { from, to } = places;
  // Under our own columns a survey is read back: what it does not say was not said.
  if ([from, to].some((room) => /^(from|to)$/i.test(room?.said.header ?? ''))) return;
  if (to && !facts.has('roomUse')) {
    const use = roomUseOf(to.said.text, single);
    if (use) facts.set('roomUse', { is: 'assumed', value: use, from: quote(to.said) });
  }
  const stair = [from, to].find((room) => room?.kind === 'stair');
  if (stair && !facts.has('egressRole')) {
    const outside = facts.get('exterior');
    const outdoors = outside !== undefined && outside.is !== 'unknown' && outside.value === true;
    const value = outdoors || from?.kind === 'outside' ? 'stairDischarge' : 'stairEntry';
    facts.set('egressRole', { is: 'assumed', value, from: quote(stair.said) });
  }
}

function agreeOnBuilding(
  building: Map<FactKey, { fact: Fact<Value>; row: number }>,
  key: FactKey,
  fact: Fact<Value>,
  row: number,
  complain: Complain,
): void {
  const before = building.get(key);
  if (!before) building.set(key, { fact, row });
  else if (JSON.stringify(before.fact) !== JSON.stringify(fact)) {
    const says = `${fieldInfo(key).label} belongs to the whole building, and row ${before.row} says otherwise; that one was kept.`;
    complain(key, says, false);
  }
}

/** Nothing written is lost: what no column of ours holds is kept with its heading behind the remarks. */
function notesOf(
  columns: readonly Column[],
  cells: readonly string[],
  said: readonly Said[],
  kept: readonly Said[],
): string {
  const remarks = said.filter((cell) => cell.role === 'notes').map((cell) => cell.text.trim());
  const unused = columns
    .filter((column) => column.use.kind === 'unused')
    .map((column) => ({ header: column.header.trim(), text: (cells[column.index] ?? '').trim() }));
  // Descriptions are read only in part, so their words are kept as well.
  const read = [...kept, ...said.filter((cell) => cell.role === 'typeText' || cell.role === 'reader')];
  const rest = [...new Set(read)].map((cell) => ({ header: cell.header, text: cell.text.trim() }));
  const pairs = [...rest, ...unused].filter((one) => one.text !== '');
  return [...remarks, pairs.map((one) => `${one.header}: ${one.text}`).join('; ')]
    .filter((part) => part !== '')
    .join('\n');
}
