import { counted } from '../text/counted.ts';
import type { Imported, ImportProblem } from '../import/csv.ts';
import { type Column, type Role, roles, useName } from '../import/headers.ts';
import { valueInWords } from '../text/format.ts';
import { factEntries } from '../model/fact.ts';
import { buildingFactKeys, type FactKey, factKeys, fieldInfo } from '../model/fields.ts';

/** One column of a schedule, as it was understood. */
export interface ColumnPreview {
  readonly index: number;
  readonly header: string;
  readonly means: string;
  /** What it is taken for, by name; a person may pick another. */
  readonly use: string;
  /** The first different texts in it. */
  readonly examples: readonly string[];
  readonly known: number;
  readonly assumed: number;
  /** Cells that could not be taken; their words go into the notes. */
  readonly notTaken: number;
  readonly standing: string;
}

const roleMeans: Record<Role, string> = {
  mark: 'Mark of the opening',
  count: 'Number of doors; a row is one opening',
  level: 'Floor',
  room: 'Room the door belongs to',
  roomNumber: 'Number of that room',
  adjoining: 'Space on the other side',
  adjoiningNumber: 'Number of that space',
  size: 'Width, height and thickness',
  width: 'Leaf width',
  height: 'Leaf height',
  thickness: 'Leaf thickness',
  typeText: 'Description; what it says is assumed',
  material: 'Leaf material',
  frame: 'Frame material',
  rating: 'Fire rating of the door',
  hand: 'Handing',
  reader: 'Reader',
  overallWidth: 'Width of the whole door; the leaf is assumed',
  overallHeight: 'Height of the whole door; the leaf is assumed',
  operation: 'How the door moves; its kind is assumed',
  isExternal: 'Exterior, assumed',
  fireExit: 'Exit in case of fire',
  accessible: 'On an accessible route, if yes',
  selfClosing: 'Self-closing, if yes',
  smokeStop: 'Smoke-leakage label, if yes',
  globalId: 'GlobalId of the building model',
  choice: 'Choice by hand',
  choiceReason: 'Reason of that choice',
  choiceBy: 'Who chose',
  choiceAt: 'When it was chosen',
  notes: 'Notes',
};

const roleFacts: Partial<Record<Role, readonly FactKey[]>> = {
  size: ['leafWidthIn', 'leafHeightIn', 'leafThicknessIn'],
  width: ['leafWidthIn'],
  height: ['leafHeightIn'],
  thickness: ['leafThicknessIn'],
  frame: ['frameMaterial'],
  rating: ['fireRatingMin'],
  hand: ['handing'],
  reader: ['readerSides'],
  overallWidth: ['leafWidthIn'],
  overallHeight: ['leafHeightIn'],
  operation: ['doorType'],
  isExternal: ['exterior'],
  fireExit: ['egressRole'],
  accessible: ['accessibleRoute'],
  selfClosing: ['closing'],
  smokeStop: ['smokeSeals'],
};

/** Marks and places are taken as they stand; they are no facts that could be assumed. */
const asWritten: ReadonlySet<Role> = new Set([
  'mark',
  'level',
  'room',
  'roomNumber',
  'adjoining',
  'adjoiningNumber',
  'globalId',
  'choice',
  'choiceReason',
  'choiceBy',
  'choiceAt',
  'notes',
]);

export function previewColumns(imported: Imported): readonly ColumnPreview[] {
  return imported.columns.map((column) => {
    const { known, assumed, others } = countFacts(imported, column);
    const notTaken = notTakenIn(imported, column);
    return {
      index: column.index,
      header: column.header.trim() === '' ? `(column ${column.index + 1})` : column.header.trim(),
      means: meansOf(column),
      use: useName(column.use),
      examples: examplesOf(imported, column),
      known,
      assumed,
      notTaken,
      standing: standingOf(column, [known, assumed, notTaken], others),
    };
  });
}

const examplesShown = 3;

