/**
 * Locking a project file or a reviewer's key with a passphrase: the open format age, version 1. The library is loaded
 * when it is needed.
 */

const header = 'age-encryption.org/v1\n';

export const isLocked = (bytes: Uint8Array) =>
  new TextDecoder().decode(bytes.subarray(0, header.length)) === header;

/** 2¹⁶: about a second on a phone, and 64 MB. A longer passphrase gains more than a larger number here. */
const workFactor = 16;
/** A file may ask for more work than a browser survives. */
const mostWork = 20;

/** Only a zip may be filled up; see `filled`. */
export const lockZip = (zip: Uint8Array, passphrase: string, work = workFactor) =>
  lock(filled(zip), passphrase, work);

export async function lock(
  bytes: Uint8Array,
  passphrase: string,
  work = workFactor,
): Promise<Uint8Array<ArrayBuffer>> {
  const { Encrypter } = await import('age-encryption');
  const encrypter = new Encrypter();
  encrypter.setScryptWorkFactor(work);
  encrypter.setPassphrase(passphrase);
  return (await encrypter.encrypt(bytes)) as Uint8Array<ArrayBuffer>;
}

export type Unlocked =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | {
      readonly ok: false;
      readonly why: 'passphrase' | 'cutOff' | 'changed' | 'otherKey';
      readonly says: string;
    };

const sentences = {
  passphrase:
    'The passphrase is not the right one, or the lines at the top of the file were changed. Nothing was changed.',
  cutOff: 'The file is cut off: it was not copied whole. Get it again. Nothing was changed.',
  changed:
    'The file was changed or damaged after it was locked. Nothing of it was used, and nothing was changed.',
  otherKey:
    'The file is locked with a key and not with a passphrase. Unlock it with the program that locked it.',
} as const;

/** Nothing of a file is used unless the whole of it is as it was locked. */
export async function unlock(bytes: Uint8Array, passphrase: string): Promise<Unlocked> {
  const refused = (why: keyof typeof sentences): Unlocked => ({ ok: false, why, says: sentences[why] });
  const head = headerOf(bytes);
  if (head === undefined) return refused('cutOff');
  if (!/^-> scrypt \S+ \d+$/m.test(head)) return refused('otherKey');
  if (Number(/^-> scrypt \S+ (\d+)$/m.exec(head)?.[1]) > mostWork) return refused('changed');
  const { Decrypter } = await import('age-encryption');
  const decrypter = new Decrypter();
  decrypter.addPassphrase(passphrase);
  try {
    return { ok: true, bytes: await decrypter.decrypt(bytes) };
  } catch (error) {
    const says = error instanceof Error ? error.message : String(error);
    if (/no identity matched/i.test(says)) return refused('passphrase');
    return refused(isCut(bytes, head.length) ? 'cutOff' : 'changed');
  }
}

/** The lines of the header with its checksum; undefined where they do not end. */
function headerOf(bytes: Uint8Array): string | undefined {
  const text = new TextDecoder('latin1').decode(bytes.subarray(0, 2_000));
  const end = /^--- [\w+/]{43}\n/m.exec(text);
  return end ? text.slice(0, end.index + end[0].length) : undefined;
}

const nonceLength = 16;
const plainChunk = 64 * 1024;
const sealedChunk = plainChunk + 16;

/**
 * A zip that is locked here fills its chunks (see `filled`), so a file that does not was cut. One cut exactly between two
 * chunks is taken for a changed one; so is nothing else.
 */
const isCut = (bytes: Uint8Array, headerLength: number) =>
  bytes.length <= headerLength + nonceLength ||
  (bytes.length - headerLength - nonceLength) % sealedChunk !== 0;

/** A zip may end in a comment; with one it is as long as whole chunks, and a cut can be told from a change. */
function filled(zip: Uint8Array): Uint8Array {
  const missing = (plainChunk - (zip.length % plainChunk)) % plainChunk;
  const whole = new Uint8Array(zip.length + missing);
  whole.set(zip);
  new DataView(whole.buffer).setUint16(zip.length - 2, missing, true);
  return whole;
}
