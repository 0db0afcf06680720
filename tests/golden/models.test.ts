// What is read from building models and from the rows around a table, as it was read and accepted.
import { readFileSync, writeFileSync } from 'node:fs';
import process from 'node:process';
import { expect, it } from 'vitest';
import {
  gridOfModel,
  type ModelDoor,
  modelInWords,
  peopleIn,
  saidOf,
  stated,
} from '../../src/domain/import/buildingModel.ts';
import { cobieModel, cobieSheets } from '../../src/domain/import/cobie.ts';
import { importTable } from '../../src/domain/import/csv.ts';
import type { GivenPlaces, GivenSpace, Grid, GridRow, SaidOfRoom } from '../../src/domain/import/grid.ts';
import { classifyRows, findTable } from '../../src/domain/import/layout.ts';
import { roomsTold, roomUsesInWords, takingAll } from '../../src/domain/import/roomProposals.ts';
import { bestTable } from '../../src/domain/import/sheets.ts';
import { newProject, newSpace } from '../../src/domain/model/newProject.ts';
import { inWords } from './imported.ts';

function grid(name: string, lines: readonly string[], more: Partial<Grid> = {}): Grid {
  return {
    name,
    hidden: false,
    rows: lines.map((line, index) => ({ number: index + 1, cells: line.split('|') })),
    ...more,
  };
}

const component = grid('Component', [
  'Name|TypeName|Space|Description|ExtObject|ExtIdentifier|TagNumber',
  'D1|T1|Office 1, Hall|first|IfcDoor|g1|tag1',
  'Family: Type: 12|T1|Hall|n/a|ifcDoorStandardCase|g2|tag2',
  'Family: Type: 13|T2|Office 1, Upper|n/a|IfcDoor|g3|n/a',
  'D4|T9|Nowhere, Hall, Upper|n/a|IfcDoor|g4|n/a',
  'W1|T1|Hall|n/a|IfcWindow|g5|n/a',
  'D6|T3||n/a||g6|n/a',
  'D7|T4|Hall|n/a|n/a|g7|n/a',
  'D8|T5|Hall|n/a||g8|n/a',
  'D9|n/a|Hall|n/a|IfcDoor|g9|n/a',
  `${'long'.repeat(11)}|T2|Hall|n/a|IfcDoor|g10|n/a`,
  'Void|T1|Hall, Nowhere , Elsewhere|n/a|IfcDoor|g11|n/a',
  `${'n'.repeat(40)}|T1|Office 1, Hall, Upper, Twin 1|n/a|IfcDoor|g12|n/a`,
  'D13|T1|Hall|n/a|IfcDoorLining|g13|n/a',
  'D14|T1|Hall|n/a|MyIfcDoor|g14|n/a',
  'D15|n/a|Hall|n/a||g15|n/a',
  'D16|T6|Hall|n/a||g16|n/a',
  'D17|T7|Hall|n/a||g17|n/a',
  'D18|T8|Hall|n/a|IfcDoor|g18|n/a',
  'D19|T10|Hall|n/a|IfcDoor|g19|n/a',
  ' | | | | | | ',
]);
const types = grid('Type', [
  'Name|Category|Description|NominalWidth|NominalHeight|ExtObject|CodePerformance',
  'T1|23-17 11 00: Doors|Flush door|0.915|2.134|IfcDoorStyle|90 min',
  'T2|n/a|n/a|915|2134|IfcDoorType|',
  'T3|n/a|n/a|0|-1|IfcDoorStyle|',
  'T4|Interior door|n/a|x|40000|IfcTypeObject|',
  'T5|Windows|n/a|1|2|IfcWindowStyle|',
  'T6|n/a|n/a|1|2|IfcDoorStyleX|',
  'T7|n/a|n/a|1|2|XIfcDoorType|',
  'T8|n/a|n/a|30|300|IfcDoorType|',
  'T10|n/a|n/a|100|30000|IfcDoorType|',
]);
const space = grid('Space', [
  'Name|Category|FloorName|Description|GrossArea|NetArea',
  'Office 1|Offices|Level 1|Open office|20|18',
  'Hall|13-85: Corridor|Level 1|n/a|n/a|30',
  'Upper|n/a|Level 2|Storage|0|x',
  'Twin 1|n/a|Level 2|Twin|5|5',
  'Twin 1|n/a|Level 2|Twin|6|6',
  ' | | | | | ',
]);
const floor = grid('Floor', [
  'Name|Elevation',
  'Level 2|4',
  'Level 1|0',
  'Cellar|-3',
  'Loft|n/a',
  'Attic|high',
]);
const attribute = grid('Attribute', [
  'Name|SheetName|RowName|Value|Unit',
  'Width|Component|D1|1.2|m',
  'Width|Component|D1|9|m',
  'Height|Component|D1|7|ft',
  'Thickness|Component|D1|1.75|in',
  'Thickness|Component|D4|45|mm',
  'OperationType|Component|D1|SINGLE_SWING_LEFT|n/a',
  'FireRating|component|d1|FireRating|n/a',
  'IsExternal|Component|D1|true|n/a',
  'OccupancyType|Space|Office 1|Business|n/a',
  'OccupancyNumber|Space|Office 1|3.2|n/a',
  'OccupancyNumberPeak|Space|Office 1|4.1|n/a',
  'OccupancyNumber|Space|Hall|-4|n/a',
  'OccupancyNumber|Space|Upper|2.2|n/a',
  'Core|Floor|D1|lead|n/a',
  'Finish|Component|D4|n/a|n/a',
  'Finish|Component|D4|Red|n/a',
]);
const facility = (lengths: string, areas: string) =>
  grid('Facility', ['Name|LinearUnits|AreaUnits', `F|${lengths}|${areas}`]);
