import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { importTable } from '../../domain/import/csv.ts';
import { bestTable } from '../../domain/import/sheets.ts';
import { readSchedule } from '../readFile.ts';
import { globalIds, stepModel, type StepOptions } from './testing/stepModel.ts';
import { ifcEngine } from './engine.ts';
import { readIfc } from './readIfc.ts';

const engine = ifcEngine();
const read = (text: string) => readIfc(strToU8(text), engine);

async function modelOf(options?: StepOptions) {
  const answer = await read(stepModel(options));
  if (!answer.ok) throw new Error(answer.says);
  return answer.model;
}

async function importOf(bytes: Uint8Array) {
  const answer = await readSchedule(bytes, (model) => readIfc(model, engine));
  if (!answer.ok) throw new Error(answer.says);
  const found = bestTable(answer.grids);
  if (!found.ok) throw new Error(found.says);
  let count = 0;
  return importTable(found.table, { newId: () => `id${(count += 1)}` });
}

describe('a building model', () => {
  it.each(['IFC2X3', 'IFC4', 'IFC4X3_ADD2'] as const)('is read in %s', async (schema) => {
    const { doors, spaces, floors } = await modelOf({ schema });
    expect(doors.map(({ name, floor, operation, typeName }) => [name, floor, operation, typeName])).toEqual([
      ['101', 'Ground floor', 'SINGLE_SWING_LEFT', 'Flush'],
      ['102', 'Ground floor', schema === 'IFC2X3' ? 'SINGLE_SWING_LEFT' : 'SINGLE_SWING_RIGHT', 'Flush'],
      ['201', 'Upper floor', 'DOUBLE_DOOR_SINGLE_SWING', 'Two leaves'],
    ]);
    expect(doors.map((door) => door.spaces.map(({ name, number }) => `${name} ${number}`))).toEqual([
      ['Lobby 1'],
      ['Lobby 1', 'Office 2'],
      [],
    ]);
    // Gross before net: 22.5 m².
    expect(spaces.find(({ name }) => name === 'Office')?.areaFt2).toBeCloseTo(242.19, 2);
    expect(floors.map(({ elevationMm }) => elevationMm)).toEqual(
      [3000, 0].map((mm) => expect.closeTo(mm, 3)),
    );
  });

  it.each(['meter', 'millimeter', 'foot', 'inch'] as const)('is measured in a unit of %s', async (unit) => {
    const { doors, notes } = await modelOf({ unit });
    expect(doors[0]?.overallWidthMm).toBeCloseTo(914.4, 3);
    expect(doors[0]?.overallHeightMm).toBeCloseTo(2133.6, 3);
    expect(notes).toEqual([]);
  });

  it('says that a model without a unit was read in meters', async () => {
    expect((await modelOf({ unit: 'none' })).notes).toEqual([
      'The model names no unit of length; it was read in meters.',
    ]);
  });

  it('takes no placeholder and no zero for a value', async () => {
    const { doors } = await modelOf();
    expect(doors[1]?.said.get('FireRating')).toBeUndefined();
    expect(doors[2]).toMatchObject({ overallWidthMm: null, overallHeightMm: null });
  });

  it('doubts a size that is no size of a door', async () => {
    const more = [`#50=IFCDOOR('${globalIds.entry}',$,'101',$,$,$,$,'T',84.,36.,.DOOR.,.NOTDEFINED.,$);`];
    const { doors } = await modelOf({ more });
    const door = doors.find(({ name }) => name === '101');
    expect(door?.overallWidthMm).toBeNull();
    expect(door?.doubts).toEqual([
      'The height 84 of the model is no size of a door in its unit; it stays unknown.',
      'The width 36 of the model is no size of a door in its unit; it stays unknown.',
    ]);
  });

  it('comes in as a schedule does: what it says is assumed, ratings as written', async () => {
    const { openings, floors, spaces, refused } = await importOf(strToU8(stepModel()));
    expect(refused).toEqual([]);
    expect(openings.map(({ mark, externalId }) => [mark, externalId])).toEqual([
      ['101', globalIds.entry],
      ['102', globalIds.office],
      ['201', globalIds.pair],
    ]);
    const [entry, office, pair] = openings;
    expect(entry?.facts).toMatchObject({
      doorType: { is: 'assumed', value: 'single', from: 'column OperationType: SINGLE_SWING_LEFT' },
      leafWidthIn: { is: 'assumed', value: 36 },
      fireRatingMin: { is: 'known', value: 90 },
      exterior: { is: 'assumed', value: true },
      egressRole: { is: 'assumed', value: 'exteriorExit' },
    });
    expect(office?.facts).toMatchObject({ accessibleRoute: { value: true }, exterior: { value: false } });
    expect(office?.facts.fireRatingMin).toBeUndefined();
    expect(pair?.facts.doorType).toMatchObject({ is: 'assumed', value: 'pair' });
    expect(pair?.facts.leafWidthIn).toBeUndefined();
    expect(floors.map(({ name, level }) => [name, level])).toEqual([
      ['Ground floor', 0],
      ['Upper floor', 1],
    ]);
    // The hall has no door and comes in with the others.
    expect(spaces.map(({ name, areaFt2 }) => [name, areaFt2])).toEqual([
      ['Lobby 1', null],
      ['Office 2', 242.19],
      ['Hall 20', null],
      ['Outside', null],
    ]);
  });

  it('is read from an ifcZIP', async () => {
    const packed = zipSync({ 'mill house.ifc': strToU8(stepModel()) });
    expect((await importOf(packed)).openings).toHaveLength(3);
  });

  it.each(['IFC2X3', 'IFC4'] as const)('says what a room is for, in %s', async (schema) => {
    const more = [
      "#90=IFCCLASSIFICATION('OmniClass','2012',$,'OmniClass Table 13');",
      "#91=IFCCLASSIFICATIONREFERENCE($,'13-15 11 34 11','Office',#90);",
      `#92=IFCRELASSOCIATESCLASSIFICATION('c',$,$,$,(#31),#91);`,
      "#93=IFCPROPERTYSINGLEVALUE('OccupancyType',$,IFCLABEL('OccupancyType'),$);",
      "#94=IFCPROPERTYSINGLEVALUE('OccupancyNumber',$,IFCCOUNTMEASURE(3),$);",
      "#95=IFCPROPERTYSINGLEVALUE('OccupancyNumberPeak',$,IFCCOUNTMEASURE(7),$);",
      `#96=IFCPROPERTYSET('p',$,'Pset_SpaceOccupancyRequirements',$,(#93,#94,#95));`,
      `#97=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#31),#96);`,
    ];
    const { spaces } = await modelOf({ schema, more });
    const office = spaces.find(({ name }) => name === 'Office');
    expect(office).toMatchObject({ people: 7, netFt2: expect.closeTo(215.28, 2) as number });
    expect(office?.said).toEqual([
      { where: 'class', text: '13-15 11 34 11: Office' },
      { where: 'name', text: 'Office' },
    ]);
    // A name that is only its number says nothing.
    expect(spaces.find(({ name }) => name === 'Hall')?.said).toEqual([{ where: 'name', text: 'Hall' }]);
  });

  it('says how far it is, from the first byte to the last record, and never goes back', async () => {
    const told: number[] = [];
    const filling = Array.from(
      { length: 60_000 },
      (_, index) => `#${1_000 + index}=IFCCARTESIANPOINT((0.,0.,0.));`,
    );
    await readIfc(strToU8(stepModel({ more: filling })), engine, (done, total) =>
      told.push((100 * done) / total),
    );
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect([told[0], told.at(-1)]).toEqual([0, 100]);
    // Checked, loaded and taken: each part is told while it lasts.
    for (const [from, to] of [
      [5, 40],
      [41, 89],
      [91, 99],
    ] as const) {
      expect(told.some((percent) => percent >= from && percent <= to)).toBe(true);
    }
  });

  it('tells nothing before its program is loaded: from the first word on silence counts', async () => {
    const order: string[] = [];
    const slow = {
      ...engine,
      ready: async () => {
        await new Promise((resolve) => setTimeout(resolve, 20));
        order.push('loaded');
        return engine.ready();
      },
    };
    await readIfc(strToU8(stepModel()), slow, () => order.push('step'));
    expect(order.indexOf('loaded')).toBe(0);
    expect(order.length).toBeGreaterThan(2);
  });

  it('keeps two doors of one name apart', async () => {
    const more = [`#53=IFCDOOR('0aBcDeFgHiJkLmNoPqRs04',$,'101',$,$,$,$,'T',2.1,0.9,.DOOR.,.NOTDEFINED.,$);`];
    const { openings, problems } = await importOf(strToU8(stepModel({ more })));
    expect(openings.map(({ mark }) => mark).toSorted()).toEqual(['101', '101 (2)', '102', '201']);
    expect(problems.map(({ says }) => says)).toContain(
      'Mark 101 stands in row 50 as well, under another GlobalId. This one comes in as 101 (2).',
    );
  });
});

