import { z } from 'zod';

/**
 * A reviewer's key as it is kept and as it is exported: the private half only under a passphrase (PBKDF2 with SHA-256,
 * AES-GCM), so that neither this browser nor the file is enough to sign.
 */
const keyFileSchema = z.looseObject({
  format: z.literal('latchward-reviewer-key'),
  algorithm: z.enum(['ECDSA P-256', 'Ed25519']),
  publicKey: z.record(z.string(), z.unknown()),
  print: z.string(),
  rounds: z.number().int().min(100_000).max(5_000_000),
  salt: z.string(),
  nonce: z.string(),
  secret: z.string(),
});
export type KeyFile = Readonly<z.infer<typeof keyFileSchema>>;

export function readKeyFile(text: string): KeyFile | undefined {
  try {
    return keyFileSchema.safeParse(JSON.parse(text)).data;
  } catch {
    return undefined;
  }
}
