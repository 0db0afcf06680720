import type { z } from 'zod';
import {
  ibcEditions,
  necEditions,
  nfpa101Editions,
  nfpa72Editions,
  codeBasisSchema,
  defaultBasis,
} from '../codes/basis.ts';
import { bidSchema, itemEntrySchema, noBid, priceSchema } from '../model/bid.ts';
import { factsSchema } from '../model/fact.ts';
import { isFactKey } from '../model/fields.ts';
import { historySchema } from '../model/history.ts';
import { newProject } from '../model/newProject.ts';
import { idSchema, longestName } from '../model/ids.ts';
import {
  amendmentSchema,
  floorSchema,
  hardwareSetSchema,
  longestMark,
  openingSchema,
  overrideSchema,
  projectSchema,
  scoreParts,
  type SetAside,
  setAsideSchema,
  spaceSchema,
  preferenceSchema,
  type Weights,
  weightsSchema,
} from '../model/project.ts';
import { floorPlanSchema, pinSchema } from '../model/floorPlan.ts';
import { standardSchema } from '../model/standard.ts';
import { photoSchema } from '../model/photo.ts';
import { closetSchema, productSchema, runSchema, supplySchema } from '../model/power.ts';
import { remarkSchema, verdictSchema } from '../model/verdict.ts';
import { checked, inWords } from './plainWords.ts';

type Raw = Readonly<Record<string, unknown>>;

export const isRecord = (value: unknown): value is Raw =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/** The project without what cannot be read; that is added to `setAside`, as small a part as possible. */
export function withoutDamage(whole: Raw, setAside: SetAside[]): Raw {
  const { setAside: before, ...rest } = whole;
  const project = withoutDropped(rest, 'project', setAside) as Raw;
  return {
    ...project,
    ...readFrame(project, setAside),
    ...readTable('floors', 'Floor', project, setAside, readFloor),
    ...readTable('spaces', 'Space', project, setAside, readSpace),
    ...readTable('openings', 'Opening', project, setAside, readOpening),
    ...readTable('verdicts', 'Verdict', project, setAside, wholeOr(verdictSchema)),
    verdictIndex: readIndex(recordOf('verdictIndex', project, setAside), setAside),
    ...readTable('remarks', 'Remark', project, setAside, wholeOr(remarkSchema)),
    ...readTable('photos', 'Photo', project, setAside, readPhoto),
    ...readTable('plans', 'Floor plan', project, setAside, readPlan),
    ...readTable('pins', 'Pin', project, setAside, wholeOr(pinSchema)),
    building: readFacts('Building', recordOf('building', project, setAside), setAside),
    usual: readFacts('The usual', recordOf('usual', project, setAside), setAside),
    amendments: readAmendments(project['amendments'], setAside),
    ...readTable('closets', 'Closet', project, setAside, readCloset),
    ...readTable('supplies', 'Supply', project, setAside, readSupply),
    ...readTable('standards', 'Owner’s standard', project, setAside, wholeOr(standardSchema)),
    ...readTable('productBook', 'Product', project, setAside, wholeOr(productSchema)),
    ...readTable('runs', 'Run', project, setAside, readRun),
    ...readTable('hardwareSets', 'Hardware set', project, setAside, wholeOr(hardwareSetSchema)),
    ...readTable('prices', 'Price', project, setAside, wholeOr(priceSchema)),
    ...readTable('itemBook', 'Item', project, setAside, wholeOr(itemEntrySchema)),
    bid: readBid(recordOf('bid', project, setAside), setAside),
    ...readSetAside(before, setAside),
    ...readHistory(project, setAside),
  };
}

/** Without it nothing of the project is lost; the next merge only has to ask about every difference. */
function readHistory(project: Raw, setAside: SetAside[]): Raw {
  if (project['history'] === undefined) return {};
  return { history: wholeOr(historySchema)('History', project['history'], setAside) };
}

/** Without a single table there is nothing that could be opened. */
export function holdsNothing(project: Raw): boolean {
  return !['floors', 'spaces', 'openings'].some((table) => isRecord(project[table]));
}

