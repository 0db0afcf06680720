import type { ShrinkPicture } from '../../src/app/shrinkPicture.ts';

/** What no browser drew: the head of a JPEG with a few bytes that tell one from another. */
export const jpegOf = (...bytes: readonly number[]): Uint8Array<ArrayBuffer> =>
  new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 0, 4, 0x4a, 0x46, 0xff, 0xda, 0, 2, ...bytes, 0xff, 0xd9]);

/** For tests without a canvas: every file is a picture of its own size and bytes, but one that says it is none. */
export const fakeShrink: ShrinkPicture = async (file) => {
  const bytes = new Uint8Array(await file.arrayBuffer());
  return bytes[0] === 0xff
    ? { ok: true, bytes, widthPx: 1200, heightPx: 1600 }
    : { ok: false, says: 'This file is not a picture that this browser can read. Nothing was changed.' };
};
