import { z } from 'zod';
import type { Edit } from '../commands/edits.ts';
import { itemEntrySchema } from '../model/bid.ts';
import { idSchema } from '../model/ids.ts';
import { productSchema } from '../model/power.ts';
import { amendmentSchema, type Project, scoreParts, type Weights, weightsSchema } from '../model/project.ts';
import { type Standard, standardHelpShape, standardInWords, standardSchema } from '../model/standard.ts';
import { withPreferred } from './preferences.ts';
import { counted } from '../text/counted.ts';

export const standardFormat = 'latchward-standard';
/** 2 brought preferred devices, templates and mappings; a standard of format 1 has none. */
const standardVersion = 2;

/** An owner’s standard as a file: the rules, products and items of one project, for many. */
const standardFileSchema = z.looseObject({
  format: z.literal(standardFormat),
  version: z.union([z.literal(1), z.literal(standardVersion)]),
  ...standardSchema.pick({ id: true, name: true, edition: true }).shape,
  amendments: z.array(amendmentSchema),
  /** How much each part of the score counts; null leaves it to the project. */
  weights: weightsSchema.nullable(),
  products: z.record(idSchema, productSchema),
  items: z.record(idSchema, itemEntrySchema),
  ...standardHelpShape,
});
export type StandardFile = Readonly<z.infer<typeof standardFileSchema>>;

export type StandardHelp = Pick<Standard, 'templates' | 'columns' | 'words'>;

/** What a project holds of rules, preferences, products and items, as a standard for others. */
export function standardOf(
  project: Project,
  { id, name, edition }: Pick<Standard, 'id' | 'name' | 'edition'>,
  help: StandardHelp = {},
): StandardFile {
  const preferred = Object.entries(project.weights.preferred ?? {}).map(
    ([device, { standard: _standard, ...one }]) => [device, one] as const,
  );
  return {
    format: standardFormat,
    version: standardVersion,
    id,
    name,
    edition,
    amendments: project.amendments.map(({ standard: _standard, ...amendment }) => amendment),
    weights: withPreferred(project.weights, Object.fromEntries(preferred)),
    products: { ...project.productBook },
    items: { ...project.itemBook },
    ...help,
  };
}

export const standardText = (file: StandardFile): string => `${JSON.stringify(file, null, 2)}\n`;

export type ReadStandard =
  | { readonly ok: true; readonly file: StandardFile }
  | { readonly ok: false; readonly says: string };

/** A file of any kind → a standard, or a sentence that says why it is none. Nothing is taken by half. */
export function readStandard(text: string): ReadStandard {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    return { ok: false, says: 'This is not an owner’s standard: the file is not JSON.' };
  }
  const { format, version } = (raw ?? {}) as { readonly format?: unknown; readonly version?: unknown };
  if (format !== standardFormat) {
    return { ok: false, says: 'This is not an owner’s standard; it is a JSON file of another kind.' };
  }
  if (typeof version === 'number' && version > standardVersion) {
    return { ok: false, says: `This standard is of format ${version}; a newer Latchward reads it.` };
  }
  const parsed = standardFileSchema.safeParse(raw);
  if (parsed.success) return { ok: true, file: parsed.data };
  const [issue] = parsed.error.issues;
  const place = issue?.path.join(', ') ?? '';
  return {
    ok: false,
    says: `The standard is damaged${place === '' ? '' : ` at “${place}”`}. Nothing was taken from it.`,
  };
}

/** Edits that make the project follow it: what an earlier edition brought and this one does not, goes. One command. */
export function followEdits(project: Project, file: StandardFile): readonly Edit[] {
  const { id, name, edition } = file;
  const before = followed(project, id);
  const gone = (had: Readonly<Record<string, true>> | undefined, has: ReadonlySet<string>) =>
    Object.keys(had ?? {}).filter((one) => !has.has(one));
  const [amendments, products, items] = [
    file.amendments.map((one) => one.id),
    Object.keys(file.products),
    Object.keys(file.items),
  ].map((ids) => new Set(ids)) as [Set<string>, Set<string>, Set<string>];
  const standard = standardInWords(file);
  const weights = weightsUnder(project, file);
  const value: Standard = {
    id,
    name,
    edition,
    amendments: named(amendments),
    products: named(products),
    items: named(items),
    ...(file.templates === undefined ? {} : { templates: file.templates }),
    ...(file.columns === undefined ? {} : { columns: file.columns }),
    ...(file.words === undefined ? {} : { words: file.words }),
  };
  return [
    ...gone(before?.amendments, amendments).map(
      (one): Edit => ({ kind: 'putAmendment', id: one, value: null }),
    ),
    ...gone(before?.products, products).map((one): Edit => ({ kind: 'putProduct', id: one, value: null })),
    ...gone(before?.items, items).map((one): Edit => ({ kind: 'putItemEntry', id: one, value: null })),
    ...file.amendments.map(
      (one): Edit => ({ kind: 'putAmendment', id: one.id, value: { ...one, standard } }),
    ),
    ...Object.entries(file.products).map(
      ([one, product]): Edit => ({ kind: 'putProduct', id: one, value: product }),
    ),
    ...Object.entries(file.items).map(
      ([one, entry]): Edit => ({ kind: 'putItemEntry', id: one, value: entry }),
    ),
    ...(JSON.stringify(weights) === JSON.stringify(project.weights)
      ? []
      : [{ kind: 'setWeights', value: weights } as const]),
    { kind: 'putStandard', id, value },
  ];
}