function readFrame(project: Raw, setAside: SetAside[]): Raw {
  const fresh = newProject('recovered', 'Project without a name');
  const text = (key: 'preparedBy' | 'jurisdiction' | 'name', word: string) =>
    readName(word, projectSchema.shape[key], project[key], fresh[key], setAside);
  const { id, notes, letter } = projectSchema.shape;
  return {
    id: readPart('Project, id', id, project['id'], setAside, fresh.id),
    name: text('name', 'Project, name'),
    preparedBy: text('preparedBy', 'Project, prepared by'),
    jurisdiction: text('jurisdiction', 'Project, jurisdiction'),
    notes: readPart('Project, notes', notes, project['notes'], setAside, fresh.notes),
    letter: readPart('Project, letter', letter, project['letter'], setAside, fresh.letter),
    basis: readBasis(project['basis'], setAside),
    weights: readWeights(project['weights'], fresh.weights, setAside),
  };
}

const newest = {
  ibc: ibcEditions.at(-1),
  nfpa101: nfpa101Editions.at(-1),
  nec: necEditions.at(-1),
  nfpa72: nfpa72Editions.at(-1),
} as const;

/**
 * A book with an edition nobody knows here was adopted all the same: leaving it out would let doors off. It goes by
 * the newest edition known until someone chooses.
 */
function readBasis(raw: unknown, setAside: SetAside[]): Raw {
  const basis: Raw = isRecord(raw) ? raw : {};
  if (!isRecord(raw)) {
    const says = `It cannot be read. The default basis is used until someone chooses.`;
    setAside.push({ where: 'Code basis', says, raw: raw ?? null });
    return { ...defaultBasis };
  }
  const books = Object.keys(newest) as (keyof typeof newest)[];
  const read = books.map((book) => {
    const value = basis[book];
    if (checked(codeBasisSchema.shape[book], value).success) return [book, value];
    const edition = value === undefined ? defaultBasis[book] : newest[book];
    const says = `This edition is not known here. Decisions go by ${edition ?? 'none'} until someone chooses.`;
    setAside.push({ where: `Code basis, ${book}`, says, raw: value ?? null });
    return [book, edition];
  });
  return { ...basis, ...Object.fromEntries(read) };
}

function readWeights(raw: unknown, usual: Weights, setAside: SetAside[]): Raw {
  if (!isRecord(raw)) {
    setAside.push({
      where: 'Weights',
      says: 'They cannot be read. The usual ones are used.',
      raw: raw ?? null,
    });
    return usual;
  }
  const read = scoreParts.map((part) => {
    const parsed = checked(weightsSchema.shape[part], raw[part]);
    if (parsed.success) return [part, raw[part]];
    const says = `${inWords(parsed.error)} The usual weight is used.`;
    setAside.push({ where: `Weights, ${part}`, says, raw: raw[part] ?? null });
    return [part, usual[part]];
  });
  return { ...raw, ...Object.fromEntries(read), ...readPreferred(raw, setAside) };
}

/** Device by device: one that cannot be read is set aside alone. */
function readPreferred({ preferred }: Raw, setAside: SetAside[]): Raw {
  if (preferred === undefined) return {};
  if (!isRecord(preferred)) {
    setAside.push({
      where: 'Weights, preferred devices',
      says: 'It should be a list by device.',
      raw: preferred,
    });
    return { preferred: undefined };
  }
  const kept = Object.entries(preferred).filter(([device, one]) => {
    const parsed = checked(preferenceSchema, one);
    if (!parsed.success)
      setAside.push({ where: `Weights, preferred ${device}`, says: inWords(parsed.error), raw: one });
    return parsed.success;
  });
  return { preferred: Object.fromEntries(kept) };
}

/** What was set aside before travels along; only a list that is none is set aside itself. */
function readSetAside(raw: unknown, setAside: SetAside[]): Raw {
  if (raw === undefined) return {};
  if (!Array.isArray(raw)) {
    setAside.push({ where: 'Set aside', says: 'It should be a list.', raw });
    return {};
  }
  const kept = (raw as unknown[]).filter((one) => {
    if (checked(setAsideSchema, one).success) return true;
    setAside.push({ where: 'Set aside', says: 'It is not written as this list is.', raw: one });
    return false;
  });
  return { setAside: kept };
}

function recordOf(key: string, project: Raw, setAside: SetAside[]): Raw {
  const raw = project[key];
  if (isRecord(raw)) return raw;
  const says = raw === undefined ? 'It is missing.' : 'It should be a record with named entries.';
  setAside.push({ where: `project.${key}`, says, raw: raw ?? null });
  return {};
}

