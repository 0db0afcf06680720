import { strToU8, type Zippable, zipSync } from 'fflate';
import { counted } from '../domain/text/counted.ts';
import { readProjectBytes } from './text.ts';
import { isJpeg } from './picture/jpeg.ts';
import { entriesOf, filesOf } from './zip.ts';

/**
 * The project as one file: a zip with a page that names the container, the project itself, and pictures beside it.
 * The same project gives the same bytes (docs/spec/project-file.md).
 */
export const containerMarker = 'latchward-container';
export const newestContainer = 1;
const headName = 'latchward.json';
const projectName = 'project.json';
const photoName = (sha256: string) => `photos/${sha256}.jpg`;
const photoEntry = /^photos\/([0-9a-f]{64})\.jpg$/;

export type ReadContainer =
  | {
      readonly ok: true;
      readonly text: string;
      /** Files that this version has no use for; said, because it cannot carry them on. */
      readonly note: string;
      /** By the hash each is named after; whether it is that picture is still to be checked. */
      readonly photos: ReadonlyMap<string, Uint8Array>;
    }
  | { readonly ok: false; readonly says: string };

/** 1980 is the first year that a zip can name; a real time would make each copy another file. */
const noTime = new Date(1980, 0, 1);

export function packProject(
  text: string,
  photos: ReadonlyMap<string, Uint8Array> = new Map(),
): Uint8Array<ArrayBuffer> {
  const head = { format: containerMarker, formatVersion: newestContainer };
  const files: Zippable = { [headName]: strToU8(`${JSON.stringify(head)}\n`), [projectName]: strToU8(text) };
  // A photo is packed already; one order, so that the same project gives the same bytes.
  for (const [sha256, bytes] of [...photos].toSorted(([a], [b]) => (a < b ? -1 : 1))) {
    files[photoName(sha256)] = [bytes, { level: 0 }];
  }
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
    return read.ok ? { ok: true, text: read.text, note: '', photos: new Map() } : read;
  }
  // A photo that cannot be unpacked is missed where it is named, and costs nothing else.
  const files = filesOf(bytes, undefined, (name) => photoEntry.test(name));
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
  const photos = new Map<string, Uint8Array>();
  const others: string[] = [];
  for (const [name, file] of files) {
    const sha256 = photoEntry.exec(name)?.[1];
    if (sha256 === undefined) {
      if (name !== headName && name !== projectName) others.push(name);
    } else if (isJpeg(file)) photos.set(sha256, file);
  }
  const note = others.length === 0 ? '' : othersInWords(others);
  return { ok: true, text: read.text, note, photos };
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

/** Photos in the file that nothing in the project names; '' where there are none. */
export function strangePhotosInWords(names: readonly string[]): string {
  if (names.length === 0) return '';
  return `The project file also holds ${counted(names.length, 'photo')} that no opening names (${names[0]?.slice(0, 12)} …). Keep the file: copies saved here do not hold them.`;
}
