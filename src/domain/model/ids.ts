import { z } from 'zod';

export const idSchema = z
  .string()
  .min(1)
  .max(64)
  // Names that every object inherits: "__proto__" would be dropped without a word wherever objects are copied,
  // and an opening "constructor" would be found in an empty project.
  .refine((id) => !(id in {}), 'This id cannot be used.');

/** What fits on a line of a screen or a sheet; a name without an end would push everything else off it. */
export const longestName = 120;
