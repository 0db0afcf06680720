import type { z } from 'zod';
import type { Facts } from '../model/fact.ts';
import { factSchemas, isFactKey } from '../model/fields.ts';
import type { Bid } from '../model/bid.ts';
import { noRun, type Run, runSchema } from '../model/power.ts';
import { openingSchema, type Project, projectNeedsName, projectSchema } from '../model/project.ts';
import type { anyFact, Applied, CommandProblem, Edit } from './edits.ts';
import { type Part, standingPart, writeParts } from './writeParts.ts';
import { entry, markIsTaken, type Own, withEntry, withOpening } from './own.ts';

type Of<K extends Edit['kind']> = Extract<Edit, { kind: K }>;

interface How {
  /** Taking back asks only for the right shape. */
  readonly takingBack: boolean;
  readonly own: Own;
}

/** Does one kind of edit and says how it is undone. What stood there is read first: the record may be written in place. */
type Handler<K extends Edit['kind']> = (project: Project, edit: Of<K>, how: How) => Applied;

const done = (project: Project, ...inverse: Edit[]): Applied => ({ ok: true, project, inverse });
export const refused = (problem: CommandProblem): Applied => ({ ok: false, problem });
const badValue = (field: string, error: z.ZodError | undefined, otherwise = 'This does not fit.') =>
  refused({ kind: 'badValue', field, says: error?.issues[0]?.message ?? otherwise });

/** Handlers of records by id: put in, or taken out with null. */
const put =
  <K extends Edit['kind']>(
    record:
      | 'floors'
      | 'spaces'
      | 'closets'
      | 'supplies'
      | 'productBook'
      | 'runs'
      | 'prices'
      | 'itemBook'
      | 'remarks'
      | 'photos'
      | 'plans'
      | 'pins'
      | 'standards',
  ): Handler<K> =>
  (project, edit, { own }) => {
    const { id, value } = edit as Of<'putFloor'>;
    const records = project[record] as Project['floors'];
    const before = entry(records, id) ?? null;
    const after = withEntry(records, id, value, own);
    return done({ ...project, [record]: after }, { ...edit, value: before });
  };

/** Handlers of facts that hold for the building. */
const setBuilding =
  <K extends Edit['kind']>(record: 'building' | 'usual'): Handler<K> =>
  (project, edit, { own }) => {
    const { fact, value } = edit as Of<'setBuildingFact'>;
    const problem = factProblem(fact, value);
    if (problem) return refused(problem);
    const before = entry<unknown>(project[record], fact);
    const facts = withEntry<unknown>(project[record], fact, value, own) as Facts;
    return done({ ...project, [record]: facts }, { ...edit, value: (before as typeof value) ?? null });
  };

