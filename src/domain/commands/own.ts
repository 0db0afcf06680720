import type { Project } from '../model/project.ts';

/**
 * What one command has made for itself. Records copied by it nobody else has seen, so its later edits write into
 * the same copy, and marks are counted once: an import of thousands of openings would otherwise copy and search
 * the whole project for each of them.
 */
export class Own {
  readonly records = new WeakSet<object>();
  #marks: Map<string, number> | undefined;

  /** How many openings carry each mark; asked before the edit is made. */
  marks(project: Project): Map<string, number> {
    if (!this.#marks) {
      this.#marks = new Map();
      for (const { mark } of Object.values(project.openings)) this.#count(mark, 1);
    }
    return this.#marks;
  }

  markChanged(before: string | undefined, after: string | undefined): void {
    if (!this.#marks) return;
    if (before !== undefined) this.#count(before, -1);
    if (after !== undefined) this.#count(after, 1);
  }

  #count(mark: string, by: number): void {
    this.#marks?.set(mark, (this.#marks.get(mark) ?? 0) + by);
  }
}

/** Own entries only: an id such as "constructor" would otherwise find what every object inherits. */
export function entry<T>(record: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

export function withOpening(
  project: Project,
  own: Own,
  id: string,
  opening: Project['openings'][string],
): Project {
  return { ...project, openings: withEntry(project.openings, id, opening, own) };
}

export function withEntry<T>(
  record: Readonly<Record<string, T>>,
  key: string,
  value: T | null,
  own: Own,
): Record<string, T> {
  // A name that every object inherits is refused later; written into a copy of ours it would spoil the copy.
  const mine = own.records.has(record) && !(key in {});
  const written: Record<string, T> = mine ? record : { ...record };
  own.records.add(written);
  if (value === null) delete written[key];
  else if (key in {}) return { ...written, [key]: value };
  else written[key] = value;
  return written;
}

export function markIsTaken(project: Project, own: Own, id: string, mark: string): boolean {
  const mine = entry(project.openings, id)?.mark === mark ? 1 : 0;
  return (own.marks(project).get(mark) ?? 0) > mine;
}
