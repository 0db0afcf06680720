import { textOf } from './sorted.ts';

/**
 * A project as parts with addresses: records (one opening, the building, the project itself) and their fields. Edits
 * are counted and copies are merged part by part. What this version does not know is cut up by its shape: an object of
 * objects is a table of records keyed by id, so lists that later versions add merge by key as well.
 */
type Raw = Readonly<Record<string, unknown>>;
export type Fields = ReadonlyMap<string, unknown>;

export const frame = 'project';

export const isPlain = (value: unknown): value is Raw =>
  value !== null && typeof value === 'object' && !Array.isArray(value);
/** A fact is one thing, although it is written as an object. */
const isRecordLike = (value: unknown): value is Raw => isPlain(value) && !('is' in value);

const escaped = (name: string) => name.replaceAll('~', '~0').replaceAll('/', '~1');
const plain = (name: string) => name.replaceAll('~1', '/').replaceAll('~0', '~');
export const addressOf = (...names: readonly string[]) => names.map(escaped).join('/');
export const namesOf = (address: string): readonly string[] => address.split('/').map(plain);

type Shape = 'none' | 'record' | 'table' | 'list' | 'field';
const known: Readonly<Record<string, Shape>> = {
  history: 'none',
  building: 'record',
  basis: 'record',
  weights: 'record',
  usual: 'record',
  bid: 'record',
  floors: 'table',
  spaces: 'table',
  openings: 'table',
  photos: 'table',
  plans: 'table',
  pins: 'table',
  standards: 'table',
  amendments: 'list',
};

/** How an entry of the project is cut up; all states of it that are compared must be cut alike. */
export function shapeOf(key: string, states: readonly unknown[]): Shape {
  if (Object.hasOwn(known, key)) return known[key] as Shape;
  const there = states.filter((state) => state !== undefined);
  if (key === frame || there.length === 0 || !there.every(isRecordLike)) return 'field';
  return there.flatMap((state) => Object.values(state)).every(isRecordLike) ? 'table' : 'record';
}

export const entryOf = (thing: unknown, key: string): unknown =>
  isPlain(thing) && Object.hasOwn(thing, key) ? thing[key] : undefined;

/** The rows of a table by id; a list of things with ids is a table too. */
export function rowsOf(state: unknown): ReadonlyMap<string, Raw> {
  if (Array.isArray(state)) {
    return new Map(state.filter(isPlain).map((row) => [String(row['id']), row]));
  }
  return new Map(isPlain(state) ? (Object.entries(state) as [string, Raw][]) : []);
}

/** The field that says only that a list keyed by id is there, because it may be empty. */
export const listIsThere = (name: string) => addressOf(name, '');

const isKeyedList = (name: string, value: unknown): value is Raw =>
  isRecordLike(value) && !('' in value) && (name === 'facts' || Object.values(value).every(isPlain));

/** The fields of a record. A field that is a list keyed by id (facts) counts as one field for each of its entries. */
export function fieldsOf(record: Raw): Fields {
  const fields = new Map<string, unknown>();
  for (const [name, value] of Object.entries(record)) {
    if (value === undefined) continue;
    if (isKeyedList(name, value)) {
      fields.set(listIsThere(name), {});
      for (const [inner, one] of Object.entries(value)) {
        if (one !== undefined) fields.set(addressOf(name, inner), one);
      }
    } else fields.set(addressOf(name), value);
  }
  return fields;
}

/** Every record of a project with its fields; `beside` is the other state it is compared with. */
export function recordsOf(project: object, beside: object = project): Map<string, Fields> {
  const records = new Map<string, Fields>();
  const single = new Map<string, unknown>();
  for (const [key, state] of Object.entries(project)) {
    switch (shapeOf(key, [state, entryOf(beside, key)])) {
      case 'none':
        break;
      case 'record':
        single.set(listIsThere(key), {});
        records.set(addressOf(key), recordFields(state));
        break;
      case 'table':
      case 'list':
        if (!Array.isArray(state)) single.set(listIsThere(key), {});
        for (const [id, row] of rowsOf(state)) records.set(addressOf(key, id), fieldsOf(row));
        break;
      case 'field':
        if (state !== undefined) single.set(addressOf(key), state);
    }
  }
  return records.set(frame, single);
}

/** A record that stands alone (facts of the building) has each of its entries as a field. */
function recordFields(state: unknown): Fields {
  const entries = isPlain(state) ? Object.entries(state) : [];
  return new Map(
    entries.filter(([, value]) => value !== undefined).map(([name, value]) => [addressOf(name), value]),
  );
}

const isThere = (key: string, state: unknown): Fields =>
  new Map(state === undefined ? [] : [[listIsThere(key), {}]]);

export interface ChangedPart {
  readonly record: string;
  readonly field: string;
  readonly before: unknown;
  readonly after: unknown;
}

/** What differs from one state to the next. A record that came or went is one part, its field is `''`. */
export function changedParts(before: object, after: object): ChangedPart[] {
  const changed: ChangedPart[] = [];
  const compare = (record: string, old: Fields, now: Fields) => {
    for (const field of new Set([...old.keys(), ...now.keys()])) {
      const [was, is] = [old.get(field), now.get(field)];
      if (was !== is && textOf(was) !== textOf(is)) changed.push({ record, field, before: was, after: is });
    }
  };
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    const [old, now] = [entryOf(before, key), entryOf(after, key)];
    if (old === now) continue;
    switch (shapeOf(key, [old, now])) {
      case 'none':
        break;
      case 'record':
        compare(frame, isThere(key, old), isThere(key, now));
        compare(addressOf(key), recordFields(old), recordFields(now));
        break;
      case 'field':
        compare(frame, recordFields({ [key]: old }), recordFields({ [key]: now }));
        break;
      case 'table':
      case 'list': {
        const [oldRows, nowRows] = [rowsOf(old), rowsOf(now)];
        if (!Array.isArray(old ?? now)) compare(frame, isThere(key, old), isThere(key, now));
        for (const id of new Set([...oldRows.keys(), ...nowRows.keys()])) {
          const [was, is] = [oldRows.get(id), nowRows.get(id)];
          const record = addressOf(key, id);
          if (was === is) continue;
          if (was && is) compare(record, fieldsOf(was), fieldsOf(is));
          else changed.push({ record, field: '', before: was, after: is });
        }
      }
    }
  }
  return changed;
}
