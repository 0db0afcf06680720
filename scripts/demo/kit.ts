import { type Fact, type Facts } from '../../src/domain/model/fact.ts';
import { assumed, known, unknown } from '../../src/domain/testing/facts.ts';
import type { FactKey, FactValues } from '../../src/domain/model/fields.ts';
import { newProject, newSpace } from '../../src/domain/model/newProject.ts';
import type { Floor, Opening, Project, Space } from '../../src/domain/model/project.ts';
import type { Use } from '../../src/domain/model/uses.ts';

/** What a demo building is written in: spaces and doors by short name, values without their standing. */
export interface SpaceRow {
  readonly key: string;
  readonly name: string;
  readonly floor: string | null;
  readonly kind: Space['kind'];
  readonly level: Space['securityLevel'];
  readonly load: number | null;
  readonly floorUse: FloorUse;
}

/** Use with its area, and the common path where the survey has it. */
export type FloorUse = Partial<Pick<Space, 'use' | 'areaFt2' | 'commonPathFt'>>;

export interface DoorRow {
  readonly mark: string;
  readonly floor: string;
  /** Key of the space on the secure side, where a credential is presented. */
  readonly from: string;
  /** Key of the space people leave from. */
  readonly to: string;
  readonly facts: FactValues;
  /** Values nobody saw, each with where it was taken from. */
  readonly assumed?: { readonly [K in FactKey]?: readonly [FactValues[K], string] };
  /** Asked on site and left without an answer. */
  readonly unknown?: readonly FactKey[];
  readonly notes?: string;
  readonly override?: { readonly candidate: string; readonly reason: string };
}

/** Every demo hour is this one, so that the files never differ between two runs. */
const surveyedAt = '2026-03-02T09:00:00Z';

export function space(
  key: string,
  name: string,
  floor: string | null,
  kind: SpaceRow['kind'],
  level: SpaceRow['level'],
  load: number | null = null,
  floorUse: FloorUse = {},
): SpaceRow {
  return { key, name, floor, kind, level, load, floorUse };
}

/** A use on so many square feet. */
export function used(use: Use, areaFt2: number, commonPathFt: number | null = null): FloorUse {
  return { use, areaFt2, commonPathFt };
}

/** Values of a preset with changes; a change to `undefined` takes the value out, so the fact was never asked. */
export function door(preset: FactValues, changes: { [K in FactKey]?: FactValues[K] | undefined } = {}) {
  const merged: Record<string, unknown> = { ...preset, ...changes };
  for (const key of Object.keys(merged)) if (merged[key] === undefined) delete merged[key];
  return merged as FactValues;
}

export function floorId(key: string): string {
  return `floor-${key}`;
}
export function spaceId(key: string): string {
  return `space-${key}`;
}
export function openingId(mark: string): string {
  return `opening-${mark.toLowerCase()}`;
}

function factsOf(row: DoorRow): Facts {
  const facts: Record<string, Fact<unknown>> = {};
  for (const [key, value] of Object.entries(row.facts)) facts[key] = known(value);
  for (const [key, entry] of Object.entries(row.assumed ?? {})) {
    if (entry) facts[key] = assumed(entry[0], entry[1]);
  }
  for (const key of row.unknown ?? []) facts[key] = unknown;
  return facts;
}

export interface BuildingRows {
  readonly id: string;
  readonly name: string;
  readonly notes: string;
  readonly building: FactValues;
  readonly floors: readonly { readonly key: string; readonly name: string; readonly level: number }[];
  readonly spaces: readonly SpaceRow[];
  readonly doors: readonly DoorRow[];
}

/** Rows → project. Throws on a space, floor or mark that does not exist: that is a slip in the script. */
export function buildProject(rows: BuildingRows): Project {
  const floors: Record<string, Floor> = {};
  for (const { key, name, level } of rows.floors) floors[floorId(key)] = { id: floorId(key), name, level };
  const spaces: Record<string, Space> = {};
  for (const row of rows.spaces) {
    const id = spaceId(row.key);
    if (spaces[id]) throw new Error(`Two spaces are called ${row.key}.`);
    const onFloor = row.floor === null ? null : floorId(row.floor);
    if (onFloor !== null && !floors[onFloor]) throw new Error(`Space ${row.key}: no floor ${row.floor}.`);
    spaces[id] = {
      ...newSpace(id, row.name),
      floorId: onFloor,
      kind: row.kind,
      securityLevel: row.level,
      occupantLoad: row.load,
      // What the demo calls outside is a street; its yards are courts.
      publicWay: row.kind === 'outside' ? true : null,
      ...row.floorUse,
    };
  }
  const openings: Record<string, Opening> = {};
  for (const row of rows.doors) {
    const id = openingId(row.mark);
    if (openings[id]) throw new Error(`Mark ${row.mark} is used twice.`);
    for (const key of [row.from, row.to]) {
      if (!spaces[spaceId(key)]) throw new Error(`Door ${row.mark}: no space ${key}.`);
    }
    if (!floors[floorId(row.floor)]) throw new Error(`Door ${row.mark}: no floor ${row.floor}.`);
    openings[id] = {
      id,
      mark: row.mark,
      floorId: floorId(row.floor),
      fromSpaceId: spaceId(row.from),
      toSpaceId: spaceId(row.to),
      facts: factsOf(row),
      notes: row.notes ?? '',
      override: row.override ? { ...row.override, by: 'Demo estimator', at: surveyedAt } : null,
    };
  }
  const building = Object.fromEntries(
    Object.entries(rows.building).map(([key, value]) => [key, known(value)]),
  );
  return {
    ...newProject(rows.id, rows.name),
    preparedBy: 'Demo data',
    jurisdiction: 'Invented city',
    notes: rows.notes,
    building: building,
    floors,
    spaces,
    openings,
  };
}
