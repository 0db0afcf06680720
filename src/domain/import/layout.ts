import { oneSpelling } from '../survey/readValue.ts';
import { type GivenPlaces, type Grid, type GridRow, isBlank } from './grid.ts';
import { type Column, readHeaders, useName } from './headers.ts';

/** Where a table begins: one line of headings made of one to three rows, and the rows below it. */
export interface Table {
  readonly header: readonly string[];
  readonly headerRows: readonly GridRow[];
  readonly rows: readonly GridRow[];
  readonly places?: GivenPlaces;
}

/** Exports open with titles, dates and blank lines; nobody writes more of them than this. */
const lookedThrough = 40;
const mostHeaderRows = 3;

/** Groups whose parts mean something else than the same word alone: the type of a frame is no type of a door. */
const ownGroup = /^(frame|hardware|hdwe?r?e?|glass|glazing|details?|head|jamb|sill|louver|finish)\b/;
/** What is named alone even when it stands beside or below such a group. */
const standsAlone =
  /^(fire rating|rating|fire label|label|mark|door no|door number|remarks|notes|comments|level|floor)\b/;

/** The heading of the doors: the row, or rows read together, that name most columns, the mark among them. */
export function findTable(grid: Pick<Grid, 'rows' | 'places'>): Table | undefined {
  const { rows } = grid;
  let best: { from: number; count: number; header: readonly string[]; score: number } | undefined;
  for (let from = 0; from < Math.min(rows.length, lookedThrough); from += 1) {
    let header: readonly string[] = rows[from]?.cells ?? [];
    for (let count = 1; count <= mostHeaderRows; count += 1) {
      if (count > 1) {
        const below = rows[from + count - 1];
        if (!below || below.isDoor || !mayBeHeading(below)) break;
        header = together(header, below.cells);
      }
      const score = scoreOf(readHeaders(header));
      if (score > (best?.score ?? 0)) best = { from, count, header, score };
    }
    // A heading with a mark was found, and what comes now is doors.
    if (best && from >= best.from + mostHeaderRows) break;
  }
  if (!best) return undefined;
  return {
    header: best.header,
    headerRows: rows.slice(best.from, best.from + best.count),
    rows: rows.slice(best.from + best.count),
    ...(grid.places ? { places: grid.places } : {}),
  };
}

/** Columns that are understood, when one of them holds the mark; otherwise nothing. A row of units tells a little more. */
function scoreOf(columns: readonly Column[]): number {
  const hasMark = columns.some(({ use }) => useName(use) === 'mark');
  if (!hasMark) return 0;
  const withUnit = columns.filter(({ use }) => use.kind === 'role' && use.unit !== undefined).length;
  return columns.filter(({ use }) => use.kind !== 'unused').length + withUnit / 1000;
}

const unitAlone = /^\(?(in|mm)\.?\)?$/i;

/** Headings are words; a row with figures is a door, and one word by itself is a note unless it is a unit. */
function mayBeHeading(row: GridRow): boolean {
  const said = row.cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  const isEnough = said.length > 1 || said.some((cell) => unitAlone.test(cell));
  return isEnough && said.every((cell) => !/\d/.test(cell) && cell.length < 60);
}

/** An upper and a lower row of headings as one; a group stands over the cells to its right that have none. */
function together(above: readonly string[], below: readonly string[]): readonly string[] {
  let group = '';
  return Array.from({ length: Math.max(above.length, below.length) }, (_, index) => {
    const top = (above[index] ?? '').trim();
    const bottom = (below[index] ?? '').trim();
    if (top !== '') group = top;
    if (bottom === '' || oneSpelling(bottom) === oneSpelling(top)) return top;
    if (unitAlone.test(bottom) && top !== '') return `${top} (${bottom.replace(/[().]/g, '')})`;
    if (group === '') return bottom;
    const both = `${group} ${bottom}`;
    if (ownGroup.test(oneSpelling(group)) && !standsAlone.test(oneSpelling(bottom))) return both;
    const known = (name: string) => readHeaders([name])[0]?.use.kind !== 'unused';
    return !known(both) && known(bottom) ? bottom : both;
  });
}

/** What a row is, before anything in it is read. */
export type RowClass =
  | 'opening'
  | 'blank'
  | 'repeated'
  | 'floor'
  | 'note'
  | 'total'
  | 'notUsed'
  | 'hidden'
  | 'broken';

