import type { BuildingModel, ModelDoor, ModelFloor, ModelSpace } from '../../domain/import/buildingModel.ts';
import { stated } from '../../domain/import/buildingModel.ts';
import { counted } from '../../domain/text/counted.ts';
import { type Lines, number, references, text } from './lines.ts';
import { propertiesIn, type Property, related, type Related } from './relations.ts';
import { spaceIn } from './spaceIn.ts';
import { type Units, unitsOf } from './units.ts';

export type Step = (done: number, total: number) => void;

const doorKinds = ['IFCDOOR', 'IFCDOORSTANDARDCASE'];
const boundaryKinds = ['IFCRELSPACEBOUNDARY', 'IFCRELSPACEBOUNDARY1STLEVEL', 'IFCRELSPACEBOUNDARY2NDLEVEL'];
const relationKinds = [
  'IFCRELCONTAINEDINSPATIALSTRUCTURE',
  'IFCRELAGGREGATES',
  'IFCRELFILLSELEMENT',
  'IFCRELDEFINESBYTYPE',
  'IFCRELDEFINESBYPROPERTIES',
  'IFCRELASSOCIATESCLASSIFICATION',
] as const;
type RelationKind = (typeof relationKinds)[number];
/** Larger or lower than any door: a unit is wrong, and no size is better than that one. */
const mostMm = 30_000;

/** Properties that are shown as columns, by the names of Pset_DoorCommon (ISO 16739-1). */
const common = [
  'FireRating',
  'IsExternal',
  'FireExit',
  'HandicapAccessible',
  'SelfClosing',
  'SmokeStop',
  'SecurityRating',
  'AcousticRating',
  'HasDrive',
  'Status',
];

/** Doors, rooms and floors of an open IFC model. No shape is looked at. */
export function modelIn(lines: Lines, step: Step): BuildingModel {
  const units = unitsOf(lines);
  const doors = doorKinds.flatMap((kind) => lines.ids(kind));
  const spaces = lines.ids('IFCSPACE');
  const wanted = new Set([...doors, ...spaces]);
  const total = [...relationKinds, ...boundaryKinds].reduce(
    (sum, kind) => sum + lines.ids(kind).length,
    doors.length + spaces.length,
  );
  let done = 0;
  const next = () => step((done += 1), total);
  const relation = (kind: RelationKind, ends: readonly [number, number], of?: ReadonlySet<number>) =>
    related(lines, [kind], ends, of, next);

  const contained = relation('IFCRELCONTAINEDINSPATIALSTRUCTURE', [4, 5]);
  const wholes = relation('IFCRELAGGREGATES', [5, 4]);
  const openings = relation('IFCRELFILLSELEMENT', [5, 4], wanted);
  const types = relation('IFCRELDEFINESBYTYPE', [4, 5], wanted);
  const sets = relation('IFCRELDEFINESBYPROPERTIES', [4, 5], wanted);
  const classes = relation('IFCRELASSOCIATESCLASSIFICATION', [4, 5], new Set(spaces));
  const atElements = new Set([...doors, ...[...openings.values()].flat()]);
  const boundaries = related(lines, boundaryKinds, [5, 4], atElements, next);

  const storeys = new Map(lines.ids('IFCBUILDINGSTOREY').map((id) => [id, floorIn(lines, id, units)]));
  const floorOf = (id: number) => storeys.get(storeyOf(id, storeys, contained, wholes) ?? -1)?.name ?? '';
  const roomById = new Map(
    spaces.map((id): [number, ModelSpace] => {
      next();
      const around = {
        sets: sets.get(id) ?? [],
        type: types.get(id)?.[0],
        classes: classes.get(id) ?? [],
        floor: floorOf(id),
        m2PerArea: units.m2PerArea,
      };
      return [id, spaceIn(lines, id, around)];
    }),
  );

  const notes = units.stated ? [] : ['The model names no unit of length; it was read in meters.'];
  const read = doors.flatMap((id): ModelDoor[] => {
    next();
    const sides = boundaries.get(id) ?? (openings.get(id) ?? []).flatMap((one) => boundaries.get(one) ?? []);
    const rooms = sides.flatMap((one) => roomById.get(one) ?? []);
    const door = doorIn(lines, id, units, types.get(id)?.[0], sets.get(id) ?? []);
    return door ? [{ ...door, floor: floorOf(id), spaces: rooms }] : [];
  });
  if (read.length < doors.length) {
    notes.push(`${counted(doors.length - read.length, 'door record')} of the model could not be read.`);
  }
  return { doors: read, spaces: [...roomById.values()], floors: [...storeys.values()], notes };
}

