/** One marker segment of a JPEG: FFE1 is where cameras write orientation, time, owner and place. */
interface Segment {
  readonly marker: number;
  readonly start: number;
  /** Where the next one begins. */
  readonly end: number;
}

const startOfScan = 0xda;

/** The segments before the picture data; undefined for what is no JPEG. */
function segmentsOf(bytes: Uint8Array): readonly Segment[] | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return undefined;
  const found: Segment[] = [];
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    // Fill bytes may stand before a marker.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const end = at + 2 + (((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0));
    found.push({ marker, start: at, end });
    if (marker === startOfScan) return found;
    if (end <= at + 2) return undefined;
    at = end;
  }
  return found;
}

export const isJpeg = (bytes: Uint8Array) => bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff;

/** Whatever says more than the picture shows: application segments after the first, and comments. */
const isAboutIt = (marker: number) => (marker > 0xe0 && marker <= 0xef) || marker === 0xfe;

/** A JPEG without anything about it: no place, no time, no camera, no preview of what was cut off. */
export function plainJpeg(bytes: Uint8Array): Uint8Array {
  const segments = segmentsOf(bytes);
  const dropped = segments?.filter(({ marker }) => isAboutIt(marker)) ?? [];
  if (dropped.length === 0) return bytes;
  const parts: Uint8Array[] = [];
  let from = 0;
  for (const { start, end } of dropped) {
    parts.push(bytes.subarray(from, start));
    from = end;
  }
  parts.push(bytes.subarray(from));
  const plain = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    plain.set(part, at);
    at += part.length;
  }
  return plain;
}

export interface Size {
  readonly widthPx: number;
  readonly heightPx: number;
}

/**
 * How large a picture says it is, before a browser is asked to unpack it; undefined where it does not say so in a way
 * that is read here (JPEG and PNG are).
 */
export function sizeInHead(bytes: Uint8Array): Size | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length >= 24 && view.getUint32(0) === 0x89504e47) {
    return { widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
  }
  const frame = segmentsOf(bytes)?.find(
    // Frames are C0 to CF but for tables (C4, CC) and an extension (C8).
    ({ marker }) => marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc,
  );
  if (!frame || frame.start + 9 > bytes.length) return undefined;
  return { heightPx: view.getUint16(frame.start + 5), widthPx: view.getUint16(frame.start + 7) };
}

/** The same shape with its longest side no longer than this; a smaller one is left as it is. */
export function sizeWithin({ widthPx, heightPx }: Size, longestPx: number): Size {
  const share = Math.min(1, longestPx / Math.max(widthPx, heightPx));
  const side = (px: number) => Math.max(1, Math.round(px * share));
  return { widthPx: side(widthPx), heightPx: side(heightPx) };
}
