import { z } from 'zod';
import { type Facts, factSchema } from '../model/fact.ts';
import { factSchemas, isFactKey } from '../model/fields.ts';
import { idSchema } from '../model/ids.ts';
import {
  amendmentSchema,
  floorSchema,
  hardwareSetSchema,
  instantSchema,
  openingSchema,
  overrideSchema,
  type Project,
  projectSchema,
  reviewSchema,
  setAsideSchema,
  setNumberSchema,
  spaceSchema,
  weightsSchema,
} from '../model/project.ts';
import {
  closetSchema,
  noRun,
  productSchema,
  type Run,
  runFields,
  runSchema,
  supplySchema,
} from '../model/power.ts';
import { type Bid, bidSchema, itemEntrySchema, priceSchema } from '../model/bid.ts';
import { codeBasisSchema } from '../codes/basis.ts';
import { historySchema } from '../model/history.ts';
import { type Part, standingPart, writeParts } from './writeParts.ts';

/**
 * Every edit is a small named command. Undo, history and merge read the same commands, so a command carries
 * all it changes and nothing else. `null` in place of a thing removes it.
 */
const anyFact = factSchema(z.union([z.string(), z.boolean(), z.number()]));
/** A part of the project by its address; absent `value` removes it. */
const partSchema = z.object({ record: z.string(), field: z.string(), value: z.unknown().optional() });

const edits = {
  setProject: z.object({
    kind: z.literal('setProject'),
    field: z.enum(['name', 'preparedBy', 'jurisdiction', 'notes']),
    value: z.string(),
  }),
  setBasis: z.object({ kind: z.literal('setBasis'), value: codeBasisSchema }),
  setWeights: z.object({ kind: z.literal('setWeights'), value: weightsSchema }),
  setBuildingFact: z.object({
    kind: z.literal('setBuildingFact'),
    fact: z.string(),
    value: anyFact.nullable(),
  }),
  /** What most doors of the building are like; it says nothing of any door by itself. */
  setUsual: z.object({ kind: z.literal('setUsual'), fact: z.string(), value: anyFact.nullable() }),
  putFloor: z.object({ kind: z.literal('putFloor'), id: idSchema, value: floorSchema.nullable() }),
  putSpace: z.object({ kind: z.literal('putSpace'), id: idSchema, value: spaceSchema.nullable() }),
  putAmendment: z.object({
    kind: z.literal('putAmendment'),
    id: idSchema,
    value: amendmentSchema.nullable(),
    /** Where in the list a new one goes; the end when absent. Lets undo put it back where it stood. */
    index: z.number().int().min(0).optional(),
  }),
  putOpening: z.object({ kind: z.literal('putOpening'), id: idSchema, value: openingSchema.nullable() }),
  setOpening: z.object({
    kind: z.literal('setOpening'),
    id: idSchema,
    field: z.enum(['mark', 'floorId', 'fromSpaceId', 'toSpaceId', 'notes']),
    value: z.string().nullable(),
  }),
  setFact: z.object({
    kind: z.literal('setFact'),
    id: idSchema,
    fact: z.string(),
    value: anyFact.nullable(),
  }),
  setReview: z.object({ kind: z.literal('setReview'), id: idSchema, value: reviewSchema.nullable() }),
  setOverride: z.object({ kind: z.literal('setOverride'), id: idSchema, value: overrideSchema.nullable() }),
  putHardwareSet: z.object({
    kind: z.literal('putHardwareSet'),
    id: idSchema,
    value: hardwareSetSchema.nullable(),
  }),
  /** The price of an item or of one part number; null takes it back. */
  putPrice: z.object({ kind: z.literal('putPrice'), id: idSchema, value: priceSchema.nullable() }),
  putItemEntry: z.object({
    kind: z.literal('putItemEntry'),
    id: idSchema,
    value: itemEntrySchema.nullable(),
  }),
  /** Terms of the bid; those that are not named stay. */
  setBid: z.object({ kind: z.literal('setBid'), value: bidSchema.partial() }),
  /** How numbers were fixed before sets had openings; logs of that time are still read. Null forgets one. */
  keepSetNumbers: z.object({
    kind: z.literal('keepSetNumbers'),
    value: z.record(z.string().min(1), setNumberSchema.nullable()),
  }),
  putCloset: z.object({ kind: z.literal('putCloset'), id: idSchema, value: closetSchema.nullable() }),
  putSupply: z.object({ kind: z.literal('putSupply'), id: idSchema, value: supplySchema.nullable() }),
  putProduct: z.object({ kind: z.literal('putProduct'), id: idSchema, value: productSchema.nullable() }),
  /** One answer about where the cable of an opening goes. */
  setRun: z.object({
    kind: z.literal('setRun'),
    id: idSchema,
    field: z.enum(runFields),
    value: z
      .object({
        value: z.union([z.string(), z.number()]),
        at: instantSchema.optional(),
        by: z.string().optional(),
      })
      .nullable(),
  }),
  putRun: z.object({ kind: z.literal('putRun'), id: idSchema, value: runSchema.nullable() }),
  /** What was set aside and is not dealt with yet; the whole list. */
  setAside: z.object({ kind: z.literal('setAside'), value: z.array(setAsideSchema) }),
  /** Parts of another copy with the history they come from; null is no history. One merge is one such edit. */
  takeParts: z.object({
    kind: z.literal('takeParts'),
    parts: z.array(partSchema),
    history: historySchema.nullable(),
  }),
  /** Somebody decided between values that stood side by side. */
  settle: z.object({ kind: z.literal('settle'), part: partSchema }),
} as const;