function examplesOf(imported: Imported, { index }: Column): readonly string[] {
  const found = new Set<string>();
  for (const { cells } of imported.from.values()) {
    const text = (cells[index] ?? '').trim();
    if (text !== '') found.add(text);
    if (found.size === examplesShown) break;
  }
  return [...found];
}

/** What a person may take a column for, by name. */
export function columnChoices(): readonly { readonly use: string; readonly means: string }[] {
  return [
    { use: 'unused', means: 'Not read; kept in the notes' },
    ...roles.map((role) => ({ use: role, means: roleMeans[role] })),
    ...factKeys.map((key) => ({ use: `fact:${key}`, means: fieldInfo(key).label })),
    ...buildingFactKeys.map((key) => ({
      use: `building:${key}`,
      means: `${fieldInfo(key).label} (whole building)`,
    })),
  ];
}

/** One cell as it stands in the file and as it was read. */
export interface CellReading {
  readonly header: string;
  readonly original: string;
  readonly reading: string;
  /** A sentence about what could not be taken; empty otherwise. */
  readonly doubt: string;
}

/** Every cell of one opening with something in it, original beside reading. */
export function cellsOf(imported: Imported, openingId: string): readonly CellReading[] {
  const row = imported.from.get(openingId);
  const opening = imported.openings.find((one) => one.id === openingId);
  if (!row || !opening) return [];
  return imported.columns.flatMap((column): CellReading[] => {
    const original = (row.cells[column.index] ?? '').trim();
    if (original === '') return [];
    const header = column.header.trim();
    const doubt = imported.problems
      .filter((one) => one.row === row.number && one.column === header)
      .map((one) => one.says)
      .join(' ');
    return [{ header, original, reading: readingOf(column, opening), doubt }];
  });
}

function readingOf({ use, header }: Column, opening: Imported['openings'][number]): string {
  if (use.kind === 'unused') return 'Kept in the notes';
  if (use.kind === 'role' && asWritten.has(use.role))
    return use.role === 'mark' ? opening.mark : 'As written';
  const own = new Set<string>(use.kind === 'fact' ? [use.fact] : (roleFacts[use.role] ?? []));
  const from = `column ${header.trim()}:`;
  const said = factEntries(opening.facts).flatMap(([key, fact]) => {
    if (fact.is === 'unknown') return [];
    const assumed = fact.is === 'assumed' && fact.from.startsWith(from);
    if (!assumed && !own.has(key)) return [];
    const value = valueInWords(key, fact.value);
    return [`${fieldInfo(key).label}: ${value}${fact.is === 'assumed' ? ', assumed' : ''}`];
  });
  return said.length > 0 ? said.join('; ') : 'Nothing taken';
}

function meansOf({ use }: Column): string {
  switch (use.kind) {
    case 'fact':
      return fieldInfo(use.fact).label;
    case 'role':
      return use.unit === undefined ? roleMeans[use.role] : `${roleMeans[use.role]}, in ${use.unit}`;
    case 'unused':
      return 'Not read; kept in the notes';
  }
}

function standingOf(
  { use }: Column,
  [known, assumed, notTaken]: readonly [number, number, number],
  others: ReadonlyMap<FactKey, number>,
): string {
  if (use.kind === 'unused') return 'unused';
  const words = [
    ...(known > 0 ? [`${known} known`] : []),
    ...(assumed > 0 ? [`${assumed} assumed`] : []),
    ...(notTaken > 0 ? [`${notTaken} not taken`] : []),
  ];
  if (use.kind === 'role' && asWritten.has(use.role)) return ['as written', ...words].join(', ');
  const said = words.length > 0 ? words.join(', ') : 'nothing in it';
  return [said, ...[...others].map(([key, cells]) => `${fieldInfo(key).label} assumed from ${cells}`)].join(
    '; ',
  );
}

/** A row that is refused anyway is not counted in its other columns. */
function notTakenIn(imported: Imported, column: Column): number {
  const refused = new Set(imported.refused.map((one) => one.row));
  return imported.problems.filter(
    (one) =>
      one.column === column.header.trim() && (one.refuses || one.row === null || !refused.has(one.row)),
  ).length;
}

