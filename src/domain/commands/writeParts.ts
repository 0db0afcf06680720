import type { Project } from '../model/project.ts';
import { addressOf, frame, isPlain, namesOf } from '../model/parts.ts';

/** A part of the project by its address; without `value` it is removed. */
export interface Part {
  readonly record: string;
  readonly field: string;
  readonly value?: unknown;
}

type Draft = Record<string, unknown>;

/** The project with parts written; nothing of the old one is touched, and each object is copied once. */
export function writeParts(project: Project, parts: readonly Part[]): Project {
  const own = new Set<unknown>();
  const copied = (thing: unknown): Draft | unknown[] => {
    if (own.has(thing)) return thing as Draft | unknown[];
    const copy = Array.isArray(thing) ? [...(thing as unknown[])] : isPlain(thing) ? { ...thing } : {};
    own.add(copy);
    return copy;
  };
  const top = copied(project);
  const emptied: (readonly string[])[] = [];
  for (const part of parts) {
    const path = pathOf(part);
    const isGone = part.value === undefined && missing(top, path.slice(0, -1)) !== undefined;
    if (isGone) continue;
    let at = top;
    for (const name of path.slice(0, -1)) {
      const next = copied(get(at, name));
      put(at, name, next);
      at = next;
    }
    const last = path.at(-1) as string;
    // The part that says a list is there has no name of its own; the way to it has made the list.
    if (last !== '') put(at, last, part.value);
    else if (part.value === undefined) emptied.push(path.slice(0, -1));
  }
  for (const path of emptied) {
    const holder = path.slice(0, -1).reduce<unknown>(get, top) as Draft;
    const last = path.at(-1) as string;
    if (Object.keys(get(holder, last) ?? {}).length === 0) put(holder, last, undefined);
  }
  return top as unknown as Project;
}

/** By name, or by id in a list of things with ids. */
function get(at: unknown, name: string): unknown {
  if (Array.isArray(at)) return at.find((one) => isPlain(one) && one['id'] === name);
  return isPlain(at) && Object.hasOwn(at, name) ? at[name] : undefined;
}

function put(at: Draft | unknown[], name: string, value: unknown): void {
  if (!Array.isArray(at)) {
    if (value === undefined) delete at[name];
    else at[name] = value;
    return;
  }
  const index = at.findIndex((one) => isPlain(one) && one['id'] === name);
  if (value === undefined) at.splice(index, index < 0 ? 0 : 1);
  else if (index < 0) at.push(value);
  else at[index] = value;
}

/**
 * What stands at a part, as a part. A thing in a list is taken with the whole list, because it has its place there;
 * where even what would hold the part is not there, that is what is not there.
 */
export function standingPart(project: Project, part: Omit<Part, 'value'>): Part {
  const path = pathOf(part);
  const [key = ''] = path;
  const list = get(project, key);
  if (Array.isArray(list)) return { record: frame, field: addressOf(key), value: list };
  const gone = missing(project, path.at(-1) === '' ? path.slice(0, -1) : path);
  if (gone) return { record: frame, field: addressOf(...gone), value: undefined };
  return { record: part.record, field: part.field, value: readPart(project, part) };
}

/** The shortest beginning of a path at which nothing stands. */
function missing(project: unknown, path: readonly string[]): readonly string[] | undefined {
  let at = project;
  for (const [index, name] of path.entries()) {
    at = get(at, name);
    if (at === undefined) return path.slice(0, index + 1);
  }
  return undefined;
}

/** The value at a part; undefined where there is none. */
export function readPart(project: Project, part: Omit<Part, 'value'>): unknown {
  const path = pathOf(part);
  if (path.at(-1) !== '') return path.reduce<unknown>(get, project);
  return path.slice(0, -1).reduce<unknown>(get, project) === undefined ? undefined : {};
}

function pathOf({ record, field }: Omit<Part, 'value'>): readonly string[] {
  const inside = field === '' ? [] : namesOf(field);
  return record === frame ? inside : [...namesOf(record), ...inside];
}
