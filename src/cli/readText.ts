export type ReadText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly says: string };

/** Bytes → text. Only UTF-8 is read: any other encoding would turn names and fractions into other signs unseen. */
export function readText(bytes: Uint8Array): ReadText {
  const [first, second] = bytes;
  const wide =
    (first === 0xff && second === 0xfe) ||
    (first === 0xfe && second === 0xff) ||
    // UTF-16 without its mark: every other byte of plain English is zero.
    (bytes.length >= 4 && (bytes[1] === 0 || bytes[0] === 0));
  if (wide) return { ok: false, says: 'This file is in UTF-16; save it as CSV or JSON in UTF-8.' };
  try {
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { ok: false, says: 'This file is not in UTF-8; save it as CSV or JSON in UTF-8.' };
  }
}