/** A name that is only too long is shortened, so that what carries it stays. */
function readName(where: string, schema: z.ZodType, raw: unknown, instead: string, setAside: SetAside[]) {
  const limit = where.startsWith('Opening') ? longestMark : longestName;
  if (typeof raw === 'string' && raw.length > limit) {
    setAside.push({ where, says: `It is longer than ${limit} characters and was cut off there.`, raw });
    // Never between the two halves of one sign.
    return raw.slice(0, limit).replace(/[\uD800-\uDBFF]$/, '');
  }
  return readPart(where, schema, raw, setAside, instead);
}

/** Deeper than anything this program writes; what lies below is kept as text. */
const deepest = 64;

/**
 * An entry called "__proto__", at any depth, would vanish without a word wherever its object is copied; one nested
 * without an end would stop every function that walks over the project.
 */
function withoutDropped(value: unknown, where: string, setAside: SetAside[], level = 0): unknown {
  if (value === null || typeof value !== 'object') return value;
  if (level > deepest) {
    setAside.push({
      where: where.split('.').slice(0, 5).join('.'),
      says: `It is nested more than ${deepest} levels deep. It is kept as text.`,
      raw: deepText(value),
    });
    return null;
  }
  let changed = false;
  const kept: [string, unknown][] = [];
  for (const [key, inner] of Object.entries(value)) {
    if (key === '__proto__') {
      setAside.push({ where: `${where}.${key}`, says: 'This name cannot be used.', raw: inner });
      changed = true;
      continue;
    }
    const clean = withoutDropped(inner, `${where}.${key}`, setAside, level + 1);
    changed ||= clean !== inner;
    kept.push([key, clean]);
  }
  if (!changed) return value;
  return Array.isArray(value) ? kept.map(([, inner]) => inner) : Object.fromEntries(kept);
}

/** JSON of any depth, written without a function that calls itself. */
function deepText(whole: object): string {
  const parts: string[] = [];
  const todo: (string | { readonly value: unknown })[] = [{ value: whole }];
  for (let next = todo.pop(); next !== undefined; next = todo.pop()) {
    if (typeof next === 'string') {
      parts.push(next);
      continue;
    }
    const { value } = next;
    if (value === null || typeof value !== 'object') {
      parts.push(JSON.stringify(value) ?? 'null');
      continue;
    }
    const list = Array.isArray(value);
    parts.push(list ? '[' : '{');
    todo.push(list ? ']' : '}');
    Object.entries(value)
      .toReversed()
      .forEach(([key, inner], index) => {
        if (index > 0) todo.push(',');
        todo.push({ value: inner });
        if (!list) todo.push(`${JSON.stringify(key)}:`);
      });
  }
  return parts.join('');
}

/** Undefined means that the entry as a whole was set aside. */
type ReadEntry = (where: string, raw: unknown, setAside: SetAside[]) => unknown;

function wholeOr(schema: z.ZodType): ReadEntry {
  return (where, raw, setAside) => {
    const parsed = checked(schema, raw);
    if (parsed.success) return raw;
    setAside.push({ where, says: inWords(parsed.error), raw });
    return undefined;
  };
}

/** A record with its bad parts mended, if that is enough for the schema; otherwise it is set aside as a whole. */
function mendedOr(
  schema: z.ZodType,
  where: string,
  raw: unknown,
  setAside: SetAside[],
  mend: (raw: Raw, bad: SetAside[]) => Raw,
): unknown {
  const parsed = checked(schema, raw);
  if (parsed.success) return raw;
  if (isRecord(raw)) {
    const bad: SetAside[] = [];
    const mended = { ...raw, ...mend(raw, bad) };
    if (schema.safeParse(mended).success) {
      setAside.push(...bad);
      return mended;
    }
  }
  setAside.push({ where, says: inWords(parsed.error), raw });
  return undefined;
}

function readTable(
  table: string,
  word: string,
  project: Raw,
  setAside: SetAside[],
  readEntry: ReadEntry,
): Raw {
  const kept: Record<string, unknown> = {};
  for (const [id, raw] of Object.entries(recordOf(table, project, setAside))) {
    const where = `${word} ${nameOf(raw) ?? id}`.slice(0, longestName);
    const bad: SetAside[] = [];
    const key = checked(idSchema, id);
    if (!key.success) {
      bad.push({ where, says: inWords(key.error), raw });
    } else if (isRecord(raw) && typeof raw['id'] === 'string' && raw['id'] !== id) {
      // Edits look an entry up by its own id; under another key they would never reach it.
      bad.push({ where, says: `It is filed under the id ${id} but its own id is ${raw['id']}.`, raw });
    } else {
      const entry = readEntry(where, raw, bad);
      if (entry !== undefined) kept[id] = entry;
    }
    const owner = table === 'openings' && Object.hasOwn(kept, id) ? { openingId: id } : {};
    setAside.push(...bad.map((one) => ({ ...one, ...owner })));
  }
  return { [table]: kept };
}

