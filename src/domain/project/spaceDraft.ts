import { useFactors } from '../egress/occupantFactors.ts';
import { loadOf, type SpaceLoad } from '../egress/spaceLoad.ts';
import { newSpace } from '../model/newProject.ts';
import { type Project, securityLevels, type Space, spaceSchema } from '../model/project.ts';
import { type Use, uses } from '../model/uses.ts';
import { areaInFeet, parseArea, parseFeet } from '../units/area.ts';
import type { Told } from '../units/told.ts';
import { type Read, refuse } from './places.ts';

/** A space as typed; texts stay texts until they are read here. */
export interface SpaceDraft {
  readonly name: string;
  readonly floorId: string;
  readonly kind: Space['kind'];
  readonly securityLevel: string;
  readonly occupantLoad: string;
  readonly use: string;
  readonly area: string;
  readonly commonPath: string;
  /** Asked of the outside alone: “yes”, “no”, or empty while nobody said. */
  readonly publicWay: string;
}

export const emptySpace: SpaceDraft = {
  name: '',
  floorId: '',
  kind: 'room',
  securityLevel: '',
  occupantLoad: '',
  use: '',
  area: '',
  commonPath: '',
  publicWay: '',
};

const asText = (value: number | null) => (value === null ? '' : String(value));

export function spaceDraftOf(space: Space): SpaceDraft {
  return {
    name: space.name,
    floorId: space.floorId ?? '',
    kind: space.kind,
    securityLevel: space.securityLevel ?? '',
    occupantLoad: asText(space.occupantLoad),
    use: space.use ?? '',
    area: asText(space.areaFt2),
    commonPath: asText(space.commonPathFt),
    publicWay: space.publicWay === null ? '' : space.publicWay ? 'yes' : 'no',
  };
}

export function readSpace(project: Project, id: string, draft: SpaceDraft): Read<Space> {
  const name = draft.name.trim();
  if (name === '') return refuse('name', 'A space needs a name.');
  const floorId = draft.floorId === '' ? null : draft.floorId;
  const twin = Object.values(project.spaces).find(
    (one) => one.id !== id && one.name === name && one.floorId === floorId,
  );
  if (twin) return refuse('name', `There is a space ${name} on that floor already.`);
  const read = readAmounts(draft);
  if (!read.ok) return read;
  const before = project.spaces[id] ?? newSpace(id, name);
  return {
    ok: true,
    value: {
      ...withOrigins(before, read.value),
      ...read.value,
      name,
      floorId,
      kind: draft.kind,
      publicWay: draft.kind !== 'outside' || draft.publicWay === '' ? null : draft.publicWay === 'yes',
      securityLevel: securityLevels.find((level) => level === draft.securityLevel) ?? null,
    },
  };
}

/** What a person changes no longer comes from a model. */
function withOrigins(before: Space, now: Pick<Space, 'use' | 'occupantLoad'>): Space {
  const { useFrom, occupantLoadFrom, ...rest } = before;
  return {
    ...rest,
    ...(useFrom === undefined || now.use !== before.use ? {} : { useFrom }),
    ...(occupantLoadFrom === undefined || now.occupantLoad !== before.occupantLoad
      ? {}
      : { occupantLoadFrom }),
  };
}

type Amounts = Pick<Space, 'occupantLoad' | 'use' | 'areaFt2' | 'commonPathFt'>;

function readAmounts(draft: SpaceDraft): Read<Amounts> {
  const load = draft.occupantLoad.trim();
  if (load !== '' && !/^\d{1,6}$/.test(load)) {
    return refuse('occupantLoad', 'The occupant load is a whole number of people, or empty when not known.');
  }
  const area = readAmount('areaFt2', draft.area, (text) => {
    const read = parseArea(text);
    return read.ok ? { ok: true, amount: read.ft2 } : read;
  });
  if (!area.ok) return refuse('area', area.says);
  const path = readAmount('commonPathFt', draft.commonPath, (text) => {
    const read = parseFeet(text);
    return read.ok ? { ok: true, amount: read.feet } : read;
  });
  if (!path.ok) return refuse('commonPath', path.says);
  return {
    ok: true,
    value: {
      occupantLoad: load === '' ? null : Number(load),
      use: uses.find((use) => use === draft.use) ?? null,
      areaFt2: area.amount,
      commonPathFt: path.amount,
    },
  };
}

type Amount<A> = Told<{ amount: A }>;

function readAmount(
  field: 'areaFt2' | 'commonPathFt',
  text: string,
  read: (text: string) => Amount<number>,
): Amount<number | null> {
  if (text.trim() === '') return { ok: true, amount: null };
  const found = read(text);
  if (!found.ok) return found;
  const checked = spaceSchema.shape[field].safeParse(found.amount);
  if (checked.success) return found;
  return { ok: false, says: checked.error.issues[0]?.message ?? 'This does not fit.' };
}

/** Load of what is typed so far, shown before it is kept; undefined while a figure cannot be read. */
export function loadOfDraft(project: Project, draft: SpaceDraft): SpaceLoad | undefined {
  const read = readAmounts(draft);
  return read.ok ? loadOf(read.value, project.basis) : undefined;
}

/** Uses to choose from, as the table of the adopted edition lists them. */
export function useChoices(): readonly (readonly [use: Use, name: string])[] {
  return uses.map((use) => [use, useFactors[use].name] as const);
}
/** "Classroom, 1,120 ft²"; undefined where neither is known. */
export function useAndAreaInWords({ use, areaFt2 }: Pick<Space, 'use' | 'areaFt2'>): string | undefined {
  if (use === null) return areaFt2 === null ? undefined : `${areaInFeet(areaFt2)}, use not known`;
  const { name } = useFactors[use];
  return areaFt2 === null ? `${name}, area not known` : `${name}, ${areaInFeet(areaFt2)}`;
}

/** Where leaving ends, asked of a space of the kind “outside”. */
export const publicWayChoices: readonly (readonly [value: 'yes' | 'no', label: string])[] = [
  ['yes', 'At the public way'],
  ['no', 'Not here: a yard that must itself be left'],
];
