import type { Edit } from '../commands/command.ts';
import { type Part, readPart, writeParts } from '../commands/writeParts.ts';
import {
  type History,
  historyOf,
  others,
  type Sibling,
  startDots,
  wasSeen,
  whole,
} from '../model/history.ts';
import { addressOf, changedParts, entryOf, type Fields, frame, recordsOf } from '../model/parts.ts';
import type { Amendment, Project } from '../model/project.ts';
import { textOf } from '../model/sorted.ts';
import { isThere, join, meaning, type Register, registerOf, standing } from './register.ts';

/**
 * Two copies of one project become one, part by part. Where only one side wrote, that stands; where both did and agree,
 * nothing is asked; otherwise both values are kept side by side until somebody decides. The order in which copies are
 * joined, and how often, makes no difference (merge.test.ts).
 */
export function mergeProjects(mine: Project, theirs: Project): Project {
  const { parts, history } = new Merging(mine, theirs);
  const merged = writeParts(mine, parts);
  const amendments = inOrder(mine, theirs, merged, history);
  return { ...merged, amendments, history };
}

/** The same as an edit of my copy, to be done, logged and undone as one. */
export function mergeEdit(mine: Project, theirs: Project): Edit {
  const { history, ...merged } = mergeProjects(mine, theirs);
  const rows = addressOf('amendments', '');
  const parts: Part[] = changedParts(mine, merged)
    .filter(({ record }) => !record.startsWith(rows))
    .map(({ record, field, after }) => ({ record, field, value: after }));
  // A list goes as a whole, because each thing has its place in it.
  const list = { record: frame, field: 'amendments', value: merged.amendments };
  const isSame = textOf(mine.amendments) === textOf(merged.amendments);
  return { kind: 'takeParts', parts: isSame ? parts : [...parts, list], history: history ?? null };
}

/** When an edit was made, as far as anybody knows. */
export function whenOf(histories: readonly History[]) {
  return ({ dot, value }: Sibling): { readonly at: string; readonly by: string } => {
    const said = histories.map((one) => entryOf(one.edits, dot)).find((one) => one !== undefined);
    const [at, by] = ['at', 'by'].map((name) => entryOf(value, name) ?? entryOf(said, name));
    return { at: typeof at === 'string' ? at : '', by: typeof by === 'string' ? by : '' };
  };
}

class Merging {
  readonly history: History;
  readonly parts: Part[] = [];
  readonly #sides: readonly [Side, Side];
  readonly #dots = new Map<string, Map<string, string>>();
  readonly #kept = new Map<string, Map<string, Register>>();
  readonly #when: (one: Sibling) => string;
  /** The dots of what was there before edits were counted. */
  readonly #start: readonly string[];

