import { z } from 'zod';
import { textOf } from './sorted.ts';

/**
 * Who wrote which part, so that two copies of one project can be joined without guessing. Every copy that is being
 * edited counts its own edits; `k3f9:12` is the twelfth edit of copy k3f9. A copy also says up to which edit of every
 * other copy it has seen. An edit that the other side has seen and no longer shows was replaced there on purpose; one
 * it has not seen is news. Neither clocks nor a common ancestor are needed.
 */
export type Dot = string;

/** One of the values that stand side by side until somebody decides; without `value` it was removed there. */
export type Sibling = { readonly dot: Dot; readonly value?: unknown };

type Table<T> = Readonly<Record<string, Readonly<Record<string, T>>>>;
export interface History {
  readonly seen: Readonly<Record<string, number>>;
  readonly dots: Table<string>;
  readonly kept?: Table<readonly Sibling[]> | undefined;
  readonly edits?: Readonly<Record<string, { readonly at: string; readonly by: string }>> | undefined;
}

const siblingSchema = z.looseObject({ dot: z.string().min(1), value: z.unknown().optional() });
export const historySchema = z.looseObject({
  /** How many edits of each copy went into this one; a state that was there before edits were counted stands at 0. */
  seen: z.record(z.string().min(1), z.number().int().min(0)),
  /** The edit, or edits side by side, that wrote a part: record, then field. Absent: as it was at the start. */
  dots: z.record(z.string(), z.record(z.string(), z.string())),
  /** Values that were written side by side. */
  kept: z.record(z.string(), z.record(z.string(), z.array(siblingSchema).min(1))).optional(),
  /** When and by whom an edit was made, where the part itself does not say it. */
  edits: z.record(z.string(), z.looseObject({ at: z.string(), by: z.string() })).optional(),
}) as unknown as z.ZodType<History>;

/** The field that stands for a record being there at all. */
export const whole = '';
/** The field that stands for all fields without a dot of their own, where that is not the dot of `whole`. */
export const others = '*';

export const dotOf = (device: string, count: number): Dot => `${device}:${count}`;

export function wasSeen(seen: History['seen'], dot: Dot): boolean {
  const cut = dot.lastIndexOf(':');
  const device = dot.slice(0, cut);
  const count = Object.hasOwn(seen, device) ? seen[device] : undefined;
  return count !== undefined && count >= Number(dot.slice(cut + 1));
}

interface WithHistory {
  readonly history?: History | undefined;
}

/**
 * The history of a project, or the beginning of one. It is named after what stands there, so that two people who
 * begin with the same file begin with the same history.
 */
export function historyOf(project: WithHistory): History {
  if (project.history) return project.history;
  const { history: _none, ...rest } = project;
  return { seen: { [`start-${fingerprint(textOf(rest))}`]: 0 }, dots: {} };
}

/** The dots of everything that was there before edits were counted. */
export const startDots = (history: History): readonly Dot[] =>
  Object.keys(history.seen)
    .filter((device) => device.startsWith('start-'))
    .map((device) => dotOf(device, 0))
    .toSorted();

/** 53 bits that differ wherever a text differs, for all that people do. No protection against a forger. */
function fingerprint(text: string): string {
  let [a, b] = [0xdeadbeef, 0x41c6ce57];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    a = Math.imul(a ^ code, 2654435761);
    b = Math.imul(b ^ code, 1597334677);
  }
  a = Math.imul(a ^ (a >>> 16), 2246822507) ^ Math.imul(b ^ (b >>> 13), 3266489909);
  b = Math.imul(b ^ (b >>> 16), 2246822507) ^ Math.imul(a ^ (a >>> 13), 3266489909);
  return (4294967296 * (2097151 & b) + (a >>> 0)).toString(36);
}