const workbook = [component, types, space, floor, attribute];

const books: Readonly<Record<string, readonly Grid[]>> = {
  'meters and square meters': [...workbook, facility('meters', 'square meters')],
  'feet and square feet': [...workbook, facility('feet', 'Square Feet')],
  'no facility': workbook,
  'units nobody knows': [...workbook, facility('ells', 'acres')],
  'no doors': [grid('Component', ['Name|TypeName|Space', 'W1|T5|Hall']), types, space],
  'another workbook with sheets of these names': [grid('Component', ['Name|Type', 'D1|T1']), types, space],
  'no types': [component, space],
  'no rooms of doors': [grid('Component', ['Name|TypeName', 'D1|T1']), types, space],
  'few columns': [
    grid('Component', ['Name|TypeName|Space', 'D1|T1|Hall']),
    grid('Type', ['Name|Category', 'T1|Doors']),
    grid('Space', ['Name|FloorName', 'Hall|Level 1']),
  ],
  'one door alone': [
    grid('Component', ['Name|TypeName|Space|ExtObject', `${'n'.repeat(41)}|n/a|n/a|IfcDoor`]),
    grid('Type', ['Name']),
    grid('Space', ['Name']),
  ],
};

function model(grids: readonly Grid[]): readonly string[] {
  const read = cobieModel(grids);
  if (read === undefined) return ['no COBie'];
  if (!read.ok) return [read.says];
  const table = gridOfModel(read.model);
  const best = bestTable([table]);
  const found = best.ok ? best.table : undefined;
  let count = 0;
  return [
    modelInWords(read.model),
    best.ok ? best.sheet : best.says,
    ...read.model.notes,
    ...read.model.spaces.map((one) => JSON.stringify(one)),
    ...table.rows.map(({ number, cells, remark = '' }) => `${number}: ${cells.join(' | ')} ${remark}`),
    ...(found
      ? inWords(importTable(found, { newId: () => `id${(count += 1)}`, into: newProject('p', 'P') }))
      : []),
  ];
}