describe('a file that is no whole model', () => {
  const cut = stepModel().slice(0, -40);
  it.each([
    ['cut off', cut, /cut off/],
    ['without its first line', stepModel().replace('ISO-10303-21;', ''), /does not begin/],
    ['of a version nobody knows', stepModel().replace("'IFC4'", "'IFC9'"), /“IFC9”, which is not read/],
    ['without doors', stepModel().replaceAll(/#\d+=IFCDOOR\(.*\n/g, ''), /no doors/],
    [
      'with a torn name',
      stepModel().replace('IFCPROPERTYSET(', `IFC${'\u00e9'.repeat(30)}(`),
      /damaged near line/,
    ],
    [
      'with a torn record',
      stepModel().replace('IFCUNITASSIGNMENT((', 'IFCUNITASSIGNME'),
      /damaged near line 9/,
    ],
    ['with a torn record number', stepModel().replace('#50=IFCDOOR', '#50OOR'), /damaged near line 24/],
    [
      'with a number in a name',
      stepModel().replace('IFCPROPERTYSET', 'IFCPROP1.2E+02SET'),
      /damaged near line/,
    ],
    ['as XML', '<?xml version="1.0"?><ifcXML></ifcXML>', /IFC as XML/],
  ])('%s is refused with a sentence', async (_what, text, says) => {
    const answer = await read(text);
    expect(answer.ok ? '' : answer.says).toMatch(says);
  });

  it('reads past comments, records of several parts and names of its maker', async () => {
    const more = [
      `/* ${'x'.repeat(400)}; ( */ #90 = /* here */ IFCWALL('w',$,$,$,$,$,$,$);`,
      "#91=(IFCA('x')IFCB());",
      '#92=!OWN(1);',
    ];
    expect(await read(stepModel({ more }))).toMatchObject({ ok: true });
  });

  it('names door records that cannot be read', async () => {
    const answer = await read(stepModel({ more: ["#54=IFCDOOR('x');"] }));
    expect(answer.ok && answer.model.notes).toEqual(['1 door record of the model could not be read.']);
  });
});
