/** What a zip archive says it holds, read from its directory without unpacking anything. */
interface Entry {
  readonly name: string;
  readonly packed: number;
  readonly unpacked: number;
}

const endSignature = 0x06054b50;
const entrySignature = 0x02014b50;
/** A schedule of 20,000 rows unpacks to about 40 MB; no workbook of doors comes near these. */
const mostEntries = 5_000;
const mostUnpacked = 300_000_000;
const mostRatio = 200;

/** A sentence why an archive is not opened; undefined when nothing speaks against it. */
export function zipRefusal(bytes: Uint8Array): string | undefined {
  const entries = directoryOf(bytes);
  if (typeof entries === 'string') return entries;
  if (entries.length > mostEntries)
    return `The archive holds ${entries.length} files, far more than a workbook.`;
  const names = new Set<string>();
  let unpacked = 0;
  let packed = 0;
  for (const entry of entries) {
    if (/^[/\\]|^[a-z]:|(^|[/\\])\.\.([/\\]|$)/i.test(entry.name)) {
      return `The archive holds a file under the path “${entry.name.slice(0, 60)}”, which points outside it.`;
    }
    if (names.has(entry.name)) return `The archive holds “${entry.name.slice(0, 60)}” twice.`;
    if (/vbaProject\.bin$|(^|\/)(activeX|macrosheets)\//i.test(entry.name)) {
      return 'The workbook holds programs (macros). Save it as a plain workbook (.xlsx) and open that.';
    }
    names.add(entry.name);
    unpacked += entry.unpacked;
    packed += entry.packed;
  }
  if (unpacked > mostUnpacked || (unpacked > 10_000_000 && unpacked > packed * mostRatio)) {
    const megabytes = Math.round(unpacked / 1_000_000);
    return `The archive would unpack to ${megabytes} MB, which no door schedule needs. It was not opened.`;
  }
  return undefined;
}

function directoryOf(bytes: Uint8Array): readonly Entry[] | string {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const damaged = 'The workbook is damaged: its list of contents cannot be read.';
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
    const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength));
    entries.push({ name, packed: view.getUint32(at + 20, true), unpacked: view.getUint32(at + 24, true) });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}
