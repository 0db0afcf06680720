import type { z } from 'zod';
import type { Edit } from '../commands/command.ts';
import { type Closet, closetSchema, type Run, runSchema, type Supply, supplySchema } from '../model/power.ts';
import type { Project } from '../model/project.ts';
import { someMarks } from '../power/figures.ts';
import { compareMarks } from '../model/project.ts';
import { parseFeet } from '../units/area.ts';
import { type Read, refuse } from './places.ts';

/** What is typed about closets, supplies and runs; texts stay texts until they are read here. */
export interface ClosetDraft {
  readonly name: string;
  readonly floorId: string;
  readonly spaceId: string;
  readonly linePower: string;
  readonly temperatureC: string;
  readonly notes: string;
}
export interface SupplyDraft {
  readonly name: string;
  readonly closetId: string;
  readonly volts: string;
  readonly current: string;
  readonly amps: string;
  readonly peakAmps: string;
  readonly outputs: string;
  readonly class2: string;
  readonly batteryAh: string;
  readonly holdsVolts: string;
  readonly fedBy: string;
}

const asText = (value: number | null) => (value === null ? '' : String(value));
const asYesNo = (value: boolean | null) => (value === null ? '' : value ? 'yes' : 'no');

export const emptyCloset: ClosetDraft = {
  name: '',
  floorId: '',
  spaceId: '',
  linePower: '',
  temperatureC: '',
  notes: '',
};
export const emptySupply: SupplyDraft = {
  name: '',
  closetId: '',
  volts: '24',
  current: 'dc',
  amps: '',
  peakAmps: '',
  outputs: '8',
  class2: 'yes',
  batteryAh: '',
  holdsVolts: 'no',
  fedBy: 'linePower',
};
export const closetDraftOf = (closet: Closet): ClosetDraft => ({
  name: closet.name,
  floorId: closet.floorId ?? '',
  spaceId: closet.spaceId ?? '',
  linePower: asYesNo(closet.linePower),
  temperatureC: asText(closet.temperatureC),
  notes: closet.notes,
});
export const supplyDraftOf = (supply: Supply): SupplyDraft => ({
  name: supply.name,
  closetId: supply.closetId ?? '',
  volts: String(supply.volts),
  current: supply.current,
  amps: String(supply.amps),
  peakAmps: asText(supply.peakAmps),
  outputs: String(supply.outputs),
  class2: asYesNo(supply.class2),
  batteryAh: asText(supply.batteryAh),
  holdsVolts: asYesNo(supply.holdsVolts),
  fedBy: supply.fedBy,
});

/** The choices of the two forms, with their words. */
export const yesNoUnknown = [
  ['', 'Not known'],
  ['yes', 'Yes'],
  ['no', 'No'],
] as const;
export const yesNoChoices = [
  ['yes', 'Yes'],
  ['no', 'No'],
] as const;
export const currentChoices = [
  ['dc', 'DC'],
  ['ac', 'AC'],
] as const;
export const feedChoices = [
  ['linePower', 'Branch circuit'],
  ['fireAlarmPanel', 'Fire alarm panel'],
] as const;

const noUnit = /^(-?\d+(?:\.\d+)?) ?(?:A|V|Ah|°C|C)?$/i;
/** A figure, with or without its unit. Empty is null; what cannot be read is the text itself, which no schema takes. */
export function figureIn(text: string): number | string | null {
  const plain = text.trim().replace('−', '-');
  if (plain === '') return null;
  const found = noUnit.exec(plain);
  return found ? Number(found[1]) : plain;
}

const orNull = (text: string) => (text === '' ? null : text);
const yes = (text: string) => (text === '' ? null : text === 'yes');

/** The first field that does not fit, with its sentence, or the thing itself. */
export function fitted<T>(schema: z.ZodType, value: unknown): Read<T> {
  const parsed = schema.safeParse(value);
  if (parsed.success) return { ok: true, value: value as T };
  const [issue] = parsed.error.issues;
  const field = String(issue?.path[0] ?? '');
  const says =
    issue?.code === 'invalid_type' && !issue.message.endsWith('.')
      ? 'Write a number, or leave it empty where it is not known.'
      : (issue?.message ?? 'This does not fit.');
  return refuse(field, says);
}