export const editSchema = z.discriminatedUnion('kind', [
  edits.setProject,
  edits.setBasis,
  edits.setWeights,
  edits.setBuildingFact,
  edits.setUsual,
  edits.putFloor,
  edits.putSpace,
  edits.putAmendment,
  edits.putOpening,
  edits.setOpening,
  edits.setFact,
  edits.setReview,
  edits.setOverride,
  edits.putHardwareSet,
  edits.putPrice,
  edits.putItemEntry,
  edits.setBid,
  edits.keepSetNumbers,
  edits.putCloset,
  edits.putSupply,
  edits.putProduct,
  edits.setRun,
  edits.putRun,
  edits.setAside,
  edits.takeParts,
  edits.settle,
]);
export type Edit = Readonly<z.infer<typeof editSchema>>;

/** What a person did, with name and time: one or more edits that are done and undone together. */
export const commandSchema = z.object({
  id: idSchema,
  at: instantSchema,
  by: z.string(),
  label: z.string(),
  edits: z.array(editSchema).min(1),
  /** The copy that is being edited, for as long as nobody else can have seen what it counted. */
  device: z.string().min(1).optional(),
});
export type Command = Readonly<z.infer<typeof commandSchema>>;

export type CommandProblem =
  | { readonly kind: 'noSuchOpening'; readonly id: string }
  | { readonly kind: 'noSuchFact'; readonly fact: string }
  | { readonly kind: 'badValue'; readonly field: string; readonly says: string }
  | { readonly kind: 'markTaken'; readonly mark: string }
  | { readonly kind: 'setNumberTaken'; readonly number: string };

export type Applied =
  | { readonly ok: true; readonly project: Project; readonly inverse: readonly Edit[] }
  | { readonly ok: false; readonly problem: CommandProblem };

/** One sentence for a person, to stand beside the field. */
export function commandProblemInWords(problem: CommandProblem): string {
  switch (problem.kind) {
    case 'noSuchOpening':
      return 'That opening is no longer in the project; it may have been removed elsewhere.';
    case 'noSuchFact':
      return `This version knows no fact called ${problem.fact}.`;
    case 'badValue':
      return problem.says;
    case 'markTaken':
      return `Mark ${problem.mark} is already used; every opening needs a mark of its own.`;
    case 'setNumberTaken':
      return `${problem.number} is already the number of another set, in use or retired.`;
  }
}

/**
 * Applies edits in order; all or nothing. The inverse undoes them when applied in the order given. Taking back
 * asks only for the right shape: an imported project may hold what a new edit may not bring in (two openings of
 * one mark), and undo must be able to return to it.
 */
export function applyEdits(project: Project, list: readonly Edit[], takingBack = false): Applied {
  let current = project;
  const inverse: Edit[] = [];
  const own = new Own();
  for (const edit of list) {
    const step = applyEdit(current, edit, takingBack, own);
    if (!step.ok) return step;
    current = step.project;
    inverse.push(...step.inverse.toReversed());
  }
  return { ok: true, project: current, inverse: inverse.toReversed() };
}

