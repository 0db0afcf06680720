import { type ModelSpace, peopleIn, saidOf, stated } from '../../domain/import/buildingModel.ts';
import { type Lines, references, text } from './lines.ts';
import { areasIn, type Property, propertiesIn } from './relations.ts';

const squareFeetPerM2 = 1 / 0.3048 ** 2;

/** Number and title of a class, of IFC2x3 as of IFC4 and later. */
function classInWords(lines: Lines, id: number): string {
  if (lines.kind(id) !== 'IFCCLASSIFICATIONREFERENCE') return '';
  const line = lines.line(id);
  const [number, title] = [text(line?.[1]), text(line?.[2])];
  return title === '' || number === '' || title.includes(number) ? title || number : `${number}: ${title}`;
}

/** Properties that hold a class as a text, as modeling software writes it. */
const isClass = ({ name }: Property) => /omniclass|uniclass/i.test(name) || name === 'Category';

interface Around {
  readonly sets: readonly number[];
  readonly type: number | undefined;
  readonly classes: readonly number[];
  readonly floor: string;
  readonly m2PerArea: number;
}

/** A room (IfcSpace): what it is called, how large it is, and every word about what it is for. */
export function spaceIn(
  lines: Lines,
  id: number,
  { sets, type, classes, floor, m2PerArea }: Around,
): ModelSpace {
  const line = lines.line(id);
  const [name, long] = [stated('Name', text(line?.[2])), stated('LongName', text(line?.[7]))];
  const { area, net } = areasIn(lines, sets);
  const style = lines.line(type);
  const properties = [...propertiesIn(lines, sets), ...propertiesIn(lines, references(style?.[5]))];
  const valuesOf = (wanted: string) =>
    properties.filter((one) => one.name === wanted).map(({ value }) => value);
  const squareFeet = (value: number | null) =>
    value === null ? null : Math.round(value * m2PerArea * squareFeetPerM2 * 100) / 100;
  return {
    number: long === '' || long === name ? '' : name,
    name: long === '' ? name : long,
    floor,
    areaFt2: squareFeet(area),
    netFt2: squareFeet(net),
    said: saidOf([
      ...valuesOf('OccupancyType').map((value) => ['occupancy', value] as const),
      ...classes.map((one) => ['class', classInWords(lines, one)] as const),
      ...properties.filter(isClass).map(({ value }) => ['class', value] as const),
      // PredefinedType, where it is one that says what the room is for.
      ...(text(line?.[9]) === 'PARKING' ? [['class', 'PARKING'] as const] : []),
      ['type', stated('ObjectType', text(line?.[4]))],
      ['type', stated('Name', text(style?.[2]))],
      ['name', long],
      ['name', name],
    ]),
    people: peopleIn([...valuesOf('OccupancyNumber'), ...valuesOf('OccupancyNumberPeak')]),
  };
}
