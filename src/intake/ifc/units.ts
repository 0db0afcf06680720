import { type Lines, number, reference, references, text } from './lines.ts';

export interface Units {
  readonly mmPerLength: number;
  readonly m2PerArea: number;
  /** False where the model names no unit of length and the standard's own was taken. */
  readonly stated: boolean;
}

/** Prefixes of IfcSIPrefix (ISO 16739-1). */
const prefixes: Readonly<Record<string, number>> = {
  EXA: 1e18,
  PETA: 1e15,
  TERA: 1e12,
  GIGA: 1e9,
  MEGA: 1e6,
  KILO: 1e3,
  HECTO: 1e2,
  DECA: 10,
  DECI: 0.1,
  CENTI: 0.01,
  MILLI: 1e-3,
  MICRO: 1e-6,
  NANO: 1e-9,
  PICO: 1e-12,
  FEMTO: 1e-15,
  ATTO: 1e-18,
};

/** Units of the project: SI with any prefix, or converted as feet and inches are. */
export function unitsOf(lines: Lines): Units {
  const project = lines.ids('IFCPROJECT').map((id) => lines.line(id))[0];
  const assigned = reference(project?.[8]);
  const assignment = lines.line(assigned) ?? lines.line(lines.ids('IFCUNITASSIGNMENT')[0]);
  let metersPerLength: number | undefined;
  let m2PerArea: number | undefined;
  for (const id of references(assignment?.[0])) {
    const unit = lines.line(id);
    if (!unit) continue;
    const words = unit.map(text);
    if (words.includes('LENGTHUNIT')) metersPerLength ??= siOf(lines, id, 1, 0);
    if (words.includes('AREAUNIT')) m2PerArea ??= siOf(lines, id, 2, 0);
  }
  const meters = metersPerLength ?? 1;
  return {
    mmPerLength: meters * 1000,
    m2PerArea: m2PerArea ?? meters ** 2,
    stated: metersPerLength !== undefined,
  };
}

/** How much of the SI unit without prefix one of this unit is. web-ifc leaves out the first, derived argument of IfcSIUnit. */
function siOf(lines: Lines, id: number, power: number, depth: number): number | undefined {
  const unit = lines.line(id);
  if (!unit || depth > 4) return undefined;
  const name = text(unit.at(-1));
  if (/^(SQUARE_)?METRE$/.test(name)) return (prefixes[text(unit.at(-2))] ?? 1) ** power;
  for (const factor of unit.flatMap((argument) => reference(argument) ?? [])) {
    const measure = lines.line(factor);
    const value = number(measure?.[0]);
    const base = reference(measure?.[1]);
    if (value === null || value <= 0 || base === undefined) continue;
    const of = siOf(lines, base, power, depth + 1);
    if (of !== undefined) return value * of;
  }
  return undefined;
}
