import { pictureNames } from '../domain/model/pictureNames.ts';
import type { Database, PhotoRow, Tables } from './database.ts';
import type { Result } from './problems.ts';

/** Pictures by their SHA-256: the same picture is kept once, whatever names it. */
export interface PhotoStore {
  readonly put: (sha256: string, bytes: Uint8Array) => Promise<Result<object>>;
  readonly get: (sha256: string) => Promise<Result<{ readonly bytes: Uint8Array | undefined }>>;
  /** Every picture that a project, its backups and its edits name. */
  readonly namesOf: (projectId: string) => Promise<Result<{ readonly names: ReadonlySet<string> }>>;
  /**
   * Removes pictures that nothing names any more. `alsoNow`: these go even if they are new. Where a project is known that
   * the database does not have, it may be brought back, so no other picture goes.
   */
  readonly sweep: (alsoNow?: ReadonlySet<string>, known?: readonly string[]) => Promise<Result<Swept>>;
}

export interface Swept {
  readonly removed: readonly string[];
  /** Every picture that something names. */
  readonly named: ReadonlySet<string>;
}

/** A picture is stored before the record that names it; for so long an unnamed one may still get its record. */
const graceMs = 24 * 3_600_000;

export function createPhotoStore(database: Database, clock: () => string): PhotoStore {
  return {
    put: (sha256, bytes) =>
      database.run('writing', async ({ photos }) => {
        // A view of a whole file would be stored with all of the file.
        const row: PhotoRow = { sha256, bytes: bytes.slice(), at: clock() };
        await photos.put(row);
        return {};
      }),
    get: (sha256) =>
      database.run('reading', async ({ photos }) => ({ bytes: (await photos.get(sha256))?.bytes })),
    namesOf: (projectId) =>
      database.run('reading', async (tables) => ({ names: await everyName(tables, projectId) })),
    sweep: (alsoNow = new Set(), known = []) =>
      database.run('writing', async (tables) => {
        const removed: string[] = [];
        // Reading every backup takes a while, and most browsers hold no picture at all.
        if (alsoNow.size === 0 && (await tables.photos.count()) === 0)
          return { removed, named: new Set<string>() };
        const here = new Set(await tables.projects.toCollection().primaryKeys());
        const isWhole = known.every((id) => here.has(id));
        const named = await everyName(tables);
        const now = Date.parse(clock());
        await tables.photos.each(({ sha256, at }) => {
          const isOld = isWhole && now - Date.parse(at) > graceMs;
          if (!named.has(sha256) && (isOld || alsoNow.has(sha256))) removed.push(sha256);
        });
        await tables.photos.bulkDelete(removed);
        return { removed, named };
      }),
  };
}

/**
 * Named by a project, by a backup, or by an edit in the list: whatever an undo in any window or a restored backup could
 * bring back. The list is longer than the undo of a window.
 */
async function everyName(tables: Tables, ofProject?: string): Promise<Set<string>> {
  const named = new Set<string>();
  const take = (holder: unknown) => {
    for (const name of pictureNames(holder)) named.add(name);
  };
  const isMeant = (id: string) => ofProject === undefined || id === ofProject;
  await tables.projects.each(({ id, document }) => {
    if (isMeant(id)) take(document);
  });
  await tables.backups.each(({ projectId, document }) => {
    if (isMeant(projectId)) take(document);
  });
  await tables.commands.each(({ projectId, command }) => {
    if (isMeant(projectId) && command.edits.some(({ kind }) => namesPictures.has(kind))) take(command.edits);
  });
  return named;
}

/** Kinds of edits that may carry the name of a picture; a merge carries whole parts. */
const namesPictures: ReadonlySet<string> = new Set(['putPhoto', 'takeParts', 'settle']);
