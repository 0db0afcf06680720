// Sentences live in rooms of words, each once: a screen and a sheet that write the same sentence drift apart, and an
// engine that writes them cannot be read for what it decides.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inRoot } from '../../scripts/lib/repo.mjs';

/** Four words or more with a full stop: labels, keys and class names are none. */
function sentencesIn(source: string): string[] {
  const code = source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '')
    // A bug throws, and nobody reads it on a sheet.
    .replace(/new Error\([^)]*\)/g, '');
  const literals = [...code.matchAll(/(['"`])((?:\\.|(?!\1)[^\\])*?)\1/g)].map((found) => found[2] ?? '');
  const written = [...code.matchAll(/>([^<>{}]+)</g)].map((found) => found[1] ?? '');
  return [...literals, ...written]
    .map((text) => text.replace(/\s+/g, ' ').trim())
    .filter((text) => text.split(' ').length >= 4 && /[\w)’”]\.( |$)/.test(text));
}

const files = readdirSync(inRoot('src'), { recursive: true, encoding: 'utf8' })
  .map((path) => path.replaceAll('\\', '/'))
  .filter((path) => /\.tsx?$/.test(path) && !/\.test\.|\.cases\.|Cases\.ts|\/testing\//.test(path))
  .map((path) => ({ path, source: readFileSync(inRoot(`src/${path}`), 'utf8') }));
const within = (...rooms: readonly string[]) =>
  files.filter(({ path }) => rooms.some((room) => path.startsWith(room)));

describe('sentences', () => {
  test('are seen for what they are', () => {
    const planted = [
      '/* Not this one, it is a comment. */',
      "throw new Error('Not this one, it is a bug.');",
      "const says = 'This one is a sentence.';",
      '<p>This one stands in a component.</p>',
      "const name = 'no sentence';",
    ];
    expect(sentencesIn(planted.join('\n'))).toEqual([
      'This one is a sentence.',
      'This one stands in a component.',
    ]);
  });

  test('the engine holds none and puts none together', () => {
    const engine = within('domain/decide/');
    expect(engine.length).toBeGreaterThan(20);
    const found = engine.flatMap(({ path, source }) => [
      ...sentencesIn(source).map((text) => `${path}: ${text}`),
      ...[...source.matchAll(/'\.\.\/text\/[^']+'/g)].map(([text]) => `${path} imports ${text}`),
    ]);
    expect(found, 'what a decision says belongs to src/domain/words').toEqual([]);
  });

  test('no screen, sheet or file writes one that is written elsewhere', () => {
    const places = new Map<string, Set<string>>();
    for (const { path, source } of files) {
      for (const text of sentencesIn(source)) {
        if (!text.includes('${')) places.set(text, (places.get(text) ?? new Set()).add(path));
      }
    }
    expect(places.size).toBeGreaterThan(1000);
    const twice = [...places]
      .filter(([text, at]) => at.size > 1 && text.split(' ').length >= 5 && [...at].some(isLaidOut))
      .map(([text, at]) => `${text} (${[...at].join(', ')})`);
    expect(twice, 'say it once, in the domain').toEqual([]);
  });

  test.each([
    ['ui/', 99],
    ['exporting/sheets/', 43],
  ])('%s writes no more of its own than it does', (room, most) => {
    const own = within(room).flatMap(({ path, source }) =>
      sentencesIn(source).map((text) => `${path}: ${text}`),
    );
    expect(own.length, `put it where it is known:\n${own.join('\n')}`).toBeLessThanOrEqual(most);
  });
});

function isLaidOut(path: string): boolean {
  return path.startsWith('ui/') || path.startsWith('exporting/');
}
