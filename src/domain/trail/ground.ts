import type { Command, Edit } from '../commands/command.ts';
import { recordInWords } from '../merge/words.ts';
import type { Project } from '../model/project.ts';
import { midSentence } from '../text/midSentence.ts';

/** What one edit did: a whole sentence, or a part that went from one value to the next. */
export type Said =
  | string
  | {
      /** Names the part, so that what is typed letter by letter is told once. */
      readonly key: string;
      readonly what: string;
      /** Undefined where nobody knows any more. */
      readonly from: string | undefined;
      readonly to: string;
    };

/** "Opening 101. Mark: 101 → 102." */
export function sentenceOf(said: Said): string {
  if (typeof said === 'string') return said;
  const { what, from, to } = said;
  return from === undefined || from === to ? `${what}: ${to}.` : `${what}: ${from} → ${to}.`;
}

/** What is known while the edits are read from the oldest on: how things are called, and what stood before. */
export class Ground {
  readonly #names = new Map<string, string>();
  readonly #values = new Map<string, string>();
  readonly #project: Project;

  constructor(project: Project, commands: readonly Command[]) {
    this.#project = project;
    for (const { edits } of commands) for (const edit of edits) this.#learn(edit);
  }

  /** "Opening 101"; also of what was removed since, as long as an edit that made it is there. */
  name(table: string, id: string): string {
    const said = recordInWords(`${table}/${id}`, [this.#project]);
    const [word = ''] = said.split(` ${id}`);
    if (said !== `${word} ${id}`) return said;
    const kept = this.#names.get(`${table}/${id}`);
    if (kept !== undefined) return `${word} ${kept}`;
    return said === id ? said : `${word}, removed since`;
  }

  /** A part is another thing now; what stood there before is what the last edit of it said. */
  changed(key: string, what: string, to: string): Said {
    const from = this.#values.get(key);
    this.#values.set(key, to);
    return { key, what, from, to };
  }

  /** "Floor Second floor added.", "changed.", "removed." */
  put(table: string, id: string, value: object | null): string {
    const key = `${table}/${id}`;
    const before = this.#values.get(key) ?? (Object.hasOwn(this.#rows(table), id) ? '' : undefined);
    const verb = value === null ? 'removed' : before === 'there' ? 'changed' : 'entered';
    this.#values.set(key, value === null ? 'gone' : 'there');
    return `${this.name(table, id)} ${verb}.`;
  }

  /** "Second floor", or "none". */
  named(table: string, id: string | null): string {
    return id === null ? 'none' : midSentence(this.name(table, id));
  }

  #rows(table: string): object {
    return (this.#project as unknown as Record<string, object>)[table] ?? {};
  }

  #learn(edit: Edit): void {
    if (!('value' in edit) || !('id' in edit)) return;
    const value: unknown = edit.value;
    if (typeof value !== 'object' || value === null) return;
    const table = tables[edit.kind];
    const { mark, name, number, says } = value as Record<string, unknown>;
    const called = mark ?? name ?? number ?? says;
    if (table !== undefined && typeof called === 'string') this.#names.set(`${table}/${edit.id}`, called);
  }
}

const tables: Readonly<Partial<Record<Edit['kind'], string>>> = {
  putFloor: 'floors',
  putSpace: 'spaces',
  putAmendment: 'amendments',
  putOpening: 'openings',
  putHardwareSet: 'hardwareSets',
  putCloset: 'closets',
  putPlan: 'plans',
  putSupply: 'supplies',
  putProduct: 'productBook',
  putStandard: 'standards',
};
