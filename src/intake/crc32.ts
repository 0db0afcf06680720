const table = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xed_b8_83_20 : value >>> 1;
  return value;
});

/** Tells a torn or mixed piece from a whole one. It guards against accidents, not against somebody who forges. */
export function crc32(bytes: Uint8Array): string {
  let value = 0xff_ff_ff_ff;
  for (const byte of bytes) value = (value >>> 8) ^ (table[(value ^ byte) & 0xff] ?? 0);
  return ((value ^ 0xff_ff_ff_ff) >>> 0).toString(16).padStart(8, '0');
}
