export type ReadText =
  | {
      readonly ok: true;
      readonly text: string;
      readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
      /** What a person should know about how it was read; empty when nothing had to be supposed. */
      readonly note: string;
    }
  | { readonly ok: false; readonly says: string };

/** Bytes → text: UTF-8, UTF-16 with or without its mark, or Windows-1252 as older spreadsheets write it. */
export function readText(bytes: Uint8Array): ReadText {
  const wide = wideEncoding(bytes);
  if (wide !== undefined) {
    const text = decoded(bytes, wide);
    if (text === undefined) {
      return { ok: false, says: 'The file looks like UTF-16 and is damaged; save it again in UTF-8.' };
    }
    return { ok: true, text, encoding: 'UTF-16', note: '' };
  }
  const text = decoded(bytes, 'utf-8');
  if (text !== undefined) return { ok: true, text, encoding: 'UTF-8', note: '' };
  return {
    ok: true,
    text: new TextDecoder('windows-1252').decode(bytes),
    encoding: 'Windows-1252',
    note: 'The file is not in UTF-8. It was read as Windows-1252; check accents and signs.',
  };
}

/** A project file is written in UTF-8 by this program: guessing another encoding would garble names unseen. */
export function readProjectBytes(bytes: Uint8Array): ReadText {
  const read = readText(bytes);
  if (!read.ok || read.encoding !== 'Windows-1252') return read;
  return {
    ok: false,
    says: 'This file is not in UTF-8, so another program has saved it. Open the file as it was before, or save it in UTF-8.',
  };
}

function wideEncoding(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  // Without its mark: of plain English every other byte is zero.
  const sample = bytes.subarray(0, 512);
  if (sample.length < 4) return undefined;
  const zeros = (start: number) => sample.filter((byte, index) => index % 2 === start && byte === 0).length;
  const most = sample.length / 4;
  if (zeros(1) > most && zeros(0) === 0) return 'utf-16le';
  if (zeros(0) > most && zeros(1) === 0) return 'utf-16be';
  return undefined;
}

function decoded(bytes: Uint8Array, encoding: string): string | undefined {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