const room = (
  name: string,
  number: string,
  more: Partial<GivenSpace> = {},
  ...said: readonly string[]
): GivenSpace => ({
  number,
  name,
  floor: 'Level 1',
  areaFt2: null,
  netFt2: null,
  people: null,
  ...more,
  said: saidOf([
    ['name', name],
    ...said.map((one) => {
      const [where = '', text = ''] = one.split('=');
      return [where as SaidOfRoom['where'], text] as const;
    }),
  ]),
});
const placesOf: Readonly<Record<string, GivenPlaces>> = {
  'rooms and what they are for': {
    floors: [
      { name: 'Level 1', elevationMm: -300 },
      { name: 'Level 2', elevationMm: 3000 },
      { name: 'Below', elevationMm: -3500 },
      { name: 'Shed', elevationMm: null },
    ],
    spaces: [
      room('Open plan', '1', {}, 'type=Office', 'class=SL_20: Storage', 'occupancy=B'),
      room('Boardroom', '2', {}, 'occupancy=A-3'),
      room('Desks', '3', {}, 'class=13-15: Corridor', 'type=Office'),
      room('Auditorium', '', { areaFt2: 900 }, 'type=Office'),
      room('Seminar', '4', { areaFt2: 900, netFt2: 900, people: 3 }),
      room('Seminar', '5', { netFt2: 800, floor: 'Level 2' }),
      room('Copy', '6', { areaFt2: 120, netFt2: 100 }),
      room('Class room', '7', { areaFt2: 900, netFt2: 850 }),
      room('Class room', '8'),
      room('Class room', '9', { areaFt2: 1e9, netFt2: 1e9 }),
      room('', '101', { floor: 'Shed' }, 'type=X-RAY'),
      room('', '102', { floor: 'Below' }, 'type=X-RAY'),
      room('Twin', '', { areaFt2: 5, floor: 'Below' }),
      room('Lobby', '', { people: 9 }),
      room('Twin', '', { areaFt2: 6, floor: 'Below' }),
      room('Lobby', '', { floor: '' }),
      room('Lobby', '', { floor: '' }),
      room('Stair', 'S1', {}, 'type=Odd'),
      room('Odd', 'S1', {}, 'type=Stair'),
      room('Flur', '1', { people: 4, floor: 'Level 3' }),
      room('Flur', '2', { people: 4, floor: 'Level 3' }),
      room('Office', '3', { people: 4, floor: 'Level 3' }),
      room('', ''),
      room('n'.repeat(120), ''),
      room('n'.repeat(121), ''),
      room('Lounge', ''),
      room('Office', '12', {}, 'type=Lounge'),
      room('Lobby', '9', {}, 'type=Corridor'),
      room('Class room', '10', { areaFt2: 700 }),
      room('Class room', '11', { netFt2: 850, floor: 'Level 3' }),
    ],
  },
  'people only': { floors: [], spaces: [room('Corridor', '', { people: 2, floor: '' })] },
  'nothing that counts': { floors: [], spaces: [room('Corridor', '')] },
  'one that is not read': { floors: [], spaces: [room('Flur', '')] },
  'one use': { floors: [], spaces: [room('Office', '')] },
};
const known = {
  ...newProject('p', 'P'),
  floors: { f: { id: 'f', name: 'Level 3', level: 3 } },
  spaces: {
    a: { ...newSpace('a', 'Flur 1'), floorId: 'f', occupantLoad: 4 },
    b: { ...newSpace('b', 'Flur 2'), floorId: 'f', use: 'business' as const, occupantLoad: 5 },
    d: { ...newSpace('d', 'Class room 11'), floorId: 'f', areaFt2: 500 },
    c: { ...newSpace('c', 'Office 3'), floorId: 'f', use: 'gallery' as const },
  },
};

