import type { Project } from '../domain/model/project.ts';
import {
  openProjectText,
  type Opened,
  openProblemInWords,
  saveProjectText,
} from '../domain/versions/file.ts';
import { packProject, readProjectFile } from '../intake/container.ts';
import { isLocked, lockZip, unlock } from '../intake/passphrase.ts';

/** Saving a copy and opening a file need no database: they are the way out when the browser stores nothing. */

export interface FileToSave {
  readonly name: string;
  /** The project in it, as text. */
  readonly text: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

export function fileOf(project: Project, today: string): FileToSave {
  const plain = project.name
    .normalize('NFKD')
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60);
  const text = saveProjectText(project);
  return {
    name: `${plain || 'project'} ${today.slice(0, 10)}.latchward.zip`,
    text,
    bytes: packProject(text),
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

export type OpenedFile =
  | {
      readonly ok: true;
      readonly opened: Extract<Opened, { ok: true }>;
      /** As it stood in the file, to be kept when it had to be migrated or mended. */
      readonly raw: unknown;
      /** What the file held beside the project; '' where there was nothing. */
      readonly note: string;
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
  const { text, note } = read;
  const opened = openProjectText(text);
  if (!opened.ok) return { ok: false, says: openProblemInWords(opened.problem) };
  return { ok: true, opened, raw: JSON.parse(text.replace(/^\uFEFF/, '')) as unknown, note };
}
