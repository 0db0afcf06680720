import { type FactKey, factKeys, fieldInfo } from '../model/fields.ts';
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
  ],
  count: ['count', 'qty', 'quantity'],
  level: ['floor', 'level', 'storey', 'story', 'floor name', 'level name'],
  room: ['to', 'room name', 'room', 'to room', 'to room name', 'space', 'room or space'],
  roomNumber: ['room no', 'room number', 'to room no', 'to room number'],
  adjoining: ['from', 'adjoining room name', 'adjoining room', 'from room', 'from room name'],
  adjoiningNumber: ['adjoining room no', 'adjoining room number', 'from room no', 'from room number'],
  size: ['size', 'opening size', 'door size'],
  width: ['width', 'door width'],
  height: ['height', 'door height'],
  thickness: ['thickness', 'door thickness', 'thk'],
  typeText: ['door type', 'door description', 'description', 'type'],
  material: ['door material', 'material', 'door mat', 'mat'],
  frame: ['frame', 'frame material', 'door frame', 'doorframe', 'frame mat'],
  rating: ['fire rating', 'rating', 'fire label', 'label', 'door rating'],
  hand: ['hand'],
  reader: ['card reader', 'reader', 'access control'],
  notes: ['notes', 'remarks', 'comments'],
};
/** Roles that may be told by more than one column. */
const many: ReadonlySet<Role> = new Set(['typeText', 'notes']);

export type LengthUnit = 'in' | 'mm' | undefined;
export type ColumnUse =
  | { readonly kind: 'fact'; readonly fact: FactKey }
  | { readonly kind: 'role'; readonly role: Role; readonly unit: LengthUnit }
  | { readonly kind: 'unused' };

export interface Column {
  readonly index: number;
  readonly header: string;
  readonly use: ColumnUse;
}

const factByHeading = new Map<string, FactKey>();
for (const key of factKeys) factByHeading.set(oneSpelling(fieldInfo(key).label), key);
for (const key of factKeys) factByHeading.set(key.toLowerCase(), key);

function plainHeading(header: string): { name: string; unit: LengthUnit } {
  const spelled = oneSpelling(header.replace(/^\uFEFF/, ''));
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
  const taken = new Set<FactKey>();
  return header.map((text, index): Column => {
    const { name, unit } = plain[index] ?? { name: '', unit: undefined };
    const found = rolesOf(name);
    if (found) {
      const used = many.has(found.role) || best.get(found.role)?.index === index;
      return {
        index,
        header: text,
        use: used ? { kind: 'role', role: found.role, unit } : { kind: 'unused' },
      };
    }
    const fact = factByHeading.get(oneSpelling(text)) ?? factByHeading.get(name);
    if (fact === undefined || taken.has(fact)) return { index, header: text, use: { kind: 'unused' } };
    taken.add(fact);
    return { index, header: text, use: { kind: 'fact', fact } };
  });
}

/** The row that names the doors; exports open with a title or a blank line. Undefined when there is none. */
export function findHeader(table: readonly (readonly string[])[], within = 15): number | undefined {
  const index = table
    .slice(0, within)
    .findIndex((row) =>
      readHeaders(row).some((column) => column.use.kind === 'role' && column.use.role === 'mark'),
    );
  return index < 0 ? undefined : index;
}
