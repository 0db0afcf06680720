import type { z } from 'zod';
import { factsSchema } from '../model/fact.ts';
import { isFactKey } from '../model/fields.ts';
import {
  amendmentSchema,
  floorSchema,
  idSchema,
  openingSchema,
  overrideSchema,
  reviewSchema,
  setNumberSchema,
  setSignatureSchema,
  spaceSchema,
} from '../model/project.ts';

/** A record that could not be read: set aside with its raw content, shown, never dropped in silence. */
export interface SetAside {
  readonly where: string;
  readonly says: string;
  readonly raw: unknown;
}

type Raw = Readonly<Record<string, unknown>>;

export const isRecord = (value: unknown): value is Raw =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/** The project without what cannot be read; that is added to `setAside`, as small a part as possible. */
export function withoutDamage(whole: Raw, setAside: SetAside[]): Raw {
  const project = withoutDropped(whole, 'project', setAside) as Raw;
  return {
    ...project,
    ...readTable('floors', 'Floor', project, setAside, wholeOr(floorSchema)),
    ...readTable('spaces', 'Space', project, setAside, readSpace),
    ...readTable('openings', 'Opening', project, setAside, readOpening),
    ...(isRecord(project['building'])
      ? { building: readFacts('Building', project['building'], setAside) }
      : {}),
    ...(Array.isArray(project['amendments'])
      ? { amendments: readAmendments(project['amendments'] as unknown[], setAside) }
      : {}),
    ...(isRecord(project['setNumbers'])
      ? { setNumbers: readSetNumbers(project['setNumbers'], setAside) }
      : {}),
  };
}

/** An entry called "__proto__", at any depth, would vanish without a word wherever its object is copied. */
function withoutDropped(value: unknown, where: string, setAside: SetAside[]): unknown {
  if (value === null || typeof value !== 'object') return value;
  let changed = false;
  const kept: [string, unknown][] = [];
  for (const [key, inner] of Object.entries(value)) {
    if (key === '__proto__') {
      setAside.push({ where: `${where}.${key}`, says: 'This name cannot be used.', raw: inner });
      changed = true;
      continue;
    }
    const clean = withoutDropped(inner, `${where}.${key}`, setAside);
    changed ||= clean !== inner;
    kept.push([key, clean]);
  }
  if (!changed) return value;
  return Array.isArray(value) ? kept.map(([, inner]) => inner) : Object.fromEntries(kept);
}

/** Undefined means that the entry as a whole was set aside. */
type ReadEntry = (where: string, raw: unknown, setAside: SetAside[]) => unknown;

function wholeOr(schema: z.ZodType): ReadEntry {
  return (where, raw, setAside) => {
    const parsed = schema.safeParse(raw);
    if (parsed.success) return raw;
    setAside.push({ where, says: inWords(parsed.error), raw });
    return undefined;
  };
}

function readTable(
  table: string,
  word: string,
  project: Raw,
  setAside: SetAside[],
  readEntry: ReadEntry,
): Raw {
  const entries = project[table];
  if (!isRecord(entries)) return {};
  const kept: Record<string, unknown> = {};
  for (const [id, raw] of Object.entries(entries)) {
    const where = `${word} ${nameOf(raw) ?? id}`;
    const key = idSchema.safeParse(id);
    if (!key.success) {
      setAside.push({ where, says: inWords(key.error), raw });
    } else if (isRecord(raw) && typeof raw['id'] === 'string' && raw['id'] !== id) {
      // Edits look an entry up by its own id; under another key they would never reach it.
      setAside.push({ where, says: `It stands under the id ${id} but calls itself ${raw['id']}.`, raw });
    } else {
      const entry = readEntry(where, raw, setAside);
      if (entry !== undefined) kept[id] = entry;
    }
  }
  return { [table]: kept };
}

function nameOf(raw: unknown): string | undefined {
  if (!isRecord(raw)) return undefined;
  const name = raw['mark'] ?? raw['name'];
  return typeof name === 'string' && name !== '' ? name : undefined;
}

/** One opening; a fact, review or choice that cannot be read is set aside alone, so the rest of it stays. */
function readOpening(where: string, raw: unknown, setAside: SetAside[]): unknown {
  const parsed = openingSchema.safeParse(raw);
  if (parsed.success) return raw;
  if (isRecord(raw) && isRecord(raw['facts'])) {
    const bad: SetAside[] = [];
    const mended = {
      ...raw,
      facts: readFacts(where, raw['facts'], bad),
      override: readPart(`${where}, choice`, overrideSchema.nullable(), raw['override'], bad),
      review: readPart(`${where}, review`, reviewSchema.nullable(), raw['review'], bad),
    };
    if (openingSchema.safeParse(mended).success) {
      setAside.push(...bad);
      return mended;
    }
  }
  setAside.push({ where, says: inWords(parsed.error), raw });
  return undefined;
}

/** One space; a use, area or path that cannot be read is set aside alone, so openings keep the space they join. */
function readSpace(where: string, raw: unknown, setAside: SetAside[]): unknown {
  const parsed = spaceSchema.safeParse(raw);
  if (parsed.success) return raw;
  if (isRecord(raw)) {
    const bad: SetAside[] = [];
    const { use, areaFt2, commonPathFt } = spaceSchema.shape;
    const mended = {
      ...raw,
      use: readPart(`${where}, use`, use, raw['use'], bad),
      areaFt2: readPart(`${where}, area`, areaFt2, raw['areaFt2'], bad),
      commonPathFt: readPart(`${where}, common path`, commonPathFt, raw['commonPathFt'], bad),
    };
    if (spaceSchema.safeParse(mended).success) {
      setAside.push(...bad);
      return mended;
    }
  }
  setAside.push({ where, says: inWords(parsed.error), raw });
  return undefined;
}

function readSetNumbers(numbers: Raw, setAside: SetAside[]): Raw {
  const kept: Record<string, unknown> = {};
  for (const [signature, raw] of Object.entries(numbers)) {
    const key = setSignatureSchema.safeParse(signature);
    const number = setNumberSchema.safeParse(raw);
    const bad = key.error ?? number.error;
    if (bad) setAside.push({ where: `Set number of ${signature}`, says: inWords(bad), raw });
    else kept[signature] = raw;
  }
  return kept;
}

function readPart(where: string, schema: z.ZodType, raw: unknown, setAside: SetAside[]): unknown {
  const parsed = schema.safeParse(raw);
  if (parsed.success) return raw;
  // An absent part holds nothing that could be lost.
  if (raw !== undefined) setAside.push({ where, says: inWords(parsed.error), raw });
  return null;
}

function readFacts(where: string, facts: Raw, setAside: SetAside[]): Raw {
  const kept: Record<string, unknown> = {};
  for (const [key, raw] of Object.entries(facts)) {
    // A key that this version does not know was written by a newer one and is carried along.
    const parsed = isFactKey(key) ? factsSchema.safeParse({ [key]: raw }) : undefined;
    if (parsed?.success === false) {
      setAside.push({ where: `${where}, ${key}`, says: inWords(parsed.error), raw });
    } else kept[key] = raw;
  }
  return kept;
}

function readAmendments(list: readonly unknown[], setAside: SetAside[]): readonly unknown[] {
  const seen = new Set<unknown>();
  return list.filter((raw, index) => {
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

function inWords(error: z.ZodError): string {
  return error.issues
    .map((issue) => (issue.path.length > 0 ? `${issue.path.join('.')}: ${issue.message}` : issue.message))
    .join('; ');
}
