const [quote, slash, star, newLine] = [0x27, 0x2f, 0x2a, 0x0a];
const [open, shut, semicolon] = [0x28, 0x29, 0x3b];
const isPlain = (byte: number) =>
  (byte >= 0x20 && byte < 0x7f) || byte === 0x09 || byte === 0x0a || byte === 0x0d;

/** All bits of a place within a megabyte. */
const aMegabyte = 0xf_ffff;

/** "#12=IFCDOOR", "#12=" before a record of several parts, "FILE_NAME"; comments left out. */
const head = /^\s*(?:#\d+\s*=\s*(?:!?[A-Z][A-Z0-9_]*)?|[A-Z][A-Z0-9_]*)\s*$/i;
const asText = new TextDecoder('latin1');
const isHead = (bytes: Uint8Array) => head.test(asText.decode(bytes).replaceAll(/\/\*.*?\*\//gs, ' '));

/**
 * The line of the first byte outside texts and comments that no STEP file has there (ISO 10303-21: the basic alphabet), of
 * the first record whose brackets do not close, or that does not begin with its number and its name. The library would
 * look for the end of the first two without end, and drop the last unsaid or turn in a circle.
 */
export function damagedLine(
  bytes: Uint8Array,
  step: (done: number, total: number) => void = () => undefined,
): number | undefined {
  let line = 1;
  let depth = 0;
  let begin = 0;
  let hasHead = false;
  let inText = false;
  let inComment = false;
  for (let at = 0; at < bytes.length; at += 1) {
    const byte = bytes[at] ?? 0;
    if (byte === newLine) line += 1;
    if ((at & aMegabyte) === 0) step(at, bytes.length);
    if (inComment) {
      if (byte === slash && bytes[at - 1] === star) inComment = false;
    } else if (byte === quote) inText = !inText;
    else if (inText) continue;
    else if (byte === slash && bytes[at + 1] === star) inComment = true;
    else if (!isPlain(byte) && at > 2) return line;
    else if (byte === open) {
      if (depth === 0 && !hasHead && !isHead(bytes.subarray(begin, at))) return line;
      hasHead = true;
      depth += 1;
    } else if (byte === shut) depth -= 1;
    else if (byte === semicolon) {
      if (depth !== 0) return line;
      begin = at + 1;
      hasHead = false;
    }
    if (depth < 0) return line;
  }
  return undefined;
}