/** Every kind of edit there is, by its name in the log: a kind without a handler does not compile. */
const handlers: { readonly [K in Edit['kind']]: Handler<K> } = {
  setProject: (project, edit, { takingBack }) => {
    if (edit.field === 'name' && edit.value.trim() === '' && !takingBack) {
      return refused({ kind: 'badValue', field: 'name', says: projectNeedsName });
    }
    const parsed = projectSchema.shape[edit.field].safeParse(edit.value);
    if (!parsed.success && !takingBack) return badValue(edit.field, parsed.error);
    return done({ ...project, [edit.field]: edit.value }, { ...edit, value: project[edit.field] });
  },
  setBasis: (project, edit) => done({ ...project, basis: edit.value }, { ...edit, value: project.basis }),
  setWeights: (project, edit) =>
    done({ ...project, weights: edit.value }, { ...edit, value: { ...project.weights } }),
  setBuildingFact: setBuilding('building'),
  setUsual: setBuilding('usual'),
  putFloor: put('floors'),
  putSpace: put('spaces'),
  putAmendment: (project, edit) => {
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
  },
  putOpening: (project, edit, { takingBack, own }) => {
    const before = entry(project.openings, edit.id);
    if (edit.value !== null && !takingBack && markIsTaken(project, own, edit.id, edit.value.mark)) {
      return refused({ kind: 'markTaken', mark: edit.value.mark });
    }
    own.markChanged(before?.mark, edit.value?.mark);
    const { value } = edit;
    const openings = withEntry(project.openings, edit.id, value, own);
    const inverse: Edit = { ...edit, value: before ?? null };
    if (value !== null && before) return done({ ...project, openings }, inverse);
    // Photos go with their opening and come back with it; the inverse of an opening that is new here is a removal too.
    const mine = Object.values(project.photos).filter((photo) => photo.openingId === edit.id);
    const back = mine.map((photo): Edit => ({ kind: 'putPhoto', id: photo.id, value: photo }));
    if (value !== null) return done({ ...project, openings }, inverse, ...back);
    const photos = mine.reduce((left, { id }) => withEntry(left, id, null, own), project.photos);
    return done({ ...project, openings, photos }, inverse, ...back);
  },
  setOpening: (project, edit, { takingBack, own }) => {
    const opening = entry(project.openings, edit.id);
    if (!opening) return refused({ kind: 'noSuchOpening', id: edit.id });
    if (edit.field === 'mark') {
      const parsed = openingSchema.shape.mark.safeParse(edit.value);
      if (!parsed.success) return badValue('mark', parsed.error, 'Bad mark.');
      if (!takingBack && markIsTaken(project, own, edit.id, parsed.data)) {
        return refused({ kind: 'markTaken', mark: parsed.data });
      }
      own.markChanged(opening.mark, parsed.data);
    }
    const value = edit.field === 'notes' ? (edit.value ?? '') : edit.value;
    const after = withOpening(project, own, edit.id, { ...opening, [edit.field]: value });
    return done(after, { ...edit, value: opening[edit.field] });
  },
  setFact: (project, edit, { own }) => {
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
  },
  appendVerdict: (project, { id, value }, { own }) => {
    if (entry(project.verdicts, id)) return refused({ kind: 'verdictTaken', id });
    const verdicts = withEntry(project.verdicts, id, value, own);
    const verdictIndex = withEntry(project.verdictIndex, id, value.hash, own);
    return done({ ...project, verdicts, verdictIndex });
  },
  putRemark: put('remarks'),
  putPhoto: put('photos'),
  putPlan: put('plans'),
  putPin: put('pins'),
  setOverride: (project, edit, { own }) => {
    const { id, value } = edit;
    const opening = entry(project.openings, id);
    if (!opening) return refused({ kind: 'noSuchOpening', id });
    const after = withOpening(project, own, id, { ...opening, override: value });
    return done(after, { ...edit, value: opening.override });
  },
  putHardwareSet: (project, edit, { takingBack, own }) => {
    const before = entry(project.hardwareSets, edit.id) ?? null;
    const taken = Object.values(project.hardwareSets).some(
      (one) => one.id !== edit.id && one.number === edit.value?.number,
    );
    if (taken && !takingBack) return refused({ kind: 'setNumberTaken', number: edit.value?.number ?? '' });
    const hardwareSets = withEntry(project.hardwareSets, edit.id, edit.value, own);
    return done({ ...project, hardwareSets }, { ...edit, value: before });
  },
  putPrice: put('prices'),
  putItemEntry: put('itemBook'),
  setBid: (project, edit) => {
    const before = Object.fromEntries(Object.keys(edit.value).map((key) => [key, project.bid[key]]));
    return done({ ...project, bid: { ...project.bid, ...edit.value } as Bid }, { ...edit, value: before });
  },
  keepSetNumbers: (project, edit, { own }) => {
    let { hardwareSets } = project;
    const inverse: Edit[] = [];
    for (const [formerly, number] of Object.entries(edit.value)) {
      const kept = Object.values(hardwareSets).find((one) => one.formerly === formerly);
      if (!kept && number === null) continue;
      const id = kept?.id ?? `set-${number}`;
      const before = entry(hardwareSets, id) ?? null;
      const known = before ?? { id, name: '', revision: 0, members: {}, content: '', number: '' };
      const value = number === null ? null : { ...known, number, formerly };
      hardwareSets = withEntry(hardwareSets, id, value, own);
      inverse.push({ kind: 'putHardwareSet', id, value: before });
    }
    return done({ ...project, hardwareSets }, ...inverse.toReversed());
  },
  putCloset: put('closets'),
  putSupply: put('supplies'),
  putStandard: put('standards'),
  putProduct: put('productBook'),
  // Undone as a whole: an opening about which nothing is said has no entry.
  setRun: (project, edit, { takingBack, own }) => {
    if (!entry(project.openings, edit.id) && !takingBack) {
      return refused({ kind: 'noSuchOpening', id: edit.id });
    }
    const before = entry(project.runs, edit.id);
    const run = { ...(before ?? noRun(edit.id)), [edit.field]: edit.value };
    const parsed = runSchema.safeParse(run);
    if (!parsed.success) return badValue(edit.field, parsed.error);
    const empty = Object.keys(run).every((key) => key === 'id' || run[key] === null);
    const runs = withEntry(project.runs, edit.id, empty ? null : (run as Run), own);
    return done({ ...project, runs }, { kind: 'putRun', id: edit.id, value: before ?? null });
  },
  putRun: put('runs'),
  setAside: (project, edit) => {
    const { setAside: before, ...rest } = project;
    const after = edit.value.length > 0 ? { ...rest, setAside: edit.value } : rest;
    return done(after, { kind: 'setAside', value: [...(before ?? [])] });
  },
  takeParts: (project, edit, how) => takeParts(project, edit, edit.parts, edit.history, how),
  settle: (project, edit, how) => takeParts(project, edit, [edit.part], null, how),
};

/** Parts may come from any version, so the whole is held against the shape instead of each part. */
function takeParts(
  project: Project,
  { kind }: Of<'takeParts' | 'settle'>,
  parts: readonly Part[],
  given: Project['history'] | null,
  { takingBack }: How,
): Applied {
  const { history: before, ...written } = writeParts(project, parts);
  const history = kind === 'settle' ? before : given;
  const after: Project = history ? { ...written, history } : written;
  const parsed = takingBack ? undefined : projectSchema.safeParse(after);
  if (parsed?.error) {
    const issue = parsed.error.issues[0];
    const field = issue?.path.join('.') ?? kind;
    return refused({ kind: 'badValue', field, says: `${field}: ${issue?.message ?? 'this does not fit.'}` });
  }
  const olds = parts.map((part) => standingPart(project, part));
  return done(after, { kind: 'takeParts', parts: olds, history: before ?? null });
}

export function handle<K extends Edit['kind']>(project: Project, edit: Of<K>, how: How): Applied {
  // An edit read from a log may be of a kind that this version does not know.
  const handler = Object.hasOwn(handlers, edit.kind) ? (handlers[edit.kind] as Handler<K>) : undefined;
  if (!handler)
    return refused({ kind: 'badValue', field: edit.kind, says: 'This version knows no such edit.' });
  return handler(project, edit, how);
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
