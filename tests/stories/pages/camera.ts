import type { Page } from 'playwright/test';

const ascii = (text: string) => Array.from(text, (sign) => sign.charCodeAt(0));
const two = (value: number) => [value >> 8, value & 255];
const four = (value: number) => [0, 0, ...two(value)];

/** What a phone writes beside a picture: lying on its side (6: turn a quarter clockwise), and where it was taken. */
function exif(orientation: number): number[] {
  const entry = (tag: number, type: number, count: number, value: readonly number[]) => [
    ...two(tag),
    ...two(type),
    ...four(count),
    ...value,
  ];
  const place = 8 + 2 + 2 * 12 + 4;
  const tiff = [
    ...ascii('MM'),
    ...two(42),
    ...four(8),
    ...two(2),
    ...entry(0x0112, 3, 1, [...two(orientation), 0, 0]),
    ...entry(0x8825, 4, 1, four(place)),
    ...four(0),
    ...two(1),
    ...entry(1, 2, 2, [...ascii('N'), 0, 0, 0]),
    ...four(0),
  ];
  const body = [...ascii('Exif'), 0, 0, ...tiff];
  return [0xff, 0xe1, ...two(body.length + 2), ...body];
}

/** A photo as a phone takes it, 2400 × 1200 and lying on its side: upright its upper half is red, its lower blue. */
export async function aPhoto(page: Page): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const base64 = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 2400;
    canvas.height = 1200;
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('no canvas');
    pen.fillStyle = '#c00';
    pen.fillRect(0, 0, 1200, 1200);
    pen.fillStyle = '#00c';
    pen.fillRect(1200, 0, 1200, 1200);
    return canvas.toDataURL('image/jpeg', 0.9).split(',')[1] ?? '';
  });
  const plain = Buffer.from(base64, 'base64');
  const buffer = Buffer.concat([plain.subarray(0, 2), Buffer.from(exif(6)), plain.subarray(2)]);
  return { name: 'IMG_0001.jpg', mimeType: 'image/jpeg', buffer };
}

/** Size and the colors above and below, as a browser shows a picture that has nothing but its bytes. */
export function seen(page: Page, bytes: Uint8Array) {
  return page.evaluate(async (base64) => {
    const raw = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([raw], { type: 'image/jpeg' }));
    const canvas = document.createElement('canvas');
    canvas.width = bitmap.width;
    canvas.height = bitmap.height;
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('no canvas');
    pen.drawImage(bitmap, 0, 0);
    const color = (share: number) => {
      const [red = 0, , blue = 0] = pen.getImageData(bitmap.width / 2, bitmap.height * share, 1, 1).data;
      return red > blue ? 'red' : 'blue';
    };
    return { width: bitmap.width, height: bitmap.height, above: color(0.25), below: color(0.75) };
  }, Buffer.from(bytes).toString('base64'));
}
