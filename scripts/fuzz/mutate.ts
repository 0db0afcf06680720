import type { Chance } from './chance.ts';

const junk = [
  '',
  '"',
  ',',
  ';',
  '\t',
  '\n',
  '\r',
  '\u0000',
  '\uFEFF',
  '\uD800',
  "'",
  '(',
  ')',
  '$',
  '*',
  '#',
  '=',
  '-',
  '0',
  '1E+309',
  '-1',
  'NaN',
  '9'.repeat(400),
  'x'.repeat(3000),
  '__proto__',
  'constructor',
  '=1+2',
  '1.22E+02',
  '3-6',
  'Grand total',
  'NOT USED',
  'n/a',
  '<',
  '>',
  '&#0;',
  '</row>',
  '.T.',
  '#1',
  'IFCDOOR(',
  '\\X2\\D800\\X0\\',
];

/** A text after one to four slips: pieces and lines removed, doubled, moved, cut off, or something thrown in. */
export function slippedText(text: string, random: Chance): string {
  let out = text;
  for (let count = 1 + random.below(4); count > 0; count -= 1) out = slip(out, random);
  return out;
}

function slip(text: string, random: Chance): string {
  if (text === '') return random.of(junk);
  const at = random.below(text.length);
  const lines = text.split('\n');
  const line = random.below(lines.length);
  switch (random.below(9)) {
    case 0:
      return text.slice(0, at) + random.of(junk) + text.slice(at);
    case 1:
      return text.slice(0, at) + text.slice(at + 1 + random.below(12));
    case 2:
      return text.slice(0, at) + random.of(junk) + text.slice(at + 1 + random.below(6));
    case 3:
      return lines.toSpliced(line, 1).join('\n');
    case 4:
      return lines.toSpliced(line, 0, lines[random.below(lines.length)] ?? '').join('\n');
    case 5:
      return random.below(6) === 0
        ? text.slice(0, at)
        : text.replaceAll('\n', random.of(['\r\n', '\r', '\n\n']));
    case 6:
      // One number of the text becomes another one that stands in it: a reference to somewhere else.
      return withOtherNumber(text, at, random);
    case 7:
      return lines.with(line, (lines[line] ?? '').repeat(1 + random.below(3))).join('\n');
    default:
      return text.slice(0, at) + text.slice(at, at + 40).toUpperCase() + text.slice(at + 40);
  }
}

function withOtherNumber(text: string, from: number, random: Chance): string {
  const numbers = [...text.matchAll(/\d+/g)];
  const target = numbers.find((one) => one.index >= from);
  const other = numbers.length === 0 ? undefined : random.of(numbers);
  if (!target || !other) return text;
  return text.slice(0, target.index) + other[0] + text.slice(target.index + target[0].length);
}

/** Bytes after a few slips: bits turned, stretches removed, doubled or zeroed, the end cut off. */
export function slippedBytes(bytes: Uint8Array, random: Chance): Uint8Array {
  let out = new Uint8Array(bytes);
  for (let count = 1 + random.below(4); count > 0 && out.length > 0; count -= 1) {
    const at = random.below(out.length);
    const end = Math.min(out.length, at + 1 + random.below(40));
    switch (random.below(6)) {
      case 0:
        out.fill(random.below(256), at, end);
        break;
      case 1:
        out = Uint8Array.from([...out.subarray(0, at), ...out.subarray(end)]);
        break;
      case 2:
        out = Uint8Array.from([...out.subarray(0, end), ...out.subarray(at)]);
        break;
      case 3:
        if (random.below(5) === 0) out = out.slice(0, at);
        break;
      default:
        out[at] = (out[at] ?? 0) ^ (1 << random.below(8));
    }
  }
  return out;
}
