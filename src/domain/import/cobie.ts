import { counted } from '../text/counted.ts';
import { oneSpelling } from '../survey/readValue.ts';
import {
  type BuildingModel,
  type ModelDoor,
  type ModelSpace,
  peopleIn,
  type ReadModel,
  saidOf,
  stated,
} from './buildingModel.ts';
import { type Grid, isBlank } from './grid.ts';

/** One sheet as records by heading; what is left out or only repeats its heading is empty. */
interface Sheet {
  readonly rows: readonly Row[];
}
interface Row {
  readonly number: number;
  readonly of: (heading: string) => string;
}

const wanted = ['Component', 'Type', 'Space'] as const;
const alsoRead = ['Facility', 'Floor', 'Attribute'];

/** The sheets of a COBie workbook about doors and rooms, by the names of all its sheets; undefined where it is none. */
export function cobieSheets(names: readonly string[]): ReadonlySet<string> | undefined {
  const called = (wish: string) => names.filter((name) => oneSpelling(name) === wish.toLowerCase());
  if (wanted.some((wish) => called(wish).length === 0)) return undefined;
  return new Set([...wanted, ...alsoRead].flatMap(called));
}

/**
 * A COBie workbook (NBIMS-US V3, chapter 4.2) as a building model: doors are components that an IfcDoor lies behind, or
 * whose type is a door by its category. Undefined where the workbook is none. Only sheets about doors and rooms are
 * read; people and companies are not.
 */
export function cobieModel(grids: readonly Grid[]): ReadModel | undefined {
  const find = (name: string) => grids.find((grid) => oneSpelling(grid.name) === name.toLowerCase());
  const [components, types, rooms] = wanted.map((name) => sheetOf(find(name)));
  if (!components || !types || !rooms) return undefined;
  const heading = find('Component')?.rows[0]?.cells.map(oneSpelling) ?? [];
  if (!heading.includes('typename') || !heading.includes('space')) return undefined;

  const facility = sheetOf(find('Facility'))?.rows[0];
  const notes: string[] = [];
  const lengths = new Lengths(facility?.of('LinearUnits') ?? '', notes);
  const squareFeet = squareFeetOf(facility?.of('AreaUnits') ?? '');
  const ofRooms = attributesOf(find('Attribute'), 'space');
  const spaces = rooms.rows.map((row): ModelSpace => {
    const areaOf = (heading: string) => {
      const area = Number(row.of(heading));
      return area > 0 && squareFeet !== undefined ? Math.round(area * squareFeet * 100) / 100 : null;
    };
    const named = row.of('Description');
    const more = ofRooms.get(oneSpelling(row.of('Name')));
    const attribute = (name: string) => more?.get(name)?.value ?? '';
    return {
      number: named === '' ? '' : row.of('Name'),
      name: named === '' ? row.of('Name') : named,
      floor: row.of('FloorName'),
      areaFt2: areaOf('GrossArea') ?? areaOf('NetArea'),
      netFt2: areaOf('NetArea'),
      said: saidOf([
        ['occupancy', attribute('OccupancyType')],
        ['class', row.of('Category')],
        ['name', named === '' ? row.of('Name') : named],
      ]),
      people: peopleIn([attribute('OccupancyNumber'), attribute('OccupancyNumberPeak')]),
    };
  });
  const spaceByName = new Map(rooms.rows.map((row, index) => [oneSpelling(row.of('Name')), spaces[index]]));
  const typeByName = new Map(types.rows.map((row) => [oneSpelling(row.of('Name')), row]));
  const attributes = attributesOf(find('Attribute'), 'component');

  const doors = components.rows.flatMap((row): ModelDoor[] => {
    const type = typeByName.get(oneSpelling(row.of('TypeName')));
    if (!isDoor(row, type)) return [];
    return [
      doorOf(row, type, {
        spaceByName,
        lengths,
        said: attributes.get(oneSpelling(row.of('Name'))) ?? new Map(),
      }),
    ];
  });
  if (doors.length === 0)
    return { ok: false, says: 'The COBie workbook holds no doors (IfcDoor) on its Component sheet.' };
  const floors = (sheetOf(find('Floor'))?.rows ?? []).map((row) => {
    const elevation = row.of('Elevation');
    const isKnown = elevation !== '' && Number.isFinite(Number(elevation));
    return { name: row.of('Name'), elevationMm: isKnown ? Number(elevation) * lengths.mmPerUnit : null };
  });
  const model: BuildingModel = { doors, spaces, floors, notes };
  return { ok: true, model };
}

function sheetOf(grid: Grid | undefined): Sheet | undefined {
  const [head, ...rows] = grid?.rows ?? [];
  if (!head) return undefined;
  const at = new Map(head.cells.map((cell, index) => [oneSpelling(cell), index]));
  return {
    rows: rows
      .filter((row) => !isBlank(row))
      .map((row) => ({
        number: row.number,
        of: (heading) => stated(heading, row.cells[at.get(heading.toLowerCase()) ?? -1] ?? ''),
      })),
  };
}

function isDoor(component: Row, type: Row | undefined): boolean {
  const behind = component.of('ExtObject');
  if (behind !== '') return /^ifcdoor(standardcase)?$/i.test(behind);
  return (
    /^ifcdoor(style|type)$/i.test(type?.of('ExtObject') ?? '') ||
    /\bdoors?\b/i.test(type?.of('Category') ?? '')
  );
}

