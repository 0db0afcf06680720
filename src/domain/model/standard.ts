import { z } from 'zod';
import { factsSchema } from './fact.ts';
import { idSchema } from './ids.ts';

const aLine = z.string().max(300);

/** An opening as the owner usually has it, to start another from. Its facts are assumed where they are taken over. */
export const standardTemplateSchema = z.looseObject({
  name: aLine.min(1, 'A template needs a name.'),
  facts: factsSchema,
});
/** What headings of door schedules are read as, and what their words mean, by heading or word. */
const mappingSchema = z.record(z.string(), z.string());

/** What a standard carries for those who work by it, beside what it decides. */
export const standardHelpShape = {
  templates: z.record(idSchema, standardTemplateSchema).optional(),
  columns: mappingSchema.optional(),
  words: mappingSchema.optional(),
};

/** An owner’s standard that a project follows: which edition of it, and what of the project came from it. */
export const standardSchema = z.looseObject({
  id: idSchema,
  name: aLine.min(1, 'A standard needs a name.'),
  /** The owner’s own count: "4", "2026-11". */
  edition: aLine.min(1, 'A standard needs an edition.'),
  /** Ids of what it brought; true for each. */
  amendments: z.record(idSchema, z.literal(true)),
  products: z.record(idSchema, z.literal(true)),
  items: z.record(idSchema, z.literal(true)),
  ...standardHelpShape,
});
export type Standard = Readonly<z.infer<typeof standardSchema>>;

/** "Standard of the owner, edition 4" — where it decided something. */
export const standardInWords = ({ name, edition }: Pick<Standard, 'name' | 'edition'>): string =>
  `${name}, edition ${edition}`;
