import { candidateInWords } from '../words/arrangement.ts';
import { candidateById } from '../devices/candidates.ts';
import { deviceIds, devices } from '../devices/devices.ts';
import { fieldInfo, isFactKey, isAnyValue } from '../model/fields.ts';
import { whole } from '../model/history.ts';
import { entryOf, frame, isPlain, namesOf } from '../model/parts.ts';
import type { Project } from '../model/project.ts';
import { textOf } from '../model/sorted.ts';
import { valueInWords } from '../text/format.ts';
import { startSentence } from '../text/midSentence.ts';
import { isFact } from './register.ts';

/** Parts of a project as a person names them. What this version does not know is named by its key. */

const tableWords: Readonly<Record<string, string>> = {
  openings: 'Opening',
  spaces: 'Space',
  floors: 'Floor',
  amendments: 'Local amendment',
  closets: 'Closet',
  supplies: 'Power supply',
  productBook: 'Product',
  runs: 'Cable of opening',
  hardwareSets: 'Hardware set',
  itemBook: 'Item',
  prices: 'Price of',
  remarks: 'Comment or question',
  photos: 'Photo',
  plans: 'Floor plan',
  pins: 'Place on the plan of',
  standards: 'Owner’s standard',
  verdicts: 'Entry of the log',
};
const recordWords: Readonly<Record<string, string>> = {
  [frame]: 'Project',
  building: 'Building',
  basis: 'Code basis',
  weights: 'Weights',
  usual: 'Usual of the building',
  bid: 'Bid',
};
const fieldWords: Readonly<Record<string, string>> = {
  name: 'Name',
  mark: 'Mark',
  floorId: 'Floor',
  fromSpaceId: 'Entered from',
  toSpaceId: 'Leads into',
  notes: 'Notes',
  caption: 'Caption',
  arrows: 'Arrow',
  about: 'What it shows',
  override: 'Choice by hand',
  review: 'Review mark',
  level: 'Place in the building',
  kind: 'Kind of space',
  securityLevel: 'Security level',
  occupantLoad: 'Occupant load',
  use: 'Use',
  useFrom: 'Where the use comes from',
  occupantLoadFrom: 'Where the load comes from',
  areaFt2: 'Area, ft²',
  commonPathFt: 'Common path, ft',
  preparedBy: 'Prepared by',
  letter: 'Letter to the authority',
  preferred: 'Preferred devices',
  jurisdiction: 'Jurisdiction',
  says: 'Text',
  source: 'Source',
  ibc: 'IBC',
  nfpa101: 'NFPA 101',
  nec: 'NEC',
  nfpa72: 'NFPA 72',
};

/** "fireRules" → "Fire rules". */
const spaced = (key: string) => startSentence(key.replaceAll(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase());

/** "Opening 101". The name is looked for in each state in turn, because it may be gone in one. */
export function recordInWords(record: string, states: readonly Project[]): string {
  const [table = '', id] = namesOf(record);
  if (id === undefined)
    return Object.hasOwn(recordWords, table) ? (recordWords[table] as string) : spaced(table);
  const word = Object.hasOwn(tableWords, table) ? (tableWords[table] as string) : spaced(table);
  for (const state of states) {
    // A photo is known by the opening it shows, a cable by the one it leads to.
    if (table === 'photos') {
      const of = entryOf(
        rowOf(state, 'openings', String(entryOf(rowOf(state, table, id), 'openingId'))),
        'mark',
      );
      if (typeof of === 'string') return `${word} of ${of}`;
      continue;
    }
    const row = rowOf(state, rowTable(state, table, id), id);
    const name = ['mark', 'number', 'name', 'says', 'text']
      .map((one) => entryOf(row, one))
      .find((one) => one !== undefined);
    if (typeof name === 'string' && name !== '') return `${word} ${name}`;
  }
  return `${word} ${id}`;
}

/** A cable and a pin are known by what they lead to or stand for. */
function rowTable(state: Project, table: string, id: string): string {
  if (table === 'runs') return 'openings';
  if (table === 'pins')
    return ['closets', 'spaces'].find((one) => rowOf(state, one, id) !== undefined) ?? 'openings';
  return table;
}

function rowOf(state: Project, table: string, id: string): unknown {
  const rows = entryOf(state, table);
  return Array.isArray(rows) ? rows.find((row) => entryOf(row, 'id') === id) : entryOf(rows, id);
}

/** "Fire rating of the door". */
export function fieldInWords(record: string, field: string): string {
  if (field === whole) return 'Kept or removed';
  const names = namesOf(field);
  const last = names.at(-1) as string;
  if (last === '') return spaced(names[0] as string);
  if ((names.length > 1 || record === 'building' || record === 'usual') && isFactKey(last))
    return fieldInfo(last).label;
  return names
    .map((name) => (Object.hasOwn(fieldWords, name) ? (fieldWords[name] as string) : spaced(name)))
    .join(', ');
}

/** "90 min", "90 min, assumed (plan A-601)", "Second floor", "removed". */
export function partInWords(field: string, value: unknown, states: readonly Project[]): string {
  if (field === whole) return value === undefined ? 'removed' : 'kept';
  if (value === undefined) return field.startsWith('facts/') ? 'no answer' : 'not there';
  const name = namesOf(field).at(-1) as string;
  if (isFact(value)) return factInWords(name, value);
  if (value === null) return 'none';
  if (name.endsWith('Id') && typeof value === 'string') {
    const table = name === 'floorId' ? 'floors' : 'spaces';
    const named = states
      .map((state) => entryOf(rowOf(state, table, value), 'name'))
      .find((one) => typeof one === 'string');
    return typeof named === 'string' ? named : value;
  }
  if (name === 'override' && isPlain(value)) return choiceInWords(value);
  if (name === 'preferred' && isPlain(value)) return preferredInWords(value);
  if (typeof value === 'string') return value === '' ? 'empty' : value;
  return textOf(value);
}

/** "Electrified mortise lock +2: stocked here". */
function preferredInWords(value: Readonly<Record<string, unknown>>): string {
  const said = Object.entries(value).map(([device, one]) => {
    const known = deviceIds.find((id) => id === device);
    const name = known === undefined ? device : devices[known].name;
    return isPlain(one) ? `${name} +${String(one['points'])}: ${String(one['says'])}` : name;
  });
  return said.length === 0 ? 'none' : said.join('; ');
}

function factInWords(
  name: string,
  fact: { readonly is: string } & Readonly<Record<string, unknown>>,
): string {
  if (fact.is === 'unknown') return 'asked, not answered';
  const value = fact['value'];
  const said = isFactKey(name) && isAnyValue(value) ? valueInWords(name, value) : String(value);
  return fact.is === 'assumed' ? `${said}, assumed (${String(fact['from'])})` : said;
}

function choiceInWords(value: Readonly<Record<string, unknown>>): string {
  const candidate = candidateById(String(value['candidate']));
  const said = candidate ? candidateInWords(candidate) : String(value['candidate']);
  return `${said}. ${String(value['reason'])}`;
}
