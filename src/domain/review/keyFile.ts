import { z } from 'zod';

/**
 * A reviewer's key as it is kept and as it is exported: the private half only under a passphrase (age, as a locked
 * project file), so that neither this browser nor the file is enough to sign.
 */
const keyFileSchema = z.looseObject({
  format: z.literal('latchward-reviewer-key'),
  algorithm: z.enum(['ECDSA P-256', 'Ed25519']),
  publicKey: z.record(z.string(), z.unknown()),
  print: z.string(),
  /** What `secret` is sealed with: a file of age, in base64. */
  seal: z.literal('age'),
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
