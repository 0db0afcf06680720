import { Inflate } from 'fflate';
import { crc32 } from './crc32.ts';

/** What a zip archive says it holds, read from its directory. Nothing that it says of sizes is believed. */
export interface Entry {
  readonly name: string;
  readonly packed: number;
  readonly method: number;
  readonly checksum: string;
  readonly encrypted: boolean;
  /** Where the entry begins in the archive. */
  readonly start: number;
}

const endSignature = 0x06054b50;
const entrySignature = 0x02014b50;
const localSignature = 0x04034b50;
/** A schedule of 20,000 rows unpacks to about 40 MB; no workbook of doors comes near these. */
const mostEntries = 5_000;
const mostUnpacked = 300_000_000;
const damaged = 'The archive is damaged: its list of contents cannot be read.';

/** A sentence why a workbook is not opened; undefined when nothing speaks against it. */
export function zipRefusal(bytes: Uint8Array): string | undefined {
  const entries = entriesOf(bytes);
  if (typeof entries === 'string') return entries;
  const program = entries.find(({ name }) => /vbaProject\.bin$|(^|\/)(activeX|macrosheets)\//i.test(name));
  if (program) {
    return 'The workbook holds programs (macros). Save it as a plain workbook (.xlsx) and open that.';
  }
  let room = mostUnpacked;
  for (const entry of entries) {
    const size = unpack(bytes, entry, room, () => undefined);
    if (typeof size === 'string') return size;
    room -= size;
  }
  return undefined;
}

/**
 * The files of an archive by name, each held against its checksum; or a sentence why it is not opened. `without` is asked
 * about a file that is damaged or too large: true where the archive is worth opening without it.
 */
export function filesOf(
  bytes: Uint8Array,
  most = mostUnpacked,
  without: (name: string) => boolean = () => false,
): ReadonlyMap<string, Uint8Array> | string {
  const entries = entriesOf(bytes);
  if (typeof entries === 'string') return entries;
  const files = new Map<string, Uint8Array>();
  let room = most;
  for (const entry of entries) {
    const file = fileOf(bytes, entry, room);
    if (typeof file === 'string') {
      if (without(entry.name)) continue;
      return file;
    }
    // What is not packed grows by nothing: the archive itself was as large.
    if (entry.method !== 0) room -= file.length;
    if (!entry.name.endsWith('/')) files.set(entry.name, file);
  }
  return files;
}

function fileOf(bytes: Uint8Array, entry: Entry, room: number): Uint8Array | string {
  const pieces: Uint8Array[] = [];
  const size = unpack(bytes, entry, room, (piece) => pieces.push(piece));
  if (typeof size === 'string') return size;
  const file = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    file.set(piece, at);
    at += piece.length;
  }
  return crc32(file) === entry.checksum
    ? file
    : `“${shown(entry.name)}” in the archive is damaged: its checksum does not match. Nothing was taken.`;
}

const shown = (name: string) => name.slice(0, 60);

/** The directory, or why the archive is refused for what stands there. */
export function entriesOf(bytes: Uint8Array): readonly Entry[] | string {
  const entries = directoryOf(bytes);
  if (typeof entries === 'string') return entries;
  if (entries.length > mostEntries)
    return `The archive holds ${entries.length} files, far more than any file opened here.`;
  const names = new Set<string>();
  for (const { name, encrypted } of entries) {
    if (/^[/\\]|^[a-z]:|(^|[/\\])\.\.([/\\]|$)|\0/i.test(name)) {
      return `The archive holds a file under the path “${shown(name)}”, which points outside it.`;
    }
    if (names.has(name)) return `The archive holds “${shown(name)}” twice.`;
    if (encrypted) return `“${shown(name)}” in the archive is locked with a password. Unlock it there first.`;
    names.add(name);
  }
  return entries;
}

/** Unpacks one entry in pieces and stops as soon as it is larger than the room left. The size, or a refusal. */
function unpack(
  bytes: Uint8Array,
  entry: Entry,
  room: number,
  take: (piece: Uint8Array) => void,
): number | string {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const cut = `“${shown(entry.name)}” in the archive is cut off or damaged.`;
  if (entry.start + 30 > bytes.length || view.getUint32(entry.start, true) !== localSignature) return cut;
  const from =
    entry.start + 30 + view.getUint16(entry.start + 26, true) + view.getUint16(entry.start + 28, true);
  if (from + entry.packed > bytes.length) return cut;
  const packed = bytes.subarray(from, from + entry.packed);
  if (entry.method === 0) {
    if (packed.length > room) return tooLarge;
    take(packed);
    return packed.length;
  }
  if (entry.method !== 8) return `“${shown(entry.name)}” is packed in a way that is not read here.`;
  let size = 0;
  let whole = false;
  const inflate = new Inflate((piece, final) => {
    size += piece.length;
    whole = final;
    take(piece);
  });
  try {
    for (let at = 0; at < packed.length; at += pieceSize) {
      inflate.push(packed.subarray(at, at + pieceSize), at + pieceSize >= packed.length);
      if (size > room) break;
    }
  } catch {
    return cut;
  }
  return size > room ? tooLarge : whole ? size : cut;
}

/** Small, because a piece may unpack to a thousand times its size before anybody can look. */
const pieceSize = 16_384;
const tooLarge = `The archive would unpack to more than ${mostUnpacked / 1_000_000} MB, which nothing opened here needs. It was not opened.`;

function directoryOf(bytes: Uint8Array): readonly Entry[] | string {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  // A comment of up to 64 kB may follow the end of the directory.
  const first = Math.max(0, end - 65_535);
  while (end >= first && view.getUint32(end, true) !== endSignature) end -= 1;
  if (end < first) return damaged;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (count === 0xffff || at === 0xffffffff)
    return 'The archive is of a kind for huge files, which is not opened.';
  const entries: Entry[] = [];
  for (let index = 0; index < count; index += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== entrySignature) return damaged;
    const nameLength = view.getUint16(at + 28, true);
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength)),
      packed: view.getUint32(at + 20, true),
      method: view.getUint16(at + 10, true),
      checksum: view
        .getUint32(at + 16, true)
        .toString(16)
        .padStart(8, '0'),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      start: view.getUint32(at + 42, true),
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}