export function readCloset(project: Project, id: string, draft: ClosetDraft): Read<Closet> {
  const name = draft.name.trim();
  const twin = Object.values(project.closets).find((one) => one.id !== id && one.name === name);
  if (twin) return refuse('name', `There is a closet ${name} already.`);
  return fitted<Closet>(closetSchema, {
    ...project.closets[id],
    id,
    name,
    floorId: orNull(draft.floorId),
    spaceId: orNull(draft.spaceId),
    linePower: yes(draft.linePower),
    temperatureC: figureIn(draft.temperatureC),
    notes: draft.notes.trim(),
  });
}

export function readSupply(project: Project, id: string, draft: SupplyDraft): Read<Supply> {
  const name = draft.name.trim();
  const twin = Object.values(project.supplies).find((one) => one.id !== id && one.name === name);
  if (twin) return refuse('name', `There is a supply ${name} already.`);
  return fitted<Supply>(supplySchema, {
    ...project.supplies[id],
    id,
    name,
    closetId: orNull(draft.closetId),
    volts: figureIn(draft.volts),
    current: draft.current,
    amps: figureIn(draft.amps),
    peakAmps: figureIn(draft.peakAmps),
    outputs: figureIn(draft.outputs),
    class2: draft.class2 === 'yes',
    batteryAh: figureIn(draft.batteryAh),
    holdsVolts: draft.holdsVolts === 'yes',
    fedBy: draft.fedBy,
  });
}

/** A typed run; empty goes back to what was surveyed, or to the plan. A sentence where it cannot be read. */
export function runLengthEdit(openingId: string, text: string): Read<Edit> {
  if (text.trim() === '')
    return { ok: true, value: { kind: 'setRun', id: openingId, field: 'lengthFt', value: null } };
  const negative = /^\s*[-−]/.test(text);
  const read = negative ? undefined : parseFeet(text);
  if (read && !read.ok) return refuse('lengthFt', read.says);
  const value = read?.ok ? read.feet : -1;
  const checked = fitted<Run>(runSchema.pick({ lengthFt: true }), { lengthFt: { value } });
  if (!checked.ok) return checked;
  return { ok: true, value: { kind: 'setRun', id: openingId, field: 'lengthFt', value: { value } } };
}

/** Closet and supply of one opening; a supply brings its closet along. */
export function feedEdits(project: Project, openingId: string, supplyId: string): readonly Edit[] {
  const supply = project.supplies[supplyId];
  const edits: Edit[] = [
    {
      kind: 'setRun',
      id: openingId,
      field: 'supplyId',
      value: supplyId === '' ? null : { value: supplyId },
    },
  ];
  if (supply && supply.closetId !== null)
    edits.push({ kind: 'setRun', id: openingId, field: 'closetId', value: { value: supply.closetId } });
  return edits;
}
export function closetEdit(openingId: string, closetId: string): Edit {
  return {
    kind: 'setRun',
    id: openingId,
    field: 'closetId',
    value: closetId === '' ? null : { value: closetId },
  };
}

/** Said before a closet goes: what still hangs on it. Nothing assigned is lost; undefined where nothing is. */
export function hangsOnCloset(project: Project, id: string): string | undefined {
  const supplies = Object.values(project.supplies).filter(({ closetId }) => closetId === id);
  const marks = Object.values(project.runs)
    .filter(({ closetId }) => closetId?.value === id)
    .map((run) => project.openings[run.id]?.mark ?? run.id)
    .toSorted(compareMarks);
  if (supplies.length + marks.length === 0) return undefined;
  const parts = [
    supplies.length > 0 ? `holds ${supplies.map(({ name }) => name).join(', ')}` : '',
    marks.length > 0 ? `feeds ${someMarks(marks)}` : '',
  ].filter((part) => part !== '');
  return `${project.closets[id]?.name ?? 'The closet'} still ${parts.join(' and ')}. They stay as they are and are listed until they go to another closet.`;
}
