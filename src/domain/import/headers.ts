import { buildingFactKeys, type FactKey, factKeys, fieldInfo } from '../model/fields.ts';
import { oneSpelling } from '../survey/readValue.ts';

/** What a column of an architect's schedule tells; each has its reader in `architect.ts` or `places.ts`. */
export type Role =
  | 'mark'
  | 'count'
  | 'level'
  | 'room'
  | 'roomNumber'
  | 'adjoining'
  | 'adjoiningNumber'
  | 'size'
  | 'width'
  | 'height'
  | 'thickness'
  | 'typeText'
  | 'material'
  | 'frame'
  | 'rating'
  | 'hand'
  | 'reader'
  | 'overallWidth'
  | 'overallHeight'
  | 'operation'
  | 'isExternal'
  | 'fireExit'
  | 'accessible'
  | 'selfClosing'
  | 'smokeStop'
  | 'globalId'
  | 'choice'
  | 'choiceReason'
  | 'choiceBy'
  | 'choiceAt'
  | 'notes';

/** Headings seen in schedules, in plain spelling without units and full stops; earlier ones win. */
const headings: Readonly<Record<Role, readonly string[]>> = {
  mark: [
    'mark',
    'door no',
    'door number',
    'opening no',
    'opening number',
    'door mark',
    'door name',
    'door ref',
    'door id',
    'number',
    'tag number',
    'door',
    'opening',
    'door #',
    'opening mark',
  ],
  count: ['count', 'qty', 'quantity'],
  level: ['floor', 'level', 'storey', 'story', 'floor name', 'level name'],
  room: ['to', 'room name', 'room', 'to room', 'to room name', 'space', 'room or space'],
  roomNumber: ['room no', 'room number', 'to room no', 'to room number'],
  adjoining: ['from', 'adjoining room name', 'adjoining room', 'from room', 'from room name'],
  adjoiningNumber: ['adjoining room no', 'adjoining room number', 'from room no', 'from room number'],
  size: ['size', 'opening size', 'door size'],
  width: ['width', 'door width', 'size width', 'leaf width', 'opening width', 'door size width'],
  height: ['height', 'door height', 'size height', 'leaf height', 'opening height', 'door size height'],
  thickness: ['thickness', 'door thickness', 'thk', 'door thk', 'size thk', 'size thickness'],
  typeText: ['door type', 'door description', 'description', 'type'],
  material: ['door material', 'material', 'door mat', 'mat', 'door matl', 'matl'],
  frame: ['frame', 'frame material', 'door frame', 'doorframe', 'frame mat', 'frame matl'],
  rating: [
    'fire rating',
    'rating',
    'fire label',
    'label',
    'door rating',
    'door fire rating',
    'fire',
    'rating label',
    'firerating',
    'door label',
  ],
  hand: ['hand', 'door hand', 'hand of door', 'swing'],
  reader: ['card reader', 'reader', 'access control'],
  overallWidth: ['overall width', 'overallwidth'],
  overallHeight: ['overall height', 'overallheight'],
  operation: ['operationtype', 'operation type', 'operation', 'door operation'],
  isExternal: ['isexternal', 'is external'],
  fireExit: ['fireexit', 'fire exit'],
  accessible: ['handicapaccessible', 'handicap accessible'],
  selfClosing: ['selfclosing'],
  smokeStop: ['smokestop', 'smoke stop'],
  globalId: ['globalid', 'global id', 'ifcguid', 'ifc guid', 'extidentifier'],
  choice: ['choice by hand'],
  choiceReason: ['reason of the choice'],
  choiceBy: ['chosen by'],
  choiceAt: ['chosen at'],
  notes: ['notes', 'remarks', 'comments'],
};
/** Roles that may be told by more than one column. */
const many: ReadonlySet<Role> = new Set(['typeText', 'notes']);

export type LengthUnit = 'in' | 'mm' | undefined;
export type ColumnUse =
  | { readonly kind: 'fact'; readonly fact: FactKey; readonly ofBuilding?: true }
  | { readonly kind: 'role'; readonly role: Role; readonly unit: LengthUnit }
  /** `sameAs` is the column that tells the same; what this one says is held against it. */
  | { readonly kind: 'unused'; readonly sameAs?: number };

export interface Column {
  readonly index: number;
  readonly header: string;
  readonly use: ColumnUse;
}

const factByHeading = new Map<string, FactKey>();
for (const key of factKeys) factByHeading.set(oneSpelling(fieldInfo(key).label), key);
for (const key of factKeys) factByHeading.set(key.toLowerCase(), key);