  constructor(mine: Project, theirs: Project) {
    this.#sides = [sideOf(mine, theirs), sideOf(theirs, mine)];
    const [a, b] = [this.#sides[0].history, this.#sides[1].history];
    const when = whenOf([a, b]);
    this.#when = (one) => when(one).at;
    const seen = new Map(Object.entries(a.seen));
    for (const [device, count] of Object.entries(b.seen)) {
      seen.set(device, Math.max(seen.get(device) ?? 0, count));
    }
    const start = { seen: Object.fromEntries(seen), dots: {} };
    this.#start = startDots(start);
    for (const record of new Set(
      this.#sides.flatMap((side) => [...side.records.keys(), ...Object.keys(side.history.dots)]),
    )) {
      this.#record(record);
    }
    const edits = { ...a.edits, ...b.edits };
    this.history = {
      seen: start.seen,
      dots: tableOf(this.#dots),
      ...(Object.keys(edits).length > 0 ? { edits } : {}),
      ...(this.#kept.size > 0 ? { kept: tableOf(this.#kept) } : {}),
    };
  }

  #record(record: string): void {
    const [mine, theirs] = this.#sides;
    const [here, there] = [mine.records.get(record), theirs.records.get(record)];
    if (record.includes('/')) {
      const existence = this.#existence(record, here, there);
      this.#note(record, whole, existence);
      if (standing(existence, whole, this.#when).value === undefined) {
        if (here) this.parts.push({ record, field: whole });
        return;
      }
    }
    if (here && there) this.#fields(record, here, there);
    else if (here) this.#taken(record, mine, here);
    else if (there) {
      this.#taken(record, theirs, there);
      this.parts.push({ record, field: whole, value: readPart(theirs.project, { record, field: whole }) });
    }
  }

  /** Whether the record is there. One that was edited by somebody who had not seen it removed is asked about. */
  #existence(record: string, here: Fields | undefined, there: Fields | undefined): Register {
    const [mine, theirs] = this.#sides;
    const [a, b] = [
      registerOf(mine.history, record, whole, here && isThere),
      registerOf(theirs.history, record, whole, there && isThere),
    ];
    if (a.length === 0 || b.length === 0) return a.length === 0 ? b : a;
    const joined = join(a, mine.history.seen, b, theirs.history.seen);
    if (Boolean(here) === Boolean(there) || joined.some((one) => one.value !== undefined)) return joined;
    const [side, fields, other] = here ? [mine, here, theirs] : [theirs, there ?? new Map(), mine];
    const isNews = [...fields].some(([field, value]) =>
      registerOf(side.history, record, field, value).some(({ dot }) => !wasSeen(other.history.seen, dot)),
    );
    return isNews ? [...joined, ...(here ? a : b).filter((one) => one.value !== undefined)] : joined;
  }

  #fields(record: string, here: Fields, there: Fields): void {
    const [mine, theirs] = this.#sides;
    const said = [mine, theirs].flatMap(({ history }) => dottedFields(history, record));
    for (const field of new Set([...here.keys(), ...there.keys(), ...said])) {
      const joined = join(
        registerOf(mine.history, record, field, here.get(field)),
        mine.history.seen,
        registerOf(theirs.history, record, field, there.get(field)),
        theirs.history.seen,
      );
      this.#note(record, field, joined);
      const value = isSetAside(record, field) ? union(joined) : standing(joined, field, this.#when).value;
      if (textOf(value) !== textOf(here.get(field))) this.parts.push({ record, field, value });
    }
  }

  /** A record that only one side has comes as it is, with what is said of each of its fields. */
  #taken(record: string, { history }: Side, fields: Fields): void {
    for (const field of new Set([...fields.keys(), ...dottedFields(history, record)])) {
      this.#note(record, field, registerOf(history, record, field, fields.get(field)));
    }
  }

  /** Says no more than is needed: the dots where they are not the implied ones, the values where they differ. */
  #note(record: string, field: string, register: Register): void {
    if (register.length === 0) return;
    const dots = [...new Set(register.map(({ dot }) => dot))].toSorted().join(' ');
    const said = this.#dots.get(record);
    const implied = (field === whole ? undefined : said?.get(whole)) ?? this.#start.join(' ');
    const isGone = register.every((one) => one.value === undefined);
    if (dots !== implied || isGone) this.#dots.set(record, new Map([...(said ?? []), [field, dots]]));
    if (new Set(register.map((one) => meaning(one.value))).size > 1) {
      this.#kept.set(record, new Map([...(this.#kept.get(record) ?? []), [field, register]]));
    }
  }
}

interface Side {
  readonly project: Project;
  readonly history: History;
  readonly records: ReadonlyMap<string, Fields>;
}

const sideOf = (project: Project, beside: Project): Side => ({
  project,
  history: historyOf(project),
  records: recordsOf(project, beside),
});

const dottedFields = (history: History, record: string): readonly string[] =>
  Object.keys(entryOf(history.dots, record) ?? {}).filter((field) => field !== whole && field !== others);

const tableOf = <T>(rows: ReadonlyMap<string, ReadonlyMap<string, T>>) =>
  Object.fromEntries([...rows].map(([record, fields]) => [record, Object.fromEntries(fields)]));

/** What could not be read is never settled by choosing one of two lists: both are kept. */
export const isSetAside = (record: string, field: string) => record === frame && field === 'setAside';

function union(register: Register): unknown {
  const lists = register.map((one) => (Array.isArray(one.value) ? (one.value as unknown[]) : []));
  if (lists.length < 2) return register[0]?.value;
  const byText = new Map(lists.flat().map((one) => [textOf(one), one]));
  const all = [...byText.keys()].toSorted().map((text) => byText.get(text));
  return all.length > 0 ? all : undefined;
}

/** Amendments stand in the order in which they were made; the same whichever copy is merged into which. */
function inOrder(mine: Project, theirs: Project, merged: Project, history: History): readonly Amendment[] {
  const ids = (all: readonly Amendment[]) => all.map(({ id }) => id).join(' ');
  if (ids(mine.amendments) === ids(theirs.amendments)) return merged.amendments;
  const when = whenOf([history]);
  const keys = new Map(
    merged.amendments.map(({ id }, index) => {
      const dots = entryOf(entryOf(history.dots, addressOf('amendments', id)), whole);
      const dot = typeof dots === 'string' ? (dots.split(' ')[0] as string) : '';
      return [id, [dot === '' ? '' : `1 ${when({ dot }).at} ${dot}`, index] as const];
    }),
  );
  return merged.amendments.toSorted((x, y) => {
    const [a, b] = [keys.get(x.id), keys.get(y.id)];
    if (!a || !b || a[0] === b[0])
      return (a?.[0] ?? '') === '' ? (a?.[1] ?? 0) - (b?.[1] ?? 0) : x.id < y.id ? -1 : 1;
    return a[0] < b[0] ? -1 : 1;
  });
}