function floorIn(lines: Lines, id: number, { mmPerLength }: Units): ModelFloor {
  const line = lines.line(id);
  const elevation = number(line?.[9]);
  const name = text(line?.[2]) || text(line?.[7]) || `Floor #${id}`;
  return { name, elevationMm: elevation === null ? null : elevation * mmPerLength };
}

/** Up through containers and wholes to the first storey; a file that goes round in a circle ends. */
function storeyOf(
  from: number,
  storeys: ReadonlyMap<number, unknown>,
  contained: Related,
  wholes: Related,
): number | undefined {
  let at: number | undefined = from;
  for (let steps = 0; at !== undefined && steps < 20; steps += 1) {
    if (storeys.has(at)) return at;
    at = contained.get(at)?.[0] ?? wholes.get(at)?.[0];
  }
  return undefined;
}

type Bare = Omit<ModelDoor, 'floor' | 'spaces'>;

function doorIn(
  lines: Lines,
  id: number,
  units: Units,
  type: number | undefined,
  sets: readonly number[],
): Bare | undefined {
  const line = lines.line(id);
  if (!line || line.length < 3) return undefined;
  const style = lines.line(type);
  const isStyle = type !== undefined && lines.kind(type) === 'IFCDOORSTYLE';
  const own = propertiesIn(lines, sets);
  // What the type says holds where the door itself says nothing.
  const all = [...own, ...propertiesIn(lines, references(style?.[5]))];
  const doubts: string[] = [];
  const size = (argument: (typeof line)[number], what: string) => {
    const value = number(argument);
    if (value === null || value <= 0) return null;
    const mm = value * units.mmPerLength;
    if (mm <= mostMm && mm >= 100) return mm;
    doubts.push(`The ${what} ${value} of the model is no size of a door in its unit; it stays unknown.`);
    return null;
  };
  const typeName = text(style?.[2]) || text(line[4]);
  return {
    row: id,
    globalId: text(line[0]),
    mark: all.find(({ name }) => name === 'Mark')?.value ?? '',
    name: stated('Name', text(line[2])),
    tag: stated('Tag', text(line[7])),
    typeName: stated('Name', typeName),
    operation: operationIn(
      text(line[11]),
      text(line[12]),
      text(style?.[isStyle ? 8 : 10]),
      text(style?.[12]),
    ),
    overallHeightMm: size(line[8], 'height'),
    overallWidthMm: size(line[9], 'width'),
    said: saidBy(all),
    doubts,
  };
}

/** The door's own word before that of its type, and a word of its own where both are user-defined. */
function operationIn(own: string, ownWord: string, ofType: string, wordOfType: string): string {
  const named = [own, ofType].find((word) => word !== '' && word !== 'NOTDEFINED' && word !== 'USERDEFINED');
  return named ?? (ownWord || wordOfType || own || ofType);
}

function saidBy(all: readonly Property[]): ReadonlyMap<string, string> {
  const said = new Map<string, string>();
  for (const name of common) {
    const found =
      all.find((one) => one.set === 'Pset_DoorCommon' && one.name === name) ??
      all.find((one) => one.name === name);
    if (found) said.set(name, found.value);
  }
  return said;
}
