/** SHA-256 of a text in UTF-8, as 64 hexadecimal digits. Undefined where the browser refuses: a page over plain HTTP. */
export async function sha256(text: string): Promise<string | undefined> {
  const { subtle } = globalThis.crypto ?? {};
  if (!subtle) return undefined;
  const digest = await subtle.digest('SHA-256', new TextEncoder().encode(text));
  return hexOf(new Uint8Array(digest));
}

export function hexOf(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
