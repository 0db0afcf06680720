import { strToU8, zipSync } from 'fflate';
import { counted } from '../domain/text/counted.ts';
import { readProjectBytes } from './text.ts';
import { entriesOf, filesOf } from './zip.ts';

/**
 * The project as one file: a zip with a page that names the container, the project itself, and pictures beside it.
 * The same project gives the same bytes (docs/spec/project-file.md).
 */
export const containerMarker = 'latchward-container';
export const newestContainer = 1;
const headName = 'latchward.json';
const projectName = 'project.json';

export type ReadContainer =
  | {
      readonly ok: true;
      readonly text: string;
      /** Files that this version has no use for; said, because it cannot carry them on. */
      readonly note: string;
    }
  | { readonly ok: false; readonly says: string };

/** 1980 is the first year that a zip can name; a real time would make each copy another file. */
const noTime = new Date(1980, 0, 1);

export function packProject(text: string): Uint8Array<ArrayBuffer> {
  const head = { format: containerMarker, formatVersion: newestContainer };
  const files = { [headName]: strToU8(`${JSON.stringify(head)}\n`), [projectName]: strToU8(text) };
  return zipSync(files, { mtime: noTime, level: 6 });
}

const isZip = (bytes: Uint8Array) => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** A workbook is a zip as well; a container names itself. */
export function isContainer(bytes: Uint8Array): boolean {
  const entries = isZip(bytes) ? entriesOf(bytes) : '';
  return typeof entries !== 'string' && entries.some(({ name }) => name === headName);
}

/** A project file of either kind, container or plain JSON, as the text of the project. */
export function readProjectFile(bytes: Uint8Array): ReadContainer {
  if (!isZip(bytes)) {
    const read = readProjectBytes(bytes);
    return read.ok ? { ok: true, text: read.text, note: '' } : read;
  }
  const files = filesOf(bytes);
  if (typeof files === 'string') return { ok: false, says: files };
  const version = versionOf(files.get(headName));
  const project = files.get(projectName);
  if (version === undefined || !project) {
    return { ok: false, says: 'This zip is not a Latchward project file.' };
  }
  if (version > newestContainer) {
    return {
      ok: false,
      says: `This file was written by a newer version (container ${version}; this version reads up to ${newestContainer}). Open it with that version; it was left untouched.`,
    };
  }
  const read = readProjectBytes(project);
  if (!read.ok) return read;
  const others = [...files.keys()].filter((name) => name !== headName && name !== projectName);
  return { ok: true, text: read.text, note: others.length === 0 ? '' : othersInWords(others) };
}

function versionOf(head: Uint8Array | undefined): number | undefined {
  const read = head ? readProjectBytes(head) : undefined;
  if (!read?.ok) return undefined;
  try {
    const said = JSON.parse(read.text) as { format?: unknown; formatVersion?: unknown } | null;
    const version = said?.format === containerMarker ? said.formatVersion : undefined;
    return typeof version === 'number' && Number.isInteger(version) && version > 0 ? version : undefined;
  } catch {
    return undefined;
  }
}

function othersInWords(names: readonly string[]): string {
  const some = names.slice(0, 3).join(', ');
  const files = counted(names.length, 'file');
  return `The project file also holds ${files} that this version does not use (${some}). Keep the file: copies saved here do not hold them.`;
}
