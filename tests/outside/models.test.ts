import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { BuildingModel, ReadModel } from '../../src/domain/import/buildingModel.ts';
import { cobieModel, cobieSheets } from '../../src/domain/import/cobie.ts';
import { importTable } from '../../src/domain/import/csv.ts';
import { bestTable } from '../../src/domain/import/sheets.ts';
import { readFireRating } from '../../src/domain/import/fireRating.ts';
import { ifcEngine } from '../../src/intake/ifc/engine.ts';
import { readIfc } from '../../src/intake/ifc/readIfc.ts';
import { readSchedule } from '../../src/intake/readFile.ts';
import { readWorkbook } from '../../src/intake/workbook.ts';

/** Public building models with what two other readers found in them, kept outside this repository. */
const shared = process.env['LATCHWARD_SHARED'] ?? fileURLToPath(new URL('../../../shared', import.meta.url));
const folder = join(shared, 'data/building-models');
const bytesOf = (name: string) => new Uint8Array(readFileSync(join(folder, name)));
const engine = ifcEngine();

interface ExpectedDoor {
  readonly globalId: string;
  readonly name: string;
  readonly mark?: string | null;
  readonly storey?: string | null;
  readonly floors?: readonly string[];
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  readonly operation?: string | null;
  readonly typeName: string;
  readonly isExternal?: boolean | null;
  readonly fireRatingIsRealRating?: boolean;
  readonly fireRatingMinutes?: number | null;
  readonly fireExit?: boolean;
  readonly spaces: readonly { readonly number: string; readonly name: string }[];
}
interface Expected {
  readonly summary: {
    readonly doors: number;
    readonly spaces: number;
    readonly storeys?: readonly { readonly name: string; readonly elevationMm: number }[];
  };
  readonly doors: readonly ExpectedDoor[];
}

function modelOf(read: ReadModel | undefined): BuildingModel {
  if (!read?.ok) throw new Error(read?.says ?? 'no model');
  return read.model;
}
const expectedOf = (name: string) =>
  JSON.parse(readFileSync(join(folder, name.replace(/\.\w+$/, '.expected.json')), 'utf8')) as Expected;
const yesNo = (value: boolean | null | undefined) =>
  value === undefined || value === null ? undefined : value ? 'yes' : 'no';
const near = (a: number | null, b: number | null) =>
  a === null || b === null ? a === b : Math.abs(a - b) <= 0.5;
const rooms = (spaces: readonly { number: string; name: string }[]) =>
  spaces
    .map(({ number, name }) => (number === name || number === '' ? name : `${name} ${number}`))
    .toSorted();

/** Doors that differ from what is expected, with how. */
function differences(model: BuildingModel, { doors }: Expected): readonly string[] {
  const byId = new Map(model.doors.map((door) => [door.globalId, door]));
  return doors.flatMap((door) => {
    const read = byId.get(door.globalId) ?? model.doors.find((one) => one.name === door.name);
    if (!read) return [`${door.globalId} is missing`];
    const pairs: [string, boolean][] = [
      ['width', near(read.overallWidthMm, door.widthMm)],
      ['height', near(read.overallHeightMm, door.heightMm)],
      ['floor', (door.floors ?? [door.storey ?? '']).includes(read.floor)],
      ['operation', (door.operation ?? '') === read.operation],
      ['spaces', JSON.stringify(rooms(read.spaces)) === JSON.stringify(rooms(door.spaces))],
      ['external', read.said.get('IsExternal') === yesNo(door.isExternal)],
      ['exit', door.fireExit === undefined || read.said.get('FireExit') === yesNo(door.fireExit)],
      ['rating', (read.said.get('FireRating') !== undefined) === (door.fireRatingIsRealRating ?? false)],
      ['mark', door.mark === undefined || (door.mark ?? '') === read.mark],
      ['type', read.typeName.includes(door.typeName.trim())],
    ];
    return pairs.filter(([, same]) => !same).map(([what]) => `${door.globalId} ${door.name}: ${what}`);
  });
}

