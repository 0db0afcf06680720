import type { Project } from '../domain/model/project.ts';
import {
  openProjectText,
  type Opened,
  openProblemInWords,
  saveProjectText,
} from '../domain/versions/file.ts';
import { readProjectBytes } from '../intake/text.ts';

/** Saving a copy and opening a file need no database: they are the way out when the browser stores nothing. */

export interface FileToSave {
  readonly name: string;
  readonly text: string;
}

export function fileOf(project: Project, today: string): FileToSave {
  const plain = project.name
    .normalize('NFKD')
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60);
  return {
    name: `${plain || 'project'} ${today.slice(0, 10)}.latchward.json`,
    text: saveProjectText(project),
  };
}

export function downloadFile(file: FileToSave, page: Document = document): void {
  const address = URL.createObjectURL(new Blob([file.text], { type: 'application/json' }));
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
    }
  | { readonly ok: false; readonly says: string };

export async function openFile(file: Pick<Blob, 'arrayBuffer'>): Promise<OpenedFile> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { ok: false, says: `The file could not be read from the disk (${why}). Nothing was changed.` };
  }
  const read = readProjectBytes(bytes);
  if (!read.ok) return { ok: false, says: `${read.says} Nothing was changed.` };
  const { text } = read;
  const opened = openProjectText(text);
  if (!opened.ok) return { ok: false, says: openProblemInWords(opened.problem) };
  return { ok: true, opened, raw: JSON.parse(text.replace(/^\uFEFF/, '')) as unknown };
}
