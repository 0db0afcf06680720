import { type Argument, type Lines, number, references, text, texts } from './lines.ts';
import { stated } from '../../domain/import/buildingModel.ts';

/** Records related to one record, in the order of the file. */
export type Related = ReadonlyMap<number, readonly number[]>;

/** From the records in one argument of a relation to the record in another; only those that are wanted. */
export function related(
  lines: Lines,
  kinds: readonly string[],
  [from, to]: readonly [number, number],
  wanted?: ReadonlySet<number>,
  next: () => void = () => undefined,
): Related {
  const found = new Map<number, number[]>();
  for (const id of kinds.flatMap((kind) => lines.ids(kind))) {
    const line = lines.line(id);
    next();
    if (!line) continue;
    const ends = references(line[to]);
    for (const start of references(line[from])) {
      if (wanted && !wanted.has(start)) continue;
      const list = found.get(start) ?? [];
      for (const end of ends) if (!list.includes(end)) list.push(end);
      found.set(start, list);
    }
  }
  return found;
}

export interface Property {
  readonly set: string;
  readonly name: string;
  readonly value: string;
}

/** Properties of single or enumerated value in the given sets; what only repeats its own name is none. */
export function propertiesIn(lines: Lines, sets: readonly number[]): readonly Property[] {
  return sets.flatMap((id) => {
    if (lines.kind(id) !== 'IFCPROPERTYSET') return [];
    const set = lines.line(id);
    const setName = text(set?.[2]);
    return references(set?.[4]).flatMap((one): Property[] => {
      const property = lines.line(one);
      const name = text(property?.[0]);
      const value = valueOf(name, property?.[2]);
      return name === '' || value === '' ? [] : [{ set: setName, name, value }];
    });
  });
}

function valueOf(name: string, argument: Argument): string {
  return stated(name, texts(argument).join(', '));
}

export interface Areas {
  /** Gross before net, as the larger load. */
  readonly area: number | null;
  readonly net: number | null;
}

/** Floor areas among the quantities of a space, in the unit of the model. */
export function areasIn(lines: Lines, sets: readonly number[]): Areas {
  const areas = new Map<string, number>();
  for (const id of sets) {
    if (lines.kind(id) !== 'IFCELEMENTQUANTITY') continue;
    for (const one of references(lines.line(id)?.[5])) {
      if (lines.kind(one) !== 'IFCQUANTITYAREA') continue;
      const quantity = lines.line(one);
      const area = number(quantity?.[3]);
      const name = text(quantity?.[0]).toLowerCase();
      if (area !== null && area > 0 && !areas.has(name)) areas.set(name, area);
    }
  }
  const first = (names: readonly string[]) => names.flatMap((name) => areas.get(name) ?? [])[0] ?? null;
  return {
    area: first(['grossfloorarea', 'netfloorarea', 'gsa bim area', 'area']),
    net: first(['netfloorarea']),
  };
}
