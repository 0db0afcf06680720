import { plainJpeg, type Size, sizeInHead, sizeWithin } from '../intake/picture/jpeg.ts';

export type Shrunk =
  | ({ readonly ok: true; readonly bytes: Uint8Array } & Size)
  | { readonly ok: false; readonly says: string };
export type ShrinkPicture = (file: Blob, longestPx?: number) => Promise<Shrunk>;

export const longestSidePx = 1600;
const quality = 0.82;
/** Larger than any camera of a phone makes them; a browser tab would only die of it. */
const mostBytes = 60_000_000;
const mostPixels = 120_000_000;

const refused = (says: string): Shrunk => ({ ok: false, says: `${says} Nothing was changed.` });

/**
 * A picture of any kind the browser knows → an upright JPEG of a size that fits a phone's storage. It is drawn anew, so
 * nothing but what it shows goes on: no place, no time, no camera.
 */
export const shrinkPicture: ShrinkPicture = async (file, longestPx = longestSidePx) => {
  const megabytes = Math.round(file.size / 1e6);
  if (file.size > mostBytes) return refused(`The picture is ${megabytes} MB, too large to be opened here.`);
  let bitmap: ImageBitmap;
  try {
    const size = sizeInHead(new Uint8Array(await file.slice(0, 1_000_000).arrayBuffer()));
    if (size && size.widthPx * size.heightPx > mostPixels) {
      return refused(
        `The picture is ${size.widthPx} × ${size.heightPx} pixels, too large to be opened here.`,
      );
    }
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return refused('This file is not a picture that this browser can read.');
  }
  try {
    const { widthPx, heightPx } = sizeWithin({ widthPx: bitmap.width, heightPx: bitmap.height }, longestPx);
    const canvas = document.createElement('canvas');
    canvas.width = widthPx;
    canvas.height = heightPx;
    const pen = canvas.getContext('2d');
    if (!pen) return refused('This browser has no room to draw the picture.');
    // A picture may be see-through, and a JPEG is not.
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, widthPx, heightPx);
    pen.drawImage(bitmap, 0, 0, widthPx, heightPx);
    const drawn = await new Promise<Blob | null>((resolve) => {
      canvas.toBlob(resolve, 'image/jpeg', quality);
    });
    if (!drawn) return refused('This browser has no room to draw the picture.');
    return { ok: true, bytes: plainJpeg(new Uint8Array(await drawn.arrayBuffer())), widthPx, heightPx };
  } finally {
    bitmap.close();
  }
};
