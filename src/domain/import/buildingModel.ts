import { counted } from '../text/counted.ts';
import type { GivenSpace, Grid, GridRow, SaidOfRoom } from './grid.ts';

/** What a building model says of its doors and rooms, whatever format held it. Absent is not stated. */
export interface BuildingModel {
  readonly doors: readonly ModelDoor[];
  readonly spaces: readonly ModelSpace[];
  readonly floors: readonly ModelFloor[];
  /** What a person should know about how it was read. */
  readonly notes: readonly string[];
}

export interface ModelDoor {
  /** Where it stands in the file: the number of its record or row. */
  readonly row: number;
  readonly globalId: string;
  /** A mark of its own, where the model has one. */
  readonly mark: string;
  readonly name: string;
  readonly tag: string;
  readonly floor: string;
  readonly typeName: string;
  /** OperationType as IFC names it. */
  readonly operation: string;
  readonly overallWidthMm: number | null;
  readonly overallHeightMm: number | null;
  /** Spaces on its sides, from each of which there is a boundary with the door. */
  readonly spaces: readonly ModelSpace[];
  /** Properties by name, placeholders left out. */
  readonly said: ReadonlyMap<string, string>;
  readonly doubts: readonly string[];
}

export type ModelSpace = GivenSpace;

export interface ModelFloor {
  readonly name: string;
  /** From the lowest floor up; null where the model has no elevation. */
  readonly elevationMm: number | null;
}

export type ReadModel =
  | { readonly ok: true; readonly model: BuildingModel }
  | { readonly ok: false; readonly says: string };

/** A text that only repeats the name of its own field, or says that there is nothing, is no value. */
export function stated(field: string, text: string): string {
  const plain = (word: string) => word.replace(/[\s_-]+/g, '').toLowerCase();
  const word = text.trim();
  if (/^(n\/a|na|none|null|undefined|unset|notdefined|not defined|unknown|\$|-+)$/i.test(word)) return '';
  return plain(word) === plain(field) ? '' : word;
}

const longestWords = 120;

/**
 * What a model says about a room, each text once; a name without a word in it is its number. An occupancy type may be
 * one letter.
 */
export function saidOf(texts: readonly (readonly [SaidOfRoom['where'], string])[]): readonly SaidOfRoom[] {
  const seen = new Set<string>();
  return texts.flatMap(([where, text]) => {
    const short = text.slice(0, longestWords).trim();
    const words = where === 'occupancy' ? /\p{L}/u : /\p{L}{2}/u;
    if (!words.test(short) || seen.has(short)) return [];
    seen.add(short);
    return [{ where, text: short }];
  });
}

/** Of a count as models write it; part of a person is a person. */
export function peopleIn(texts: readonly string[]): number | null {
  const counts = texts.map(Number).filter((count) => count > 0 && count <= mostPeople);
  return counts.length === 0 ? null : Math.ceil(Math.max(...counts));
}
const mostPeople = 100_000;

type Told = readonly [header: string, of: (door: ModelDoor) => string];
const measure = (mm: number | null) => (mm === null ? '' : String(Math.round(mm * 10) / 10));

const columns: readonly Told[] = [
  ['Mark', (door) => markOf(door).mark],
  ['Level', ({ floor }) => floor],
  ['Overall width (mm)', ({ overallWidthMm }) => measure(overallWidthMm)],
  ['Overall height (mm)', ({ overallHeightMm }) => measure(overallHeightMm)],
  ['OperationType', ({ operation }) => operation],
  ['Door type', ({ typeName }) => typeName],
  ['Room', ({ spaces }) => spaces[0]?.name ?? ''],
  ['Room number', ({ spaces }) => spaces[0]?.number ?? ''],
  ['Adjoining room', ({ spaces }) => spaces[1]?.name ?? ''],
  ['Adjoining room number', ({ spaces }) => spaces[1]?.number ?? ''],
  ['Further spaces', ({ spaces }) => spaces.slice(2).map(roomInWords).join(', ')],
  ['GlobalId', ({ globalId }) => globalId],
  ['Model name', (door) => (door.name === markOf(door).mark ? '' : door.name)],
];
const longestMark = 40;

/** The number a person would call the door by, and a doubt where the model has none. */
function markOf({ mark, name, tag, globalId }: ModelDoor): { mark: string; doubt?: string } {
  const fits = (text: string) => text !== '' && text.length <= longestMark;
  if (fits(mark)) return { mark };
  // Names of modeling software join family, type and a running number.
  if (fits(name) && !name.includes(':')) return { mark: name };
  if (fits(tag)) return { mark: tag, doubt: 'The model gives this door no mark; its tag stands instead.' };
  return { mark: globalId, doubt: 'The model gives this door no mark; its GlobalId stands instead.' };
}

export const roomInWords = ({ name, number }: Pick<ModelSpace, 'name' | 'number'>) =>
  [name, number].filter((part) => part !== '').join(' ');

/** A model as the table of doors that a schedule would be: one reader for all of them, and one preview. */
export function gridOfModel(model: BuildingModel): Grid {
  const names = [...new Set(model.doors.flatMap(({ said }) => [...said.keys()]))];
  const all: readonly Told[] = [
    ...columns,
    ...names.map((name): Told => [name, ({ said }) => said.get(name) ?? '']),
  ];
  const shown = all.filter(
    ([header, of]) => header === 'Mark' || model.doors.some((door) => of(door) !== ''),
  );
  const header = shown.map(([name]) => name);
  const rows = model.doors.map((door): GridRow => {
    const { doubt } = markOf(door);
    const doubts = [...door.doubts, ...(doubt === undefined ? [] : [doubt])].join(' ');
    return {
      number: door.row,
      cells: shown.map(([, of]) => of(door)),
      isDoor: true,
      ...(doubts === '' ? {} : { remark: doubts }),
    };
  });
  return {
    name: 'Doors',
    hidden: false,
    rows: [{ number: 0, cells: header }, ...rows],
    places: { floors: model.floors, spaces: model.spaces },
  };
}

export function modelInWords({ doors, spaces, floors }: BuildingModel): string {
  const withArea = spaces.filter(({ areaFt2 }) => areaFt2 !== null).length;
  const areas = spaces.length === 0 ? '' : `, ${withArea} of them with a floor area`;
  return `The model holds ${counted(doors.length, 'door')}, ${counted(spaces.length, 'space')}${areas} and ${counted(floors.length, 'floor')}.`;
}