export interface ClassifiedRow {
  readonly row: GridRow;
  readonly is: RowClass;
  /** Why it is no opening; empty for an opening. */
  readonly why: string;
}

const notUsed =
  /^\W*(door )?(number |no\.? )?(not used|unused|omit|omitted|deleted|void|voided|cancell?ed)\W*$/i;
const totalWords =
  /^\W*((grand|sub) ?-?)?totals?\b|^\W*\d+ (doors|openings)\W*$|^\W*(doors|openings) in all\b/i;
const noteWords =
  /^\W*((general |door |schedule )?notes?|remarks|legend|abbreviations|key|end of schedule|page \d+)\b|^\(?\d+[.)] +\w/i;
const floorWords = /\b(floor|level|basement|storey|story|mezzanine|penthouse|roof|ground)\b/i;

/** Sorts the rows below the heading; a person's correction goes before all of it. */
export function classifyRows(
  table: Table,
  markAt: number | undefined,
  corrected: ReadonlyMap<number, 'opening' | 'omit'> = new Map(),
): readonly ClassifiedRow[] {
  const sorted = table.rows.map((row): ClassifiedRow => {
    const choice = corrected.get(row.number);
    if (choice === 'opening') return { row, is: 'opening', why: '' };
    if (choice === 'omit') return { row, is: 'notUsed', why: 'Left out by hand.' };
    return { row, ...classOf(row, table, markAt) };
  });
  return joinBroken(sorted, table.header.length);
}

function classOf(row: GridRow, table: Table, markAt: number | undefined): Pick<ClassifiedRow, 'is' | 'why'> {
  if (row.isDoor) return { is: 'opening', why: '' };
  if (isBlank(row)) return { is: 'blank', why: 'Blank.' };
  if (row.broken !== undefined) return { is: 'broken', why: row.broken };
  if (repeats(row, table)) return { is: 'repeated', why: 'The headings once more.' };
  if (row.struck) return { is: 'notUsed', why: 'Struck through.' };
  if (row.hidden) return { is: 'hidden', why: 'The row is hidden in the workbook.' };
  const said = row.cells.map((cell) => cell.trim()).filter((cell) => cell !== '');
  if (said.some((cell) => notUsed.test(cell))) return { is: 'notUsed', why: 'Marked as not used.' };
  const [first = ''] = said;
  if (totalWords.test(first)) return { is: 'total', why: 'A total, no door.' };
  const mark = markAt === undefined ? '' : (row.cells[markAt] ?? '').trim();
  // A merged line across the table says one text in every cell.
  const alone = new Set(said).size === 1;
  const wide = table.header.length > 2;
  if (alone && wide && floorWords.test(first) && first.length <= 60 && !/[.!?]$/.test(first)) {
    return { is: 'floor', why: `Heading of the rows below: ${first}.` };
  }
  if (noteWords.test(first) && (alone || mark === '' || mark === first))
    return { is: 'note', why: 'A note.' };
  const words = first.split(/\s+/).length;
  if (alone && wide && (mark === '' || words > 3 || !/\d/.test(first) || said.length > 1)) {
    return { is: 'note', why: 'One text by itself, no door.' };
  }
  if (mark === first && words > 6) return { is: 'note', why: 'A sentence where a mark should be.' };
  return { is: 'opening', why: '' };
}

function repeats(row: GridRow, table: Table): boolean {
  return [{ cells: table.header }, ...table.headerRows].some((header) =>
    row.cells.every(
      (cell, index) => cell.trim() === '' || oneSpelling(cell) === oneSpelling(header.cells[index] ?? ''),
    ),
  );
}

/** Two short rows that make one whole row: a line break stood in a text without quotes. */
function joinBroken(rows: readonly ClassifiedRow[], width: number): readonly ClassifiedRow[] {
  const halves = new Set<number>();
  rows.forEach(({ row, is }, index) => {
    const next = rows[index + 1];
    if (!next || is === 'blank' || next.is === 'blank' || halves.has(index)) return;
    const [here, there] = [row.cells.length, next.row.cells.length];
    if (here > 1 && there > 1 && here + there === width + 1) {
      halves.add(index).add(index + 1);
    }
  });
  const why = 'A line break stands inside a text here and cuts the row in two; put the text in quotes.';
  return rows.map((one, index) => (halves.has(index) ? { ...one, is: 'broken', why } : one));
}