/**
 * What one command has made for itself. Records copied by it nobody else has seen, so its later edits write into
 * the same copy, and marks are counted once: an import of thousands of openings would otherwise copy and search
 * the whole project for each of them.
 */
class Own {
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

const done = (project: Project, ...inverse: Edit[]): Applied => ({ ok: true, project, inverse });
const refused = (problem: CommandProblem): Applied => ({ ok: false, problem });

/** The words of the field first, then the whole shape: a half-made opening must not get into the document. */
function applyEdit(project: Project, edit: Edit, takingBack: boolean, own: Own): Applied {
  const applied = applyShaped(project, edit, takingBack, own);
  if (!applied.ok) return applied;
  const parsed = editSchema.safeParse(edit);
  if (parsed.success) return applied;
  const issue = parsed.error.issues[0];
  const field = issue?.path.join('.') ?? edit.kind;
  return refused({ kind: 'badValue', field, says: `${field}: ${issue?.message ?? 'this does not fit.'}` });
}

function applyShaped(project: Project, edit: Edit, takingBack: boolean, own: Own): Applied {
  switch (edit.kind) {
    case 'setProject': {
      if (edit.field === 'name' && edit.value.trim() === '' && !takingBack) {
        return refused({ kind: 'badValue', field: 'name', says: 'A project needs a name.' });
      }
      const parsed = projectSchema.shape[edit.field].safeParse(edit.value);
      if (!parsed.success && !takingBack) {
        const says = parsed.error.issues[0]?.message ?? 'This does not fit.';
        return refused({ kind: 'badValue', field: edit.field, says });
      }
      return done({ ...project, [edit.field]: edit.value }, { ...edit, value: project[edit.field] });
    }
    case 'setBasis':
      return done({ ...project, basis: edit.value }, { ...edit, value: project.basis });
    case 'setWeights':
      return done({ ...project, weights: edit.value }, { ...edit, value: { ...project.weights } });
    case 'setBuildingFact': {
      const problem = factProblem(edit.fact, edit.value);
      if (problem) return refused(problem);
      const before = entry<unknown>(project.building, edit.fact);
      const building = withEntry<unknown>(project.building, edit.fact, edit.value, own) as Facts;
      return done({ ...project, building }, { ...edit, value: (before as typeof edit.value) ?? null });
    }
    case 'setUsual': {
      const problem = factProblem(edit.fact, edit.value);
      if (problem) return refused(problem);
      const before = entry<unknown>(project.usual, edit.fact);
      const usual = withEntry<unknown>(project.usual, edit.fact, edit.value, own) as Facts;
      return done({ ...project, usual }, { ...edit, value: (before as typeof edit.value) ?? null });
    }
    // What stood there is read before the edit: the record may be written in place.
    case 'putFloor': {
      const before = entry(project.floors, edit.id) ?? null;
      const floors = withEntry(project.floors, edit.id, edit.value, own);
      return done({ ...project, floors }, { ...edit, value: before });
    }
    case 'putSpace': {
      const before = entry(project.spaces, edit.id) ?? null;
      const spaces = withEntry(project.spaces, edit.id, edit.value, own);
      return done({ ...project, spaces }, { ...edit, value: before });
    }
    case 'putAmendment': {
      const at = project.amendments.findIndex((one) => one.id === edit.id);
      const before = project.amendments[at] ?? null;
      const amendments = [...project.amendments];
      if (edit.value === null) {
        if (before !== null) amendments.splice(at, 1);
      } else if (before === null) amendments.splice(edit.index ?? amendments.length, 0, edit.value);
      else amendments.splice(at, 1, edit.value);
      const { index: _index, ...rest } = edit;
      return done(
        { ...project, amendments },
        { ...rest, value: before, ...(before === null ? {} : { index: at }) },
      );
    }
    case 'putOpening': {
      const before = entry(project.openings, edit.id);
      if (edit.value !== null && !takingBack && markIsTaken(project, own, edit.id, edit.value.mark)) {
        return refused({ kind: 'markTaken', mark: edit.value.mark });
      }
      own.markChanged(before?.mark, edit.value?.mark);
      const value = edit.value as Project['openings'][string] | null;
      const openings = withEntry(project.openings, edit.id, value, own);
      return done({ ...project, openings }, { ...edit, value: (before as typeof edit.value) ?? null });
    }
    case 'setOpening': {
      const opening = entry(project.openings, edit.id);
      if (!opening) return refused({ kind: 'noSuchOpening', id: edit.id });
      if (edit.field === 'mark') {
        const parsed = openingSchema.shape.mark.safeParse(edit.value);
        if (!parsed.success) {
          return refused({
            kind: 'badValue',
            field: 'mark',
            says: parsed.error.issues[0]?.message ?? 'Bad mark.',
          });
        }
        if (!takingBack && markIsTaken(project, own, edit.id, parsed.data))
          return refused({ kind: 'markTaken', mark: parsed.data });
        own.markChanged(opening.mark, parsed.data);
      }
      const value = edit.field === 'notes' ? (edit.value ?? '') : edit.value;
      return done(withOpening(project, own, edit.id, { ...opening, [edit.field]: value }), {
        ...edit,
        value: opening[edit.field],
      });
    }
    case 'setFact': {
      const opening = entry(project.openings, edit.id);
      if (!opening) return refused({ kind: 'noSuchOpening', id: edit.id });
      const problem = factProblem(edit.fact, edit.value);
      if (problem) return refused(problem);
      const before = entry<unknown>(opening.facts, edit.fact);
      const facts = withEntry<unknown>(opening.facts, edit.fact, edit.value, own) as Facts;
      return done(withOpening(project, own, edit.id, { ...opening, facts }), {
        ...edit,
        value: (before as typeof edit.value) ?? null,
      });
    }
    case 'setReview':
    case 'setOverride': {
      const opening = entry(project.openings, edit.id);
      if (!opening) return refused({ kind: 'noSuchOpening', id: edit.id });
      if (edit.kind === 'setReview') {
        return done(withOpening(project, own, edit.id, { ...opening, review: edit.value }), {
          ...edit,
          value: opening.review,
        });
      }
      return done(withOpening(project, own, edit.id, { ...opening, override: edit.value }), {
        ...edit,
        value: opening.override,
      });
    }
    case 'putHardwareSet': {
      const before = entry(project.hardwareSets, edit.id) ?? null;
      const taken = Object.values(project.hardwareSets).some(
        (set) => set.id !== edit.id && set.number === edit.value?.number,
      );
      if (taken && !takingBack) return refused({ kind: 'setNumberTaken', number: edit.value?.number ?? '' });
      const hardwareSets = withEntry(project.hardwareSets, edit.id, edit.value, own);
      return done({ ...project, hardwareSets }, { ...edit, value: before });
    }
    case 'putPrice': {
      const before = entry(project.prices, edit.id) ?? null;
      const prices = withEntry(project.prices, edit.id, edit.value, own);
      return done({ ...project, prices }, { ...edit, value: before });
    }
    case 'putItemEntry': {
      const before = entry(project.itemBook, edit.id) ?? null;
      const itemBook = withEntry(project.itemBook, edit.id, edit.value, own);
      return done({ ...project, itemBook }, { ...edit, value: before });
    }
    case 'setBid': {
      const before = Object.fromEntries(Object.keys(edit.value).map((key) => [key, project.bid[key]]));
      return done({ ...project, bid: { ...project.bid, ...edit.value } as Bid }, { ...edit, value: before });
    }
    case 'keepSetNumbers': {
      let { hardwareSets } = project;
      const inverse: Edit[] = [];
      for (const [formerly, number] of Object.entries(edit.value)) {
        const kept = Object.values(hardwareSets).find((set) => set.formerly === formerly);
        if (!kept && number === null) continue;
        const id = kept?.id ?? `set-${number}`;
        const before = entry(hardwareSets, id) ?? null;
        const known = before ?? { id, name: '', revision: 0, members: {}, content: '', number: '' };
        const value = number === null ? null : { ...known, number, formerly };
        hardwareSets = withEntry(hardwareSets, id, value, own);
        inverse.push({ kind: 'putHardwareSet', id, value: before });
      }
      return done({ ...project, hardwareSets }, ...inverse.toReversed());
    }
    case 'putCloset': {
      const before = entry(project.closets, edit.id) ?? null;
      const closets = withEntry(project.closets, edit.id, edit.value, own);
      return done({ ...project, closets }, { ...edit, value: before });
    }
    case 'putSupply': {
      const before = entry(project.supplies, edit.id) ?? null;
      const supplies = withEntry(project.supplies, edit.id, edit.value, own);
      return done({ ...project, supplies }, { ...edit, value: before });
    }
    case 'putProduct': {
      const before = entry(project.productBook, edit.id) ?? null;
      const productBook = withEntry(project.productBook, edit.id, edit.value, own);
      return done({ ...project, productBook }, { ...edit, value: before });
    }
    case 'setRun':
      return setRun(project, edit, takingBack, own);
    case 'putRun': {
      const before = entry(project.runs, edit.id) ?? null;
      const runs = withEntry(project.runs, edit.id, edit.value, own);
      return done({ ...project, runs }, { ...edit, value: before });
    }
    case 'setAside': {
      const { setAside: before, ...rest } = project;
      const after = edit.value.length > 0 ? { ...rest, setAside: edit.value } : rest;
      return done(after, { kind: 'setAside', value: [...(before ?? [])] });
    }
    case 'takeParts':
    case 'settle':
      return takeParts(project, edit, takingBack);
  }
}

/** Undone as a whole: an opening about which nothing is said has no entry. */
function setRun(
  project: Project,
  edit: Extract<Edit, { kind: 'setRun' }>,
  takingBack: boolean,
  own: Own,
): Applied {
  if (!entry(project.openings, edit.id) && !takingBack)
    return refused({ kind: 'noSuchOpening', id: edit.id });
  const before = entry(project.runs, edit.id);
  const run = { ...(before ?? noRun(edit.id)), [edit.field]: edit.value };
  const parsed = runSchema.safeParse(run);
  if (!parsed.success) {
    const says = parsed.error.issues[0]?.message ?? 'This does not fit.';
    return refused({ kind: 'badValue', field: edit.field, says });
  }
  const empty = Object.keys(run).every((key) => key === 'id' || run[key] === null);
  const runs = withEntry(project.runs, edit.id, empty ? null : (run as Run), own);
  return done({ ...project, runs }, { kind: 'putRun', id: edit.id, value: before ?? null });
}

/** Parts may come from any version, so the whole is held against the shape instead of each part. */
function takeParts(
  project: Project,
  edit: Extract<Edit, { kind: 'takeParts' | 'settle' }>,
  takingBack: boolean,
): Applied {
  const parts: readonly Part[] = edit.kind === 'settle' ? [edit.part] : edit.parts;
  const { history: before, ...written } = writeParts(project, parts);
  const history = edit.kind === 'settle' ? before : edit.history;
  const after: Project = history ? { ...written, history } : written;
  const parsed = takingBack ? undefined : projectSchema.safeParse(after);
  if (parsed?.error) {
    const issue = parsed.error.issues[0];
    const field = issue?.path.join('.') ?? edit.kind;
    return refused({ kind: 'badValue', field, says: `${field}: ${issue?.message ?? 'this does not fit.'}` });
  }
  const olds = parts.map((part) => standingPart(project, part));
  return done(after, { kind: 'takeParts', parts: olds, history: before ?? null });
}

function factProblem(fact: string, value: z.infer<typeof anyFact> | null): CommandProblem | undefined {
  if (!isFactKey(fact)) return { kind: 'noSuchFact', fact };
  if (value === null || value.is === 'unknown') return undefined;
  const parsed = factSchemas[fact].safeParse(value.value);
  if (parsed.success) return undefined;
  return {
    kind: 'badValue',
    field: fact,
    says: parsed.error.issues[0]?.message ?? 'This value does not fit.',
  };
}

function markIsTaken(project: Project, own: Own, id: string, mark: string): boolean {
  const mine = entry(project.openings, id)?.mark === mark ? 1 : 0;
  return (own.marks(project).get(mark) ?? 0) > mine;
}

/** Own entries only: an id such as "constructor" would otherwise find what every object inherits. */
function entry<T>(record: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

function withOpening(project: Project, own: Own, id: string, opening: Project['openings'][string]): Project {
  return { ...project, openings: withEntry(project.openings, id, opening, own) };
}

function withEntry<T>(
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
