import type { Project } from '../domain/model/project.ts';
import {
  openProjectText,
  type Opened,
  openProblemInWords,
  saveProjectText,
} from '../domain/versions/file.ts';
import { packProject, readProjectFile, strangePhotosInWords } from '../intake/container.ts';
import { pictureNames } from '../domain/model/pictureNames.ts';
import { sha256OfBytes } from '../intake/sha256.ts';
import { isLocked, lockZip, unlock } from '../intake/passphrase.ts';

/** Saving a copy and opening a file need no database: they are the way out when the browser stores nothing. */

export interface FileToSave {
  readonly name: string;
  /** The project in it, as text. */
  readonly text: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export function fileOf(
  project: Project,
  today: string,
  pictures: ReadonlyMap<string, Uint8Array> = new Map(),
): FileToSave {
  const plain = project.name
    .normalize('NFKD')
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60);
  const text = saveProjectText(project);
  return {
    name: `${plain || 'project'} ${today.slice(0, 10)}.latchward.zip`,
    text,
    bytes: packProject(text, pictures),
  };
}

/** The same file, to be opened with a passphrase only. */
export async function locked(file: FileToSave, passphrase: string): Promise<FileToSave> {
  return { ...file, name: `${file.name}.age`, bytes: await lockZip(file.bytes, passphrase) };
}

export function downloadFile(file: FileToSave, page: Document = document): void {
  const address = URL.createObjectURL(new Blob([file.bytes], { type: 'application/zip' }));
  const link = page.createElement('a');
  link.href = address;
  link.download = file.name;
  page.body.append(link);
  link.click();
  link.remove();
  // Some browsers read the address only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

const asFile = (file: FileToSave) => new File([file.bytes], file.name, { type: 'application/zip' });

/** Whether this device sends such a file by its own sheet. Some browsers have the sheet and refuse the kind of file. */
export function canSend(device: Navigator = navigator): boolean {
  const empty = asFile({ name: 'project.latchward.zip', text: '', bytes: new Uint8Array() });
  // The type says that every browser has it; not every one does.
  const { canShare } = device as { readonly canShare?: Navigator['canShare'] };
  return canShare?.call(device, { files: [empty] }) === true;
}

/** Resolves once the device has taken the file, false where the person changed their mind. */
export async function sendFile(file: FileToSave, device: Navigator = navigator): Promise<boolean> {
  try {
    await device.share({ files: [asFile(file)], title: file.name });
    return true;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return false;
    throw error;
  }
}

export type OpenedFile =
  | {
      readonly ok: true;
      readonly opened: Extract<Opened, { ok: true }>;
      /** As it stood in the file, to be kept when it had to be migrated or mended. */
      readonly raw: unknown;
      /** What the file held beside the project; '' where there was nothing. */
      readonly note: string;
      /** Whole pictures that the project names. */
      readonly pictures: ReadonlyMap<string, Uint8Array>;
      /** Pictures it names that the file holds damaged or not at all. */
      readonly missing: readonly string[];
    }
  | {
      readonly ok: false;
      readonly says: string;
      /** It opens with a passphrase, and none was given or it was not the right one. */
      readonly locked?: true;
    };

export async function openFile(file: Pick<Blob, 'arrayBuffer'>, passphrase?: string): Promise<OpenedFile> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, says: `The file could not be read from the disk (${why}). Nothing was changed.` };
  }
  if (isLocked(bytes)) {
    if (passphrase === undefined) {
      return { ok: false, locked: true, says: 'This file opens with a passphrase. Enter it.' };
    }
    const opened = await unlock(bytes, passphrase);
    if (!opened.ok) {
      return { ok: false, says: opened.says, ...(opened.why === 'passphrase' ? { locked: true } : {}) };
    }
    bytes = opened.bytes;
  }
  const read = readProjectFile(bytes);
  if (!read.ok) return { ok: false, says: `${read.says} Nothing was changed.` };
  const { text } = read;
  const opened = openProjectText(text);
  if (!opened.ok) return { ok: false, says: openProblemInWords(opened.problem) };
  const named = new Set(pictureNames(opened.project));
  const pictures = new Map<string, Uint8Array>();
  const strange: string[] = [];
  for (const [sha256, picture] of read.photos) {
    if (!named.has(sha256)) strange.push(sha256);
    // oxlint-disable-next-line no-await-in-loop -- one after the other: all at once would need all of them twice
    else if ((await sha256OfBytes(picture)) === sha256) pictures.set(sha256, picture);
  }
  return {
    ok: true,
    opened,
    raw: JSON.parse(text.replace(/^\uFEFF/, '')) as unknown,
    note: [read.note, strangePhotosInWords(strange)].filter((says) => says !== '').join(' '),
    pictures,
    missing: [...named].filter((sha256) => !pictures.has(sha256)),
  };
}
