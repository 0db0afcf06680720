import { z } from 'zod';
import { idSchema } from './ids.ts';

const aLine = z.string().max(300);

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
});
export type Standard = Readonly<z.infer<typeof standardSchema>>;

/** "Standard of the owner, edition 4" — where it decided something. */
export const standardInWords = ({ name, edition }: Pick<Standard, 'name' | 'edition'>): string =>
  `${name}, edition ${edition}`;
