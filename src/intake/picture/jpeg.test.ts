import { expect, test } from 'vitest';
import { isJpeg, plainJpeg, sizeInHead, sizeWithin } from './jpeg.ts';

const segment = (marker: number, ...body: readonly number[]) => [0xff, marker, 0, body.length + 2, ...body];
const frame = segment(0xc0, 8, 0, 90, 0, 120, 1, 1, 0x11, 0);
const picture = [...segment(0xda, 1, 1, 0, 0, 63, 0), 1, 2, 0xff, 0, 3, 0xff, 0xd9];
const jpeg = (...segments: readonly number[][]) =>
  new Uint8Array([0xff, 0xd8, ...segments.flat(), ...picture]);

test('what a camera writes beside the picture goes, and the picture stays byte for byte', () => {
  const jfif = segment(0xe0, 0x4a, 0x46);
  const exif = segment(0xe1, 0x45, 0x78, 0x69, 0x66, 0, 0, 52, 13);
  const plain = plainJpeg(jpeg(jfif, exif, segment(0xfe, 1), segment(0xed, 2), frame));
  expect([...plain]).toEqual([...jpeg(jfif, frame)]);
  expect(plainJpeg(plain)).toBe(plain);
});

test('what is no JPEG, or is cut off, is left as it is', () => {
  for (const bytes of [[], [0xff, 0xd8], [0xff, 0xd8, 0xff, 0xe1, 0, 0, 1], [0x89, 0x50]]) {
    const given = new Uint8Array(bytes);
    expect(plainJpeg(given)).toBe(given);
    expect(sizeInHead(given)).toBeUndefined();
  }
  expect(isJpeg(new Uint8Array([0xff, 0xd8]))).toBe(false);
});

test('a picture says how large it is before it is unpacked', () => {
  expect(sizeInHead(jpeg(segment(0xe1, 1), frame))).toEqual({ widthPx: 120, heightPx: 90 });
  const png = new Uint8Array(24);
  png.set([0x89, 0x50, 0x4e, 0x47]);
  png.set([0, 0, 0x4e, 0x20, 0, 0, 0, 7], 16);
  expect(sizeInHead(png)).toEqual({ widthPx: 20_000, heightPx: 7 });
});

test('the longest side is made to fit, the shape stays, and nothing is made larger', () => {
  expect(sizeWithin({ widthPx: 4000, heightPx: 3000 }, 1600)).toEqual({ widthPx: 1600, heightPx: 1200 });
  expect(sizeWithin({ widthPx: 3000, heightPx: 4000 }, 1600)).toEqual({ widthPx: 1200, heightPx: 1600 });
  expect(sizeWithin({ widthPx: 640, heightPx: 480 }, 1600)).toEqual({ widthPx: 640, heightPx: 480 });
  expect(sizeWithin({ widthPx: 20_000, heightPx: 2 }, 1600)).toEqual({ widthPx: 1600, heightPx: 1 });
});
