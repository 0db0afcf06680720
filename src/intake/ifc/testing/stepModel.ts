/** A small invented building as an IFC file, written by hand in the shapes that models come in. */
export interface StepOptions {
  readonly schema?: 'IFC2X3' | 'IFC4' | 'IFC4X3_ADD2';
  /** Unit of length as its own record #10 (and #11, #12), and how many of it a meter is. */
  readonly unit?: 'meter' | 'millimeter' | 'foot' | 'inch' | 'none';
  /** Records more, or instead of those with the same number. */
  readonly more?: readonly string[];
}

const units = {
  meter: { records: ['#10=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);'], perMeter: 1 },
  millimeter: { records: ['#10=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);'], perMeter: 1000 },
  foot: { records: converted('FOOT', 0.3048), perMeter: 1 / 0.3048 },
  inch: { records: converted('INCH', 0.0254), perMeter: 1 / 0.0254 },
  none: { records: ['#10=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);'], perMeter: 1 },
};

function converted(name: string, meters: number): readonly string[] {
  return [
    `#10=IFCCONVERSIONBASEDUNIT(#13,.LENGTHUNIT.,'${name}',#11);`,
    `#11=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(${meters}),#12);`,
    '#12=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);',
    '#13=IFCDIMENSIONALEXPONENTS(1,0,0,0,0,0,0);',
  ];
}

export const globalIds = {
  entry: '0aBcDeFgHiJkLmNoPqRs01',
  office: '0aBcDeFgHiJkLmNoPqRs02',
  pair: '0aBcDeFgHiJkLmNoPqRs03',
};
const id = (count: number) => `0000000000000000000${String(count).padStart(3, '0')}`;
const property = (record: number, name: string, value: string) =>
  `#${record}=IFCPROPERTYSINGLEVALUE('${name}',$,${value},$);`;

/**
 * Ground and upper floor, a lobby and an office below, a hall above. Door 101 leads outdoors, 102 lies between lobby and office
 * and repeats the names of its fields as values, 201 is a pair without a size.
 */
export function stepModel({ schema = 'IFC4', unit = 'meter', more = [] }: StepOptions = {}): string {
  const { records, perMeter } = units[unit];
  const length = (meters: number) => (meters * perMeter).toFixed(9);
  const isOld = schema === 'IFC2X3';
  const operation = (word: string) => (isOld ? '' : `,.DOOR.,.${word}.,$`);
  const style = (record: number, name: string, word: string) =>
    isOld
      ? `#${record}=IFCDOORSTYLE('${id(record)}',$,'${name}',$,$,$,$,$,.${word}.,.NOTDEFINED.,.F.,.F.);`
      : `#${record}=IFCDOORTYPE('${id(record)}',$,'${name}',$,$,$,$,$,$,.DOOR.,.${word}.,.F.,$);`;
  const space = (record: number, number: string, name: string) =>
    `#${record}=IFCSPACE('${id(record)}',$,'${number}',$,$,$,$,'${name}',.ELEMENT.,${isOld ? '.INTERNAL.' : '.SPACE.'},$);`;
  const storey = (record: number, name: string, meters: number) =>
    `#${record}=IFCBUILDINGSTOREY('${id(record)}',$,'${name}',$,$,$,$,$,.ELEMENT.,${length(meters)});`;
  const door = (record: number, globalId: string, name: string, size: string, word: string) =>
    `#${record}=IFCDOOR('${globalId}',$,'${name}',$,$,$,$,'T${record}',${size}${operation(word)});`;
  const boundary = (record: number, of: number, element: number) =>
    `#${record}=IFCRELSPACEBOUNDARY('${id(record)}',$,$,$,#${of},#${element},$,.PHYSICAL.,.INTERNAL.);`;
  const body = [
    `#1=IFCPROJECT('${id(1)}',$,'Mill House',$,$,$,$,(#3),#2);`,
    '#2=IFCUNITASSIGNMENT((#10,#14));',
    "#3=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,$,$,$);",
    ...records,
    '#14=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);',
    storey(20, 'Upper floor', 3),
    storey(21, 'Ground floor', 0),
    space(30, '1', 'Lobby'),
    space(31, '2', 'Office'),
    space(32, '20', 'Hall'),
    `#35=IFCRELAGGREGATES('${id(35)}',$,$,$,#21,(#30,#31));`,
    `#36=IFCRELAGGREGATES('${id(36)}',$,$,$,#20,(#32));`,
    "#37=IFCQUANTITYAREA('NetFloorArea',$,$,20.);",
    "#38=IFCQUANTITYAREA('GrossFloorArea',$,$,22.5);",
    `#39=IFCELEMENTQUANTITY('${id(39)}',$,'Qto_SpaceBaseQuantities',$,$,(#37,#38));`,
    `#40=IFCRELDEFINESBYPROPERTIES('${id(40)}',$,$,$,(#31),#39);`,
    door(50, globalIds.entry, '101', `${length(2.1336)},${length(0.9144)}`, 'SINGLE_SWING_LEFT'),
    door(51, globalIds.office, '102', `${length(2.1336)},${length(0.9144)}`, 'SINGLE_SWING_RIGHT'),
    door(52, globalIds.pair, '201', '$,0.', 'NOTDEFINED'),
    `#55=IFCRELCONTAINEDINSPATIALSTRUCTURE('${id(55)}',$,$,$,(#50,#51),#21);`,
    `#56=IFCRELCONTAINEDINSPATIALSTRUCTURE('${id(56)}',$,$,$,(#52),#20);`,
    style(57, 'Flush', 'SINGLE_SWING_LEFT'),
    style(58, 'Two leaves', 'DOUBLE_DOOR_SINGLE_SWING'),
    `#59=IFCRELDEFINESBYTYPE('${id(59)}',$,$,$,(#50,#51),#57);`,
    `#60=IFCRELDEFINESBYTYPE('${id(60)}',$,$,$,(#52),#58);`,
    boundary(61, 30, 50),
    boundary(62, 30, 51),
    boundary(63, 31, 51),
    property(70, 'FireRating', "IFCLABEL('1-1/2 HR')"),
    property(71, 'IsExternal', 'IFCBOOLEAN(.T.)'),
    property(72, 'FireExit', 'IFCBOOLEAN(.T.)'),
    property(73, 'FireRating', "IFCLABEL('Fire Rating')"),
    property(74, 'HandicapAccessible', 'IFCBOOLEAN(.T.)'),
    property(75, 'IsExternal', 'IFCBOOLEAN(.F.)'),
    `#80=IFCPROPERTYSET('${id(80)}',$,'Pset_DoorCommon',$,(#70,#71,#72));`,
    `#81=IFCPROPERTYSET('${id(81)}',$,'Pset_DoorCommon',$,(#73,#74,#75));`,
    `#82=IFCRELDEFINESBYPROPERTIES('${id(82)}',$,$,$,(#50),#80);`,
    `#83=IFCRELDEFINESBYPROPERTIES('${id(83)}',$,$,$,(#51),#81);`,
  ];
  const instead = new Set(more.map((record) => record.slice(0, record.indexOf('='))));
  const kept = body.filter((record) => !instead.has(record.slice(0, record.indexOf('='))));
  return [
    'ISO-10303-21;',
    'HEADER;',
    "FILE_DESCRIPTION((''),'2;1');",
    "FILE_NAME('mill house','2026-01-01T00:00:00',(''),(''),'','','');",
    `FILE_SCHEMA(('${schema}'));`,
    'ENDSEC;',
    'DATA;',
    ...kept,
    ...more,
    'ENDSEC;',
    'END-ISO-10303-21;',
    '',
  ].join('\n');
}