/**
 * Weights under the standard: its own preferences under its name, those the project or another standard entered as they
 * stand, and none that an earlier edition of it brought. A device that both prefer goes by the standard.
 */
function weightsUnder(project: Project, file: StandardFile): Weights {
  const before = followed(project, file.id);
  const hadName = before === undefined ? undefined : standardInWords(before);
  const own = Object.entries(project.weights.preferred ?? {}).filter(
    ([, one]) => one.standard === undefined || one.standard !== hadName,
  );
  const brought = Object.entries(file.weights?.preferred ?? {}).map(
    ([device, one]) => [device, { ...one, standard: standardInWords(file) }] as const,
  );
  return withPreferred(file.weights ?? project.weights, Object.fromEntries([...own, ...brought]));
}

const followed = ({ standards }: Project, id: string): Standard | undefined =>
  Object.hasOwn(standards, id) ? standards[id] : undefined;

const named = (ids: ReadonlySet<string>): Record<string, true> =>
  Object.fromEntries([...ids].map((id) => [id, true as const]));

/** What following it would do to the project, one sentence each. */
export function followInWords(project: Project, file: StandardFile): readonly string[] {
  const before = followed(project, file.id);
  const here = new Map(project.amendments.map(({ standard: _standard, ...one }) => [one.id, one]));
  const amendments = file.amendments.map(({ standard: _standard, ...one }) => one);
  const changes = [
    ...counts(
      'rule',
      amendments.map((one) => [one.id, one]),
      (id) => here.get(id),
      before?.amendments,
    ),
    ...counts('product', Object.entries(file.products), (id) => project.productBook[id], before?.products),
    ...counts('item', Object.entries(file.items), (id) => project.itemBook[id], before?.items),
    ...preferenceCounts(project, file),
    ...counts(
      'template',
      Object.entries(file.templates ?? {}),
      (id) => before?.templates?.[id],
      before?.templates,
    ),
    ...mappingCounts(before, file),
  ];
  const bare = (weights: Weights) => JSON.stringify(scoreParts.map((part) => weights[part]));
  const weights = file.weights !== null && bare(file.weights) !== bare(project.weights);
  return [
    before === undefined
      ? `The project does not follow “${file.name}” yet. Edition ${file.edition} would be taken.`
      : `The project follows edition ${before.edition} of “${before.name}”. Edition ${file.edition} would take its place.`,
    ...changes,
    ...(weights ? ['The weights of the ranking would change.'] : []),
    ...(changes.length === 0 && !weights ? ['Nothing else in the project would change.'] : []),
  ];
}

function preferenceCounts(project: Project, file: StandardFile): readonly string[] {
  const bare = (preferred: Weights['preferred'] = {}) =>
    Object.entries(preferred).map(([device, { points, says }]) => [device, { points, says }] as const);
  const here = new Map(bare(project.weights.preferred));
  const after = bare(weightsUnder(project, file).preferred);
  return counts('preferred device', after, (device) => here.get(device), Object.fromEntries(here));
}

/** Headings and words that would be read by the standard from now on, or no longer. */
function mappingCounts(before: Standard | undefined, file: StandardFile): readonly string[] {
  const all = ({ columns = {}, words = {} }: StandardHelp) => [
    ...Object.entries(columns).map(([key, use]) => [`column ${key}`, use] as const),
    ...Object.entries(words).map(([key, use]) => [`word ${key}`, use] as const),
  ];
  const here = new Map<string, string>(before ? all(before) : []);
  return counts('mapping', all(file), (key) => here.get(key), Object.fromEntries(here));
}

function counts(
  word: string,
  entries: readonly (readonly [string, unknown])[],
  hereOf: (id: string) => unknown,
  had: Readonly<Record<string, unknown>> = {},
): readonly string[] {
  const has = new Set(entries.map(([id]) => id));
  const added = entries.filter(([id]) => hereOf(id) === undefined).length;
  const changed = entries.filter(([id, one]) => {
    const here = hereOf(id);
    return here !== undefined && JSON.stringify(here) !== JSON.stringify(one);
  }).length;
  const gone = Object.keys(had).filter((id) => !has.has(id) && hereOf(id) !== undefined).length;
  const parts = [
    ...(added > 0 ? [`${counted(added, word)} added`] : []),
    ...(changed > 0 ? [`${counted(changed, word)} changed`] : []),
    ...(gone > 0 ? [`${counted(gone, word)} removed`] : []),
  ];
  return parts.length === 0 ? [] : [`${parts.join(', ')}.`];
}
