import { isPlain } from './parts.ts';

/** Tables of a project whose records name a picture by its hash. */
const tables = ['photos', 'plans'] as const;

/**
 * Every picture that a project document of any format, or a list of edits, names. It reads shapes and no types, because
 * a backup of another format is asked as well; naming one too many only keeps a picture longer.
 */
export function pictureNames(holder: unknown): readonly string[] {
  if (isPlain(holder)) return tables.flatMap((table) => namesIn(holder[table]));
  return namesIn(holder);
}

function namesIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return /^[0-9a-f]{64}$/.test(value) ? [value] : [];
  if (value === null || typeof value !== 'object') return [];
  return Object.values(value).flatMap(namesIn);
}
