import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { inRoot } from '../../scripts/lib/repo.mjs';

const spec = readFileSync(inRoot('docs/spec/promises.md'), 'utf8');
const all = [...spec.matchAll(/^\| (P\d+) \|[^|]+\|([^|]+)\|/gm)].map(([, number, kept]) => ({
  number: number ?? '',
  files: [...(kept ?? '').matchAll(/`([^`]+)`/g)].map(([, file]) => file ?? ''),
}));
/** Files with a test that carries a number of a promise in its name. */
const named = ['src', 'tests', 'scripts'].flatMap((folder) =>
  readdirSync(inRoot(folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(test|story)\.tsx?$/.test(name))
    .map((name) => path.join(folder, name)),
);
const titles = (file: string) => readFileSync(inRoot(file), 'utf8');

test('each of the twelve promises is listed with the files that keep it', () => {
  expect(all.map(({ number }) => number)).toEqual(Array.from({ length: 12 }, (_, index) => `P${index + 1}`));
});

test.each(all)('$number: every file named for it holds a test of that number', ({ number, files }) => {
  expect(files.length).toBeGreaterThan(0);
  for (const file of files) {
    expect([file, titles(file).includes(`'${number}: `)]).toEqual([file, true]);
    // Not left to the long stories, which `npm test` does not run.
    for (const one of titles(file).split(`'${number}: `).slice(1)) {
      expect([file, one.slice(0, one.indexOf('async')).includes('@long')]).toEqual([file, false]);
    }
  }
});

test('a test that carries the number of a promise stands in the list', () => {
  const missing = named.flatMap((file) =>
    [...titles(file).matchAll(/(?:test|it|describe)(?:\.each)?\(?[^'\n]*'(P\d+): /g)]
      .filter(([, number]) => !all.some((one) => one.number === number && one.files.includes(file)))
      .map(([, number]) => `${number} ${file}`),
  );
  expect([...new Set(missing)]).toEqual([]);
});