interface Counts {
  readonly known: number;
  readonly assumed: number;
  /** What else the cells let assume: a width without a word of a pair speaks of one leaf. */
  readonly others: ReadonlyMap<FactKey, number>;
}

function countFacts(imported: Imported, column: Column): Counts {
  const { use } = column;
  const others = new Map<FactKey, number>();
  if (use.kind === 'unused') return { known: 0, assumed: 0, others };
  const keys = new Set<string>(use.kind === 'fact' ? [use.fact] : (roleFacts[use.role] ?? []));
  const from = `column ${column.header.trim()}:`;
  let known = 0;
  let assumed = 0;
  for (const { facts } of imported.openings) {
    const entries = factEntries(facts);
    if (entries.some(([key, fact]) => keys.has(key) && fact.is === 'known')) known += 1;
    const taken = entries.filter(
      ([key, fact]) =>
        fact.is === 'assumed' && (fact.from.startsWith(from) || (use.kind === 'fact' && keys.has(key))),
    );
    // A description has no fact of its own: whatever it says is its own.
    if (taken.some(([key]) => keys.size === 0 || keys.has(key))) assumed += 1;
    if (keys.size === 0) continue;
    for (const [key] of taken) if (!keys.has(key)) others.set(key, (others.get(key) ?? 0) + 1);
  }
  return { known, assumed, others };
}

/** What would come in, as one sentence. */
export function importTotals(imported: Imported): string {
  const parts = [
    counted(imported.openings.length, 'opening'),
    counted(imported.floors.length, 'new floor'),
    counted(imported.spaces.length, 'new space'),
  ];
  const refused =
    imported.refused.length === 0 ? '' : ` ${counted(imported.refused.length, 'row')} refused and left out.`;
  const skipped = skippedRows(imported).length;
  const others = skipped === 0 ? '' : ` ${counted(skipped, 'row')} not read as doors.`;
  return `${parts.join(', ')}.${refused}${others}`;
}

/** Rows that hold something and were not read as doors. */
export function skippedRows(imported: Imported): Imported['skipped'] {
  return imported.skipped.filter((one) => one.is !== 'blank');
}

/** Refused rows first, each sentence with its place in the file. */
export function problemsInOrder(imported: Imported): readonly ImportProblem[] {
  return imported.problems.toSorted(
    (a, b) => Number(b.refuses) - Number(a.refuses) || (a.row ?? 0) - (b.row ?? 0),
  );
}

export function placeOf(problem: ImportProblem): string {
  const place = [
    problem.row === null ? 'The file' : `Row ${problem.row}`,
    ...(problem.column === null ? [] : [`column ${problem.column}`]),
  ];
  return place.join(', ');
}

/** All or nothing, unless the person said that the good rows may come in without the others. */
export function mayImport(
  imported: Imported,
  goodRowsOnly: boolean,
): { readonly ok: true } | { readonly ok: false; readonly says: string } {
  if (imported.openings.length === 0) return { ok: false, says: 'No row can be imported.' };
  if (imported.refused.length > 0 && !goodRowsOnly) {
    const rows = imported.refused.map((one) => one.row);
    return {
      ok: false,
      says: `Nothing is imported while ${counted(rows.length, 'row')} ${rows.length === 1 ? 'is' : 'are'} refused: ${rows.slice(0, 8).join(', ')}${rows.length > 8 ? ' …' : ''}. Fix the file, or import the valid rows only.`,
    };
  }
  return { ok: true };
}

/** What undo and the list of edits call it. */
export function importLabel(imported: Imported, source: string): string {
  return `Import ${counted(imported.openings.length, 'opening')} from ${source}`;
}

export function broughtIn(imported: Imported): string {
  if (imported.meets.size > 0) {
    return `${counted(imported.openings.length, 'opening')} of the file brought into the project. Undo takes all of it back.`;
  }
  return `${counted(imported.openings.length, 'opening')} imported. They are in the schedule; Undo removes all of them.`;
}