type Values = ReadonlyMap<string, { readonly value: string; readonly unit: string }>;

function attributesOf(grid: Grid | undefined, of: 'component' | 'space'): ReadonlyMap<string, Values> {
  const byRow = new Map<string, Map<string, { value: string; unit: string }>>();
  for (const row of sheetOf(grid)?.rows ?? []) {
    if (oneSpelling(row.of('SheetName')) !== of) continue;
    const value = stated(row.of('Name'), row.of('Value'));
    if (value === '') continue;
    const key = oneSpelling(row.of('RowName'));
    const values = byRow.get(key) ?? new Map<string, { value: string; unit: string }>();
    if (!values.has(row.of('Name'))) values.set(row.of('Name'), { value, unit: row.of('Unit') });
    byRow.set(key, values);
  }
  return byRow;
}

const bareRoom: ModelSpace = {
  number: '',
  name: '',
  floor: '',
  areaFt2: null,
  netFt2: null,
  said: [],
  people: null,
};

interface Joined {
  readonly spaceByName: ReadonlyMap<string, ModelSpace | undefined>;
  readonly lengths: Lengths;
  readonly said: Values;
}

function doorOf(row: Row, type: Row | undefined, { spaceByName, lengths, said }: Joined): ModelDoor {
  const doubts: string[] = [];
  const names = row
    .of('Space')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');
  const missing = names.filter((name) => !spaceByName.get(oneSpelling(name)));
  if (missing.length > 0) doubts.push(`The Space sheet has no ${missing.join(', ')}.`);
  if (!type) doubts.push(`The Type sheet has no ${row.of('TypeName') || 'type for it'}.`);
  const spaces = names.map((name) => spaceByName.get(oneSpelling(name)) ?? { ...bareRoom, name });
  const floors = [...new Set(spaces.map(({ floor }) => floor).filter((floor) => floor !== ''))];
  if (floors.length > 1)
    doubts.push(`Its spaces lie on ${counted(floors.length, 'floor')}; the first stands.`);
  const measure = (own: string, ofType: string) => {
    const attribute = said.get(own);
    return (
      lengths.mm(attribute?.value ?? '', attribute?.unit ?? '') ?? lengths.mm(type?.of(ofType) ?? '', '')
    );
  };
  const rest = [...said].filter(([name]) => !['Width', 'Height'].includes(name));
  const texts: [string, string][] = rest.map(([name, { value, unit }]) => [
    name === 'Thickness' ? `Thickness (${unit === 'in' ? 'in' : 'mm'})` : name,
    value,
  ]);
  const described = type?.of('Description') ?? '';
  const code = type?.of('CodePerformance') ?? '';
  return {
    row: row.number,
    globalId: row.of('ExtIdentifier'),
    mark: '',
    name: row.of('Name'),
    tag: row.of('TagNumber'),
    floor: floors[0] ?? '',
    typeName: described === '' ? row.of('TypeName') : `${described} (${row.of('TypeName')})`,
    operation: said.get('OperationType')?.value ?? '',
    overallWidthMm: measure('Width', 'NominalWidth'),
    overallHeightMm: measure('Height', 'NominalHeight'),
    spaces,
    said: new Map([
      ...texts.filter(([name]) => name !== 'OperationType'),
      ...(code === '' ? [] : ([['CodePerformance', code]] as const)),
    ]),
    doubts,
  };
}

const mmPer: Readonly<Record<string, number>> = {
  mm: 1,
  millimeter: 1,
  millimeters: 1,
  millimetre: 1,
  millimetres: 1,
  cm: 10,
  centimeter: 10,
  centimeters: 10,
  centimetre: 10,
  centimetres: 10,
  m: 1000,
  meter: 1000,
  meters: 1000,
  metre: 1000,
  metres: 1000,
  in: 25.4,
  inch: 25.4,
  inches: 25.4,
  ft: 304.8,
  foot: 304.8,
  feet: 304.8,
};

/** Lengths in the unit the facility names, unless the figure can only be millimeters: no door is 915 m wide. */
class Lengths {
  readonly mmPerUnit: number;
  readonly #stated: string;
  readonly #notes: string[];
  constructor(unit: string, notes: string[]) {
    this.#stated = unit;
    this.#notes = notes;
    this.mmPerUnit = mmPer[unit.toLowerCase()] ?? 1000;
  }

  mm(text: string, unit: string): number | null {
    const value = Number(text);
    if (!Number.isFinite(value) || value <= 0) return null;
    const per = mmPer[unit.toLowerCase()] ?? this.mmPerUnit;
    if (value * per <= 30_000) return value * per;
    if (value < 300 || value > 30_000) return null;
    const note = `Facility gives lengths in ${this.#stated || 'no unit'}; sizes of doors such as ${text} were read as millimeters.`;
    if (this.#notes.length === 0) this.#notes.push(note);
    return value;
  }
}

function squareFeetOf(unit: string): number | undefined {
  const plain = unit.toLowerCase().replace(/[\s_-]/g, '');
  if (/^(square(meters?|metres?)|m2|m²|sqm)$/.test(plain)) return 1 / 0.3048 ** 2;
  return /^(square(feet|foot)|ft2|ft²|sf|sqft)$/.test(plain) ? 1 : undefined;
}
