import type { Edit } from '../domain/commands/command.ts';
import type { Opening, Project } from '../domain/model/project.ts';
import { pictureNames } from '../domain/model/pictureNames.ts';
import { aboutInWords } from '../domain/survey/photos.ts';
import { counted } from '../domain/text/counted.ts';
import { midSentence } from '../domain/text/midSentence.ts';
import type { SecondCopy } from '../storage/copy/secondCopy.ts';
import { isOutOfReach, storageProblemInWords } from '../storage/problems.ts';
import type { PhotoStore } from '../storage/photoStore.ts';
import type { Clock, NewId } from './clock.ts';
import { sha256OfBytes } from '../intake/sha256.ts';
import { type ShrinkPicture, shrinkPicture } from './shrinkPicture.ts';
import type { AppStore } from './store.ts';

export type Added =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly says: string };

export interface Pictures {
  readonly pictures: ReadonlyMap<string, Uint8Array>;
  /** Names of those that could not be read. */
  readonly missing: readonly string[];
}

/** Pictures between the camera, this browser, its second copy and files. */
export interface PhotoDesk {
  /** Shrinks a picture, keeps it, and only then adds its record to the project. */
  readonly add: (of: Pick<Opening, 'id' | 'mark'>, about: string, file: Blob) => Promise<Added>;
  /** Shrinks and keeps a picture that something else than a photo will name. */
  readonly keepPicture: (file: Blob, longestPx?: number) => Promise<KeptPicture>;
  readonly read: (sha256: string) => Promise<Uint8Array | undefined>;
  /** Every picture a project names, to go out in a file. */
  readonly ofProject: (project: Project) => Promise<Pictures>;
  /** Keeps what came in a file; a sentence where that failed for some, '' where not. */
  readonly keepAll: (pictures: ReadonlyMap<string, Uint8Array>) => Promise<string>;
  /** Every picture that a project, its backups and its edits name. */
  readonly namesOf: (projectId: string) => Promise<ReadonlySet<string>>;
  /** Removes what nothing names any more. `erased` goes at once. */
  readonly sweep: (erased?: ReadonlySet<string>) => Promise<void>;
}

export type KeptPicture =
  | {
      readonly ok: true;
      readonly sha256: string;
      readonly widthPx: number;
      readonly heightPx: number;
      readonly bytes: number;
    }
  | { readonly ok: false; readonly says: string };

export interface PhotoNeeds {
  readonly photos: PhotoStore;
  readonly copies: SecondCopy;
  readonly store: AppStore;
  readonly clock: Clock;
  readonly newId: NewId;
  readonly by: () => string;
  readonly shrink?: ShrinkPicture | undefined;
}

export function createPhotoDesk({
  photos,
  copies,
  store,
  clock,
  newId,
  by,
  shrink = shrinkPicture,
}: PhotoNeeds): PhotoDesk {
  /** A picture is kept where the database has it; where that is out of reach, where the second copy has it. */
  const keep = async (sha256: string, bytes: Uint8Array): Promise<string> => {
    const put = await photos.put(sha256, bytes);
    if (!put.ok && !isOutOfReach(put.problem)) {
      return put.problem.kind === 'full'
        ? 'The disk or the browser’s storage is full, so the photo is not kept. Make room and try again, or save the picture to a file.'
        : `The photo is not kept. ${storageProblemInWords(put.problem)}`;
    }
    const copied = await copies.putPhoto(sha256, bytes);
    return put.ok || copied.ok ? '' : `The photo is not kept. ${storageProblemInWords(put.problem)}`;
  };
  const read = async (sha256: string): Promise<Uint8Array | undefined> => {
    const found = await photos.get(sha256);
    if (found.ok && found.bytes) return found.bytes;
    const copied = await copies.photo(sha256);
    const bytes = copied.ok ? copied.value : null;
    // The second copy answers for a database that lost its pictures; a file cut short answers for nothing.
    if (!bytes || (await sha256OfBytes(bytes)) !== sha256) return undefined;
    if (found.ok) await photos.put(sha256, bytes);
    return bytes;
  };
  const keepPicture: PhotoDesk['keepPicture'] = async (file, longestPx) => {
    const { saving } = store.getState();
    if (saving.kind === 'readOnly') return { ok: false, says: saving.says };
    const shrunk = await shrink(file, longestPx);
    if (!shrunk.ok) return shrunk;
    const { bytes, widthPx, heightPx } = shrunk;
    const sha256 = await sha256OfBytes(bytes);
    if (sha256 === undefined) {
      return { ok: false, says: 'Photos can be kept only where the app is opened over https.' };
    }
    const says = await keep(sha256, bytes);
    return says === '' ? { ok: true, sha256, widthPx, heightPx, bytes: bytes.length } : { ok: false, says };
  };
  return {
    read,
    keepPicture,
    add: async (of, about, file) => {
      const kept = await keepPicture(file);
      if (!kept.ok) return kept;
      const { ok: _ok, ...picture } = kept;
      const id = newId();
      const value = {
        id,
        openingId: of.id,
        about,
        caption: '',
        arrows: {},
        at: clock(),
        by: by(),
        ...picture,
      };
      const edit: Edit = { kind: 'putPhoto', id, value };
      const done = store
        .getState()
        .dispatch(`${of.mark}: photo, ${midSentence(aboutInWords(about))}`, [edit]);
      return done.ok ? { ok: true, id } : done;
    },
    ofProject: async (project) => {
      const names = [...new Set(pictureNames(project))];
      const found = new Map<string, Uint8Array>();
      const missing: string[] = [];
      for (const name of names) {
        // oxlint-disable-next-line no-await-in-loop -- one after the other: hundreds of pictures at once fill the memory
        const bytes = await read(name);
        if (bytes) found.set(name, bytes);
        else missing.push(name);
      }
      return { pictures: found, missing };
    },
    keepAll: async (pictures) => {
      let failed = 0;
      let why = '';
      for (const [sha256, bytes] of pictures) {
        // oxlint-disable-next-line no-await-in-loop -- as above
        const says = await keep(sha256, bytes);
        if (says === '') continue;
        failed += 1;
        why = says;
      }
      return failed === 0
        ? ''
        : `${counted(failed, 'photo')} of ${pictures.size} in this file could not be kept here. ${why} Keep the file.`;
    },
    namesOf: async (projectId) => {
      const found = await photos.namesOf(projectId);
      return found.ok ? found.names : new Set();
    },
    sweep: async (erased) => {
      const inCopies = await copies.ids();
      const swept = await photos.sweep(erased, inCopies.ok ? inCopies.value : []);
      if (!swept.ok) return;
      const gone = new Set(swept.removed);
      // The second copy may hold one that the database lost.
      for (const name of erased ?? []) if (!swept.named.has(name)) gone.add(name);
      if (gone.size > 0) await copies.dropPhotos([...gone]);
    },
  };
}