function nameOf(raw: unknown): string | undefined {
  if (!isRecord(raw)) return undefined;
  const name = raw['mark'] ?? raw['name'];
  return typeof name === 'string' && name !== '' ? name : undefined;
}

const readFloor: ReadEntry = (where, raw, setAside) =>
  mendedOr(floorSchema, where, raw, setAside, (floor, bad) => ({
    name: readName(`${where}, name`, floorSchema.shape.name, floor['name'], '', bad),
  }));

/** One opening; a fact, review or choice that cannot be read is set aside alone, so the rest of it stays. */
const readOpening: ReadEntry = (where, raw, setAside) => {
  if (!isRecord(raw) || !('review' in raw)) return readOpeningParts(where, raw, setAside);
  const { review, ...rest } = raw;
  const says = 'It is not written as a mark of a reviewer is, so it could not become an entry of the log.';
  setAside.push({ where: `${where}, review`, says, raw: review });
  return readOpeningParts(where, rest, setAside);
};

const readOpeningParts: ReadEntry = (where, raw, setAside) =>
  mendedOr(openingSchema, where, raw, setAside, (opening, bad) => {
    const { shape } = openingSchema;
    const part = (word: string, key: keyof typeof shape, schema: z.ZodType, instead: unknown = null) =>
      readPart(`${where}, ${word}`, schema, opening[key], bad, instead);
    return {
      mark: readName(where, shape.mark, opening['mark'], '', bad),
      floorId: part('floor', 'floorId', shape.floorId),
      fromSpaceId: part('from', 'fromSpaceId', shape.fromSpaceId),
      toSpaceId: part('to', 'toSpaceId', shape.toSpaceId),
      notes: part('notes', 'notes', shape.notes, ''),
      ...(isRecord(opening['facts']) ? { facts: readFacts(where, opening['facts'], bad) } : {}),
      override: part('choice', 'override', overrideSchema.nullable()),
    };
  });

function readIndex(index: Raw, setAside: SetAside[]): Raw {
  return Object.fromEntries(
    Object.entries(index).filter(([id, raw]) => {
      if (typeof raw === 'string') return true;
      setAside.push({ where: `Index of verdicts, ${id}`, says: 'It should be a text.', raw });
      return false;
    }),
  );
}

/** One space; a use, area or path that cannot be read is set aside alone, so openings keep the space they join. */
const readSpace: ReadEntry = (where, raw, setAside) =>
  mendedOr(spaceSchema, where, raw, setAside, (space, bad) => {
    const { shape } = spaceSchema;
    const part = (word: string, key: keyof typeof shape) =>
      readPart(`${where}, ${word}`, shape[key], space[key], bad);
    const optional = (word: string, key: 'useFrom' | 'occupantLoadFrom') =>
      key in space ? { [key]: readPart(`${where}, ${word}`, shape[key], space[key], bad, undefined) } : {};
    return {
      name: readName(`${where}, name`, shape.name, space['name'], '', bad),
      ...optional('where its use comes from', 'useFrom'),
      ...optional('where its load comes from', 'occupantLoadFrom'),
      floorId: part('floor', 'floorId'),
      securityLevel: part('security level', 'securityLevel'),
      occupantLoad: part('occupant load', 'occupantLoad'),
      use: part('use', 'use'),
      areaFt2: part('area', 'areaFt2'),
      commonPathFt: part('common path', 'commonPathFt'),
      publicWay: part('public way', 'publicWay'),
    };
  });

const readCloset: ReadEntry = (where, raw, setAside) =>
  mendedOr(closetSchema, where, raw, setAside, (closet, bad) => {
    const { shape } = closetSchema;
    const part = (word: string, key: keyof typeof shape, instead: unknown = null) =>
      readPart(`${where}, ${word}`, shape[key], closet[key], bad, instead);
    return {
      name: readName(`${where}, name`, shape.name, closet['name'], '', bad),
      floorId: part('floor', 'floorId'),
      spaceId: part('space', 'spaceId'),
      linePower: part('line power', 'linePower'),
      temperatureC: part('temperature', 'temperatureC'),
      notes: part('notes', 'notes', ''),
    };
  });

