/** SHA-256 as 64 hexadecimal digits, of a text in UTF-8. Undefined where the browser refuses: a page over plain HTTP. */
export function sha256(text: string): Promise<string | undefined> {
  return sha256OfBytes(new TextEncoder().encode(text));
}

export async function sha256OfBytes(bytes: Uint8Array): Promise<string | undefined> {
  const { subtle } = globalThis.crypto ?? {};
  if (!subtle) return undefined;
  return hexOf(new Uint8Array(await subtle.digest('SHA-256', new Uint8Array(bytes))));
}

export function hexOf(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