function roomsInWords(places: GivenPlaces): readonly string[] {
  let count = 0;
  const read = importTable(
    { header: ['Mark'], headerRows: [], rows: [], places },
    { newId: () => `id${(count += 1)}`, into: known },
  );
  return [
    ...inWords(read),
    ...read.spaces.map(({ name, areaFt2 }) => `${name}: ${areaFt2} ft²`),
    ...roomsTold(read.rooms),
    ...read.rooms.proposals.map(
      ({ key, what, value, areaFt2 }) => `${key}: ${what} ${value}, ${areaFt2} ft²`,
    ),
    `without doubt: ${Object.keys(takingAll(read.rooms.proposals, false)).join(', ')}`,
    roomUsesInWords(read.rooms),
  ];
}

const bareDoor: ModelDoor = {
  row: 1,
  globalId: '',
  mark: '',
  name: '',
  tag: '',
  floor: '',
  typeName: '',
  operation: '',
  overallWidthMm: null,
  overallHeightMm: null,
  spaces: [],
  said: new Map(),
  doubts: [],
};

const around =
  'NOT USED|Door number omitted|void|cancelled|Deleted.|Sub-total|GRAND TOTAL: 3|12 doors|3 openings|Doors in all 4|General Notes|note|Legend|Abbreviations|key|End of schedule|Page 2|1. See plans|(2) Verify|FIRST FLOOR|Basement|Mezzanine level.|Penthouse|A long text that stands alone here|101|Area B';

const header = 'Mark|Width|Hand';
const laidOut: Readonly<Record<string, Grid>> = {
  'a heading below a title': grid('', ['PROJECT X', '', 'dated 2026', 'Door No.|Size|Hand', '101|3070|LH']),
  'three rows of headings': grid('', [
    '|DOOR||FRAME||FIRE|HARDWARE',
    'MARK|WIDTH|HEIGHT|MATL|TYPE|RATING|SET',
    '|(IN)|mm.||||',
    '101|36|2134|HM|F1|90|7',
  ]),
  'groups with words of their own': grid('', [
    'MARK|DOOR|||GLASS|DETAILS|',
    '|WIDTH|DOOR|MATL|TYPE|FIRE RATING|NOTES',
    '101|x|y|HM|G1|20|n',
  ]),
  'no heading': grid('', ['a|b', 'c|d']),
  'a heading too far down': grid('', [...Array.from({ length: 40 }, () => 'x|y'), header, '101|36|LH']),
  'headings once more, blank, cut in two': grid('', [
    'Mark|Width|Hand|Remarks',
    `101|3'-0"|LH|one`,
    '|||',
    'Mark|Width|Hand|Remarks',
    'MARK|||',
    `102|3'-0"`,
    'LH|two|',
    '103',
    'x|y|z|',
    `${'w '.repeat(8)}|||x`,
  ]),
};

const asked: readonly GridRow[] = [
  { number: 2, cells: ['101', '', 'LH'], struck: true },
  { number: 3, cells: ['102', '', 'LH'], hidden: true },
  { number: 4, cells: ['103', '', 'LH'], broken: 'A quote is missing.' },
  { number: 5, cells: ['NOT USED', '', ''], isDoor: true },
  { number: 6, cells: ['104', '', 'LH'] },
  { number: 7, cells: ['105', '', 'LH'] },
  { number: 8, cells: ['Note', '', ''] },
];