/** One supply; its rating cannot be made up, what is beside it can be asked again. */
const readSupply: ReadEntry = (where, raw, setAside) =>
  mendedOr(supplySchema, where, raw, setAside, (supply, bad) => {
    const { shape } = supplySchema;
    return {
      name: readName(`${where}, name`, shape.name, supply['name'], '', bad),
      closetId: readPart(`${where}, closet`, shape.closetId, supply['closetId'], bad),
      peakAmps: readPart(`${where}, peak`, shape.peakAmps, supply['peakAmps'], bad),
      batteryAh: readPart(`${where}, battery`, shape.batteryAh, supply['batteryAh'], bad),
    };
  });

/** Which picture it is and of which opening cannot be made up; what is said about it can be said again. */
const readPhoto: ReadEntry = (where, raw, setAside) =>
  mendedOr(photoSchema, where, raw, setAside, (photo, bad) => {
    const { shape } = photoSchema;
    return {
      about: readPart(`${where}, what it shows`, shape.about, photo['about'], bad, ''),
      caption: readPart(`${where}, caption`, shape.caption, photo['caption'], bad, ''),
      arrows: readPart(`${where}, arrows`, shape.arrows, photo['arrows'], bad, {}),
      by: readPart(`${where}, by`, shape.by, photo['by'], bad, ''),
    };
  });

/** A scale that cannot be read is asked again; the drawing and its pins stay. */
const readPlan: ReadEntry = (where, raw, setAside) =>
  mendedOr(floorPlanSchema, where, raw, setAside, (plan, bad) => {
    const { shape } = floorPlanSchema;
    return {
      name: readPart(`${where}, name`, shape.name, plan['name'], bad, ''),
      scale: readPart(`${where}, scale`, shape.scale, plan['scale'], bad),
    };
  });

/** A length, closet or supply that cannot be read is set aside alone. */
const readRun: ReadEntry = (where, raw, setAside) =>
  mendedOr(runSchema, where, raw, setAside, (run, bad) => {
    const { shape } = runSchema;
    return {
      lengthFt: readPart(`${where}, length`, shape.lengthFt, run['lengthFt'], bad),
      closetId: readPart(`${where}, closet`, shape.closetId, run['closetId'], bad),
      supplyId: readPart(`${where}, supply`, shape.supplyId, run['supplyId'], bad),
    };
  });

/** Terms of the bid one by one: what cannot be read goes back to what a new project has. */
function readBid(bid: Raw, setAside: SetAside[]): Raw {
  const parts = Object.entries(bidSchema.shape).map(([key, schema]) => [
    key,
    readPart(`Bid, ${key}`, schema, bid[key], setAside, noBid[key]),
  ]);
  return { ...bid, ...Object.fromEntries(parts) };
}

function readPart(
  where: string,
  schema: z.ZodType,
  raw: unknown,
  setAside: SetAside[],
  instead: unknown = null,
): unknown {
  const parsed = checked(schema, raw);
  if (parsed.success) return raw;
  setAside.push({ where, says: inWords(parsed.error), raw: raw ?? null });
  return instead;
}

function readFacts(where: string, facts: Raw, setAside: SetAside[]): Raw {
  const kept: Record<string, unknown> = {};
  for (const [key, raw] of Object.entries(facts)) {
    // A key that this version does not know was written by a newer one and is carried along.
    const parsed = isFactKey(key) ? checked(factsSchema, { [key]: raw }) : undefined;
    if (parsed?.success === false) {
      setAside.push({ where: `${where}, ${key}`, says: inWords(parsed.error), raw });
    } else kept[key] = raw;
  }
  return kept;
}

function readAmendments(list: unknown, setAside: SetAside[]): readonly unknown[] {
  if (!Array.isArray(list)) {
    const says = list === undefined ? 'They are missing.' : 'They should be a list.';
    setAside.push({ where: 'Amendments', says, raw: list ?? null });
    return [];
  }
  const seen = new Set<unknown>();
  return (list as unknown[]).filter((raw, index) => {
    const where = `Amendment ${index + 1}`;
    if (wholeOr(amendmentSchema)(where, raw, setAside) === undefined) return false;
    const { id } = raw as { readonly id: string };
    if (seen.has(id)) {
      setAside.push({ where, says: `Its id ${id} is used twice.`, raw });
      return false;
    }
    seen.add(id);
    return true;
  });
}
