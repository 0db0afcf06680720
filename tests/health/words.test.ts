import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inRoot } from '../../scripts/lib/repo.mjs';
import { finishes } from '../../src/domain/devices/finishes.ts';

/** Words no reader of the trade would write, each with what to write. `docs/style.md` shows them in sentences. */
const kept: readonly (readonly [RegExp, string])[] = [
  [/\baluminium\b/i, 'aluminum'],
  [/\bcolour/i, 'color'],
  [/\b(centre|metre)s?\b|millimetre/i, 'center, meter'],
  [/\b(un)?labell(ed|ing)\b/i, 'labeled'],
  [
    /\b\w+(is|ys)(ed|ing|ation)\b(?<=\b(organis|recognis|energis|standardis|authoris|analys|realis|summaris)\w*)/i,
    '-ize',
  ],
  [/\bneighbour|\bbehaviour|\bcatalogue\b|\bgrey\b|\bjudgement|\bstorey/i, 'the American spelling'],
  [/\bmains\b/i, 'line power'],
  [/\bways? out\b/i, 'exit, egress, means of egress'],
  [/\breckon/i, 'calculate'],
  [/\bexchanged for\b|\bto be exchanged\b/i, 'replaced'],
  [/\bwire ways?\b/i, 'raceway'],
  [/\bhand-worked\b|\bbolts? (worked|thrown|set) by hand\b/i, 'manual bolts'],
  [/\bthumb turn\b/i, 'thumbturn'],
  [/\bcut-out\b/i, 'cutout'],
  [/\bnothing fits\b/i, 'no workable hardware'],
  [/\bfire service\b(?! and| or)/i, 'fire department'],
  [/\btoilet (room )?for\b/i, 'restroom'],
  [/\bblock of flats\b|\bcupboard\b|\btoughened glass\b|\bpower cut\b/i, 'the American word'],
  [/\bit is no finding\b|\b(?<!there )is no (door|latch|exit|gate|lock)\b/i, 'is not a …'],
  [/\bcomplian(t|ce) with\b|\bcompliant\b/i, 'nothing: no program clears a door'],
];

/** Where other people's words are read, so theirs must stand as they write them. */
const reads = /domain\/import\/|survey\/tradeWords|\.cases\.|Cases\.ts|\.test\./;

function textsOf(source: string): string[] {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  const literals = [...code.matchAll(/(['"`])((?:\\.|(?!\1)[^\\])*?)\1/g)].map((found) => found[2] ?? '');
  const written = [...code.matchAll(/>([^<>{}]+)</g)].map((found) => found[1] ?? '');
  // A key is one word; a sentence or a label has a space or begins with a capital.
  return [...literals, ...written].filter((text) => /\s|^[A-Z]/.test(text.trim()));
}

function misused(texts: readonly string[]): string[] {
  return texts.flatMap((text) =>
    kept.flatMap(([word, write]) =>
      word.test(text) ? [`“${text.trim().slice(0, 90)}”: write ${write}`] : [],
    ),
  );
}

describe('words of the trade', () => {
  test('the list sees what it is for', () => {
    const wrong = misused(textsOf("says: 'The mains has failed and the hand-worked bolts are no way out.',"));
    expect(wrong).toHaveLength(3);
    expect(textsOf("const mainsLost = 'mainsLost'; // the mains are off")).toEqual([]);
  });

  test('no finish is said in such a word: its metal is printed as it stands', () => {
    expect(misused(Object.values(finishes).flatMap(({ look, metal }) => [look, metal]))).toEqual([]);
  });

  test('no sentence of the program has a word a native reader would stumble over', () => {
    const files = readdirSync(inRoot('src'), { recursive: true, encoding: 'utf8' }).filter(
      (path) => /\.tsx?$/.test(path) && !reads.test(path.replaceAll('\\', '/')),
    );
    expect(files.length).toBeGreaterThan(500);
    const wrong = files.flatMap((path) =>
      misused(
        textsOf(readFileSync(inRoot(`src/${path}`), 'utf8').split(/\n {2}cases: cases\(/)[0] ?? ''),
      ).map((one) => `${path}: ${one}`),
    );
    expect(wrong).toEqual([]);
  });
});