function text(): string {
  const told: string[] = [];
  for (const [name, grids] of Object.entries(books)) told.push(`## ${name}`, ...model(grids), '');
  for (const names of [
    ['Component', 'TYPE', 'space', 'Contact', 'attribute'],
    ['Component', 'Type'],
  ]) {
    told.push(`sheets of ${names.join()}: ${[...(cobieSheets(names) ?? ['none'])].join()}`);
  }
  told.push('', '## Words of a model');
  for (const word of [
    'N/A',
    ' none ',
    'FIRE - RATING',
    '---',
    'not known',
    'unknown soldier',
    'xna',
    'na2',
    ' 90 ',
  ]) {
    told.push(`${word} → ${stated('FireRating', word)}.`);
  }
  const words = ['B', '3', 'A', `${'w'.repeat(119)} and more`, 'w'.repeat(119)];
  told.push(JSON.stringify(saidOf(words.map((word) => ['occupancy', word] as const))));
  told.push(JSON.stringify(saidOf(words.map((word) => ['name', word] as const))));
  for (const counts of [['3.2', '4.1'], ['0', 'x'], ['100000'], ['100001'], []]) {
    told.push(`${counts.join()} → ${peopleIn(counts)}`);
  }
  const marked = { ...bareDoor, mark: 'A1', name: 'D1', globalId: 'g' };
  for (const door of [marked, bareDoor]) {
    const [head, ...rows] = gridOfModel({ doors: [door], spaces: [], floors: [], notes: [] }).rows;
    told.push(`${head?.cells.join('|')}: ${rows.map(({ cells }) => cells.join('|')).join()}`);
  }
  told.push('', '## Units of areas');
  const units =
    'square meter|Square Meters|square metre|square_metres|m2|m²|sqm|square feet|square foot|sq-ft|ft2|ft²|SF|xm2|m2x|xsf|sfx';
  for (const unit of units.split('|')) {
    const read = cobieModel([...workbook, facility('m', unit)]);
    told.push(`${unit} → ${read?.ok ? read.model.spaces[0]?.areaFt2 : ''}`);
  }
  told.push('', '## Rows around a table');
  for (const word of around.split('|')) {
    for (const line of [`${word}||`, `101|${word}|LH`, `${word}|${word}|${word}`, `|${word}|`]) {
      const table = findTable(grid('', [header, line]));
      const [is] = table ? classifyRows(table, 0) : [];
      told.push(`${line} → ${is?.is} ${is?.why}`);
    }
  }
  for (const [name, one] of Object.entries(laidOut)) {
    const table = findTable(one);
    let count = 0;
    told.push('', `## ${name}`, table ? `${table.header.join(' | ')} in ${table.headerRows.length}` : 'none');
    if (table) told.push(...inWords(importTable(table, { newId: () => `id${(count += 1)}` })));
  }
  const table = { header: header.split('|'), headerRows: [], rows: asked };
  const said = new Map([
    [6, 'omit'],
    [8, 'opening'],
  ] as const);
  told.push('', '## What the format and a person say of rows');
  told.push(...classifyRows(table, 0, said).map(({ row, is, why }) => `${row.number} ${is} ${why}`));
  for (const [name, places] of Object.entries(placesOf)) told.push('', `## ${name}`, ...roomsInWords(places));
  told.push('', '## Sheets');
  const door = ['Mark|Hand', '1|LH'];
  const sheets = [
    grid('Cover', ['Title']),
    grid('Empty', ['|']),
    grid('Plans', ['', 'Title']),
    grid('Few', door),
    grid('Doors', [...door, '2|LH']),
    grid('Old', [...door, '2|LH', '3|LH'], { hidden: true }),
  ];
  for (const wanted of [undefined, 'Few', 'Old', 'Cover']) {
    const found = bestTable(sheets, wanted);
    told.push(
      found.ok
        ? `${wanted}: ${found.sheet}, ${found.table.rows.length}. ${found.notes.join(' ')}`
        : `${wanted}: ${found.says}`,
    );
  }
  return `${told.join('\n')}\n`;
}

it('models and tables are read as accepted', () => {
  const file = new URL('models.txt', import.meta.url);
  if (process.env['LATCHWARD_ACCEPT'] !== undefined) writeFileSync(file, text());
  expect(text().split('\n'), 'Read the difference; accept it with LATCHWARD_ACCEPT=1.').toEqual(
    readFileSync(file, 'utf8').split('\n'),
  );
});
