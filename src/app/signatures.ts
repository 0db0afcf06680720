import { textOf } from '../domain/model/sorted.ts';
import type { ReviewerKey, Verdict } from '../domain/model/verdict.ts';
import { sha256 } from '../intake/sha256.ts';

/** How each kind of key is made and used. */
export const algorithms = {
  'ECDSA P-256': {
    key: { name: 'ECDSA', namedCurve: 'P-256' },
    use: { name: 'ECDSA', hash: 'SHA-256' },
  },
  Ed25519: { key: { name: 'Ed25519' }, use: { name: 'Ed25519' } },
} as const;

export const bytesOf = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(new TextEncoder().encode(text));

export function toBase64(bytes: Uint8Array): string {
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}
export function fromBase64(text: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(text), (sign) => sign.charCodeAt(0));
}

/** Only what makes the public half: other members of a JSON web key say nothing about it. */
export function publicHalf({ kty, crv, x, y }: JsonWebKey): Record<string, unknown> {
  return { kty, crv, x, ...(y === undefined ? {} : { y }) };
}

/** Read out and compared: the same on every device for the same key. */
export async function printOf(publicKey: Readonly<Record<string, unknown>>): Promise<string> {
  return (await sha256(textOf(publicKey))) ?? '';
}

/** Whether the signature fits the hash of the entry and the key it names, and that key the print it is known by. */
export async function verifies({ hash, signature, key }: Verdict): Promise<boolean> {
  if (signature === undefined || key === undefined) return false;
  try {
    return (await printOf(key.publicKey)) === key.print && (await fits(key, hash, signature));
  } catch {
    // A key or a signature that cannot be read fits nothing.
    return false;
  }
}

async function fits(key: ReviewerKey, hash: string, signature: string): Promise<boolean> {
  const { subtle } = globalThis.crypto;
  const { key: kind, use } = algorithms[key.algorithm];
  const imported = await subtle.importKey('jwk', key.publicKey as JsonWebKey, kind, false, ['verify']);
  return subtle.verify(use, imported, fromBase64(signature), bytesOf(hash));
}
