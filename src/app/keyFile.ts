import type { ReviewerKey } from '../domain/model/verdict.ts';
import type { KeyFile } from '../domain/review/keyFile.ts';
import { algorithms, bytesOf, fromBase64, printOf, publicHalf, toBase64 } from './signatures.ts';
import type { Signer } from './verdictDesk.ts';

/** As recommended for PBKDF2 with SHA-256 (OWASP password storage, from memory). */
const rounds = 600_000;
export const shortestPassphrase = 12;

/** A new key pair, sealed. */
export async function makeKeyFile(passphrase: string): Promise<KeyFile> {
  const algorithm = 'ECDSA P-256' as const;
  const { subtle } = crypto;
  const pair = await subtle.generateKey(algorithms[algorithm].key, true, ['sign', 'verify']);
  const publicKey = publicHalf(await subtle.exportKey('jwk', pair.publicKey));
  const salt = crypto.getRandomValues(new Uint8Array(16));
  const nonce = crypto.getRandomValues(new Uint8Array(12));
  const wrapping = await wrappingKey(passphrase, salt, rounds);
  const secret = await subtle.encrypt(
    { name: 'AES-GCM', iv: nonce },
    wrapping,
    bytesOf(JSON.stringify(await subtle.exportKey('jwk', pair.privateKey))),
  );
  return {
    format: 'latchward-reviewer-key',
    algorithm,
    publicKey,
    print: await printOf(publicKey),
    rounds,
    salt: toBase64(salt),
    nonce: toBase64(nonce),
    secret: toBase64(new Uint8Array(secret)),
  };
}

/** The key, ready to sign; undefined where the passphrase is another or the file was changed. */
export async function unlock(file: KeyFile, passphrase: string): Promise<Signer | undefined> {
  try {
    const { subtle } = crypto;
    const wrapping = await wrappingKey(passphrase, fromBase64(file.salt), file.rounds);
    const opened = await subtle.decrypt(
      { name: 'AES-GCM', iv: fromBase64(file.nonce) },
      wrapping,
      fromBase64(file.secret),
    );
    const jwk = JSON.parse(new TextDecoder().decode(opened)) as JsonWebKey;
    const { key: kind, use } = algorithms[file.algorithm];
    const secret = await subtle.importKey('jwk', jwk, kind, false, ['sign']);
    // The public half inside the seal is the one that counts: the other could have been exchanged.
    const publicKey = publicHalf(jwk);
    const key: ReviewerKey = { algorithm: file.algorithm, publicKey, print: await printOf(publicKey) };
    return {
      key,
      sign: async (hash) => toBase64(new Uint8Array(await subtle.sign(use, secret, bytesOf(hash)))),
    };
  } catch {
    return undefined;
  }
}

async function wrappingKey(
  passphrase: string,
  salt: Uint8Array<ArrayBuffer>,
  count: number,
): Promise<CryptoKey> {
  const { subtle } = crypto;
  const base = await subtle.importKey('raw', bytesOf(passphrase.normalize('NFKC')), 'PBKDF2', false, [
    'deriveKey',
  ]);
  return subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: count },
    base,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
}