function plainHeading(header: string): { name: string; unit: LengthUnit } {
  const spelled = oneSpelling(header);
  const unit = /\((mm|in)\.?\)/.exec(spelled)?.[1] as LengthUnit;
  return { name: oneSpelling(spelled.replace(/\((mm|in)\.?\)/, '').replace(/[.:#]/g, ' ')), unit };
}

function rolesOf(name: string): { role: Role; rank: number } | undefined {
  for (const [role, names] of Object.entries(headings) as [Role, readonly string[]][]) {
    const rank = names.indexOf(name);
    if (rank >= 0) return { role, rank };
  }
  return undefined;
}

/**
 * Which column tells what. "Door type" is a label of ours and a heading of architects, and is read as the latter;
 * `doorType` is a key and cannot be mistaken. Where two columns would tell
 * the same the better known heading is taken; the other goes into the notes, so that nothing is lost.
 */
export function readHeaders(header: readonly string[]): readonly Column[] {
  const plain = header.map(plainHeading);
  const best = new Map<Role, { index: number; rank: number }>();
  plain.forEach(({ name }, index) => {
    const found = rolesOf(name);
    if (!found) return;
    const before = best.get(found.role);
    if (!before || found.rank < before.rank) best.set(found.role, { index, rank: found.rank });
  });
  const taken = new Map<FactKey, number>();
  return header.map((text, index): Column => {
    const { name, unit } = plain[index] ?? { name: '', unit: undefined };
    const found = rolesOf(name);
    if (found) {
      const used = many.has(found.role) || best.get(found.role)?.index === index;
      return {
        index,
        header: text,
        use: used ? { kind: 'role', role: found.role, unit } : again(best.get(found.role)?.index),
      };
    }
    const whole = ofBuilding(name);
    if (whole !== undefined) {
      return { index, header: text, use: { kind: 'fact', fact: whole, ofBuilding: true } };
    }
    const fact = factByHeading.get(oneSpelling(text)) ?? factByHeading.get(name);
    if (fact === undefined || taken.has(fact)) {
      return { index, header: text, use: again(fact && taken.get(fact)) };
    }
    taken.set(fact, index);
    return { index, header: text, use: { kind: 'fact', fact } };
  });
}

/** "building sprinklered": said of the whole building, also where openings may answer it for themselves. */
export const buildingHeading = (key: FactKey) => `building ${key}`;
function ofBuilding(name: string): FactKey | undefined {
  const key = name.startsWith('building ') ? factByHeading.get(name.slice('building '.length)) : undefined;
  return key !== undefined && buildingFactKeys.includes(key) ? key : undefined;
}

function again(sameAs: number | undefined): ColumnUse {
  return sameAs === undefined ? { kind: 'unused' } : { kind: 'unused', sameAs };
}

/** A use by name, as a person picks it and as it is kept for the next file: `mark`, `width`, `fact:latch`, `unused`. */
export function useName(use: ColumnUse): string {
  if (use.kind === 'fact' && use.ofBuilding) return `building:${use.fact}`;
  return use.kind === 'fact' ? `fact:${use.fact}` : use.kind === 'role' ? use.role : 'unused';
}

/** What a person said about columns, by heading, over what was guessed. */
export function mappedHeaders(
  header: readonly string[],
  chosen: Readonly<Record<string, string>>,
): readonly Column[] {
  const picked = (text: string) =>
    Object.hasOwn(chosen, mappingKey(text)) ? chosen[mappingKey(text)] : undefined;
  // What is mapped by hand takes part in no guess, so that the guess fills the rest.
  const guessed = readHeaders(header.map((text) => (picked(text) === undefined ? text : '')));
  const taken = new Set(header.map(picked));
  return guessed.map((column, index): Column => {
    const text = header[index] ?? '';
    const name = picked(text);
    if (name === undefined) {
      const clash =
        column.use.kind !== 'unused' && taken.has(useName(column.use)) && useName(column.use) !== 'notes';
      return clash ? { ...column, use: { kind: 'unused' } } : column;
    }
    return { index, header: text, use: useNamed(name, plainHeading(text).unit) };
  });
}

export function mappingKey(header: string): string {
  return oneSpelling(header);
}

function useNamed(name: string, unit: LengthUnit): ColumnUse {
  const fact = factKeys.find((key) => `fact:${key}` === name);
  if (fact !== undefined) return { kind: 'fact', fact };
  const whole = buildingFactKeys.find((key) => `building:${key}` === name);
  if (whole !== undefined) return { kind: 'fact', fact: whole, ofBuilding: true };
  return Object.hasOwn(headings, name) ? { kind: 'role', role: name as Role, unit } : { kind: 'unused' };
}

/** A mapping that was kept for the next file; what cannot be read is no mapping. */
export function mappingFrom(text: string): Readonly<Record<string, string>> {
  try {
    const read: unknown = JSON.parse(text);
    if (read === null || typeof read !== 'object') return {};
    return Object.fromEntries(
      Object.entries(read).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
    );
  } catch {
    return {};
  }
}

/** Everything a column can be taken for. */
export const roles = Object.keys(headings) as readonly Role[];