async function importOf(name: string) {
  const read = await readSchedule(bytesOf(name), (model) => readIfc(model, engine));
  if (!read.ok) throw new Error(read.says);
  const found = bestTable(read.grids);
  if (!found.ok) throw new Error(found.says);
  let count = 0;
  return importTable(found.table, { newId: () => `id${(count += 1)}` });
}

const ifcFiles = [
  'Duplex_A_20110907.ifc',
  'AC20-FZK-Haus.ifc',
  'AC20-Institute-Var-2.ifczip',
  'IDS_wooden-windows_IFC.ifc',
];
const cobieFiles = ['2012-03-23-Duplex-Design.xlsx', '2013-10-09-Clinic-Design-v14-WORKING-01.xlsx'];

describe.each(ifcFiles)('%s', (name) => {
  it.skipIf(!existsSync(join(folder, name)))('says of every door what other readers found', async () => {
    const expected = expectedOf(name);
    const model = modelOf(await readIfc(bytesOf(name), engine));
    expect(model.doors).toHaveLength(expected.summary.doors);
    expect(model.spaces).toHaveLength(expected.summary.spaces);
    expect(model.floors.map(({ name: floor }) => floor)).toEqual(
      expect.arrayContaining(expected.summary.storeys?.map((storey) => storey.name) ?? []),
    );
    expect(differences(model, expected)).toEqual([]);
  });

  it.skipIf(!existsSync(join(folder, name)))('comes in door by door, none refused', async () => {
    const expected = expectedOf(name);
    const imported = await importOf(name);
    expect(imported.refused).toEqual([]);
    expect(new Set(imported.openings.map((one) => one.externalId))).toEqual(
      new Set(expected.doors.map((one) => one.globalId)),
    );
    const rated = expected.doors.filter((one) => typeof one.fireRatingMinutes === 'number');
    expect(imported.openings.filter((one) => one.facts.fireRatingMin).length).toBe(rated.length);
  });
});

describe.each(cobieFiles)('%s', (name) => {
  it.skipIf(!existsSync(join(folder, name)))('says of every door what another reader found', async () => {
    const book = await readWorkbook(bytesOf(name), cobieSheets);
    if (!book.ok) throw new Error(book.says);
    const expected = expectedOf(name);
    const model = modelOf(cobieModel(book.grids));
    expect(model.doors).toHaveLength(expected.summary.doors);
    expect(differences(model, expected)).toEqual([]);
  });
  it.skipIf(!existsSync(join(folder, name)))('shows no sheet but the doors', async () => {
    const read = await readSchedule(bytesOf(name));
    expect(read.ok && read.grids.map((grid) => grid.name)).toEqual(['Doors']);
    expect((await importOf(name)).refused).toEqual([]);
  });
});

/** What is proposed of each file's rooms: uses without a doubt, uses in doubt, not read, passed through. */
const proposed: Readonly<Record<string, readonly number[]>> = {
  'Duplex_A_20110907.ifc': [2, 10, 2, 7],
  'AC20-FZK-Haus.ifc': [0, 0, 7, 0],
  '2013-10-09-Clinic-Design-v14-WORKING-01.xlsx': [94, 35, 64, 76],
};
describe.each(Object.entries(proposed))('the rooms of %s', (name, counts) => {
  it.skipIf(!existsSync(join(folder, name)))('are proposed a use, and none is taken by itself', async () => {
    const { rooms: uses, spaces } = await importOf(name);
    const clear = uses.proposals.filter(({ doubt }) => doubt === '').length;
    const unread = uses.unread.flatMap((one) => one.rooms).length;
    expect([clear, uses.proposals.length - clear, unread, uses.passed]).toEqual(counts);
    expect(spaces.filter(({ use }) => use !== null)).toEqual([]);
  });
});

it('reads the one real rating among them as minutes', () => {
  expect(readFireRating('30')).toMatchObject({ ok: true, minutes: 30 });
});
