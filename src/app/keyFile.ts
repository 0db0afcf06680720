import type { ReviewerKey } from '../domain/model/verdict.ts';
import type { KeyFile } from '../domain/review/keyFile.ts';
import { lock, unlock } from '../intake/passphrase.ts';
import { algorithms, bytesOf, fromBase64, printOf, publicHalf, toBase64 } from './signatures.ts';
import type { Signer } from './verdictDesk.ts';

export const shortestPassphrase = 12;

/** The same passphrase typed on another keyboard may come as other bytes. */
const asTyped = (passphrase: string) => passphrase.normalize('NFKC');

/** A new key pair, sealed; `work` is how much guessing costs, where it is not to be the usual. */
export async function makeKeyFile(passphrase: string, work?: number): Promise<KeyFile> {
  const algorithm = 'ECDSA P-256' as const;
  const { subtle } = crypto;
  const pair = await subtle.generateKey(algorithms[algorithm].key, true, ['sign', 'verify']);
  const publicKey = publicHalf(await subtle.exportKey('jwk', pair.publicKey));
  const secret = bytesOf(JSON.stringify(await subtle.exportKey('jwk', pair.privateKey)));
  return {
    format: 'latchward-reviewer-key',
    algorithm,
    publicKey,
    print: await printOf(publicKey),
    seal: 'age',
    secret: toBase64(await lock(secret, asTyped(passphrase), work)),
  };
}

/** The key, ready to sign; undefined where the passphrase is another or the file was changed. */
export async function openKeyFile(file: KeyFile, passphrase: string): Promise<Signer | undefined> {
  try {
    const { subtle } = crypto;
    const opened = await unlock(fromBase64(file.secret), asTyped(passphrase));
    if (!opened.ok) return undefined;
    const jwk = JSON.parse(new TextDecoder().decode(opened.bytes)) as JsonWebKey;
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
    // No base64, or no key inside.
    return undefined;
  }
}
