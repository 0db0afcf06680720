import { z } from 'zod';
import type { Edit } from '../commands/edits.ts';
import { itemEntrySchema } from '../model/bid.ts';
import { idSchema } from '../model/ids.ts';
import { productSchema } from '../model/power.ts';
import { amendmentSchema, type Project, weightsSchema } from '../model/project.ts';
import { type Standard, standardInWords, standardSchema } from '../model/standard.ts';
import { counted } from '../text/counted.ts';

export const standardFormat = 'latchward-standard';
const standardVersion = 1;

/** An owner’s standard as a file: the rules, products and items of one project, for many. */
const standardFileSchema = z.looseObject({
  format: z.literal(standardFormat),
  version: z.literal(standardVersion),
  ...standardSchema.pick({ id: true, name: true, edition: true }).shape,
  amendments: z.array(amendmentSchema),
  /** How much each part of the score counts; null leaves it to the project. */
  weights: weightsSchema.nullable(),
  products: z.record(idSchema, productSchema),
  items: z.record(idSchema, itemEntrySchema),
});
export type StandardFile = Readonly<z.infer<typeof standardFileSchema>>;

/** What a project holds of rules, products and items, as a standard for others. */
export function standardOf(
  project: Project,
  { id, name, edition }: Pick<Standard, 'id' | 'name' | 'edition'>,
): StandardFile {
  return {
    format: standardFormat,
    version: standardVersion,
    id,
    name,
    edition,
    amendments: project.amendments.map(({ standard: _standard, ...amendment }) => amendment),
    weights: { ...project.weights },
    products: { ...project.productBook },
    items: { ...project.itemBook },
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
  const value: Standard = {
    id,
    name,
    edition,
    amendments: named(amendments),
    products: named(products),
    items: named(items),
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
    ...(file.weights === null ? [] : [{ kind: 'setWeights', value: file.weights } as const]),
    { kind: 'putStandard', id, value },
  ];
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
  ];
  const weights = file.weights !== null && JSON.stringify(file.weights) !== JSON.stringify(project.weights);
  return [
    before === undefined
      ? `The project does not follow “${file.name}” yet. Edition ${file.edition} would be taken.`
      : `The project follows edition ${before.edition} of “${before.name}”. Edition ${file.edition} would take its place.`,
    ...changes,
    ...(weights ? ['The weights of the ranking would change.'] : []),
    ...(changes.length === 0 && !weights ? ['Nothing else in the project would change.'] : []),
  ];
}

function counts(
  word: string,
  entries: readonly (readonly [string, unknown])[],
  hereOf: (id: string) => unknown,
  had: Readonly<Record<string, true>> = {},
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
