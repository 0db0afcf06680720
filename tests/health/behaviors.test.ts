import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inRoot } from '../../scripts/lib/repo.mjs';

const page = readFileSync(inRoot('docs/spec/behaviors.md'), 'utf8');
const named = [...page.matchAll(/`((?:tests|src)\/[\w/.]+)` “(.+)”/g)].map(([, file = '', name = '']) => ({
  file,
  name,
}));
const numbers = [...page.matchAll(/^- \*\*(\d+)\*\*/gm)].map(([, number]) => Number(number));

test('every numbered behavior names its test', () => {
  expect(numbers).toEqual(numbers.map((_, index) => index + 1));
  expect(named).toHaveLength(numbers.length);
});

/** Whether the test of this name is left to the long stories, which `npm test` does not run. */
function isLong(source: string, name: string): boolean {
  const at = source.indexOf(name);
  return source.slice(at, source.indexOf('async', at)).includes('@long');
}

test('a story that is left to the long ones is found out', () => {
  const source = "test('one', { tag: '@long' }, async () => 1); test('two', async () => 2);";
  expect([isLong(source, 'one'), isLong(source, 'two')]).toEqual([true, false]);
});

test.each(named)('$file: $name', ({ file, name }) => {
  expect(existsSync(inRoot(file)), `${file} is gone`).toBe(true);
  expect(
    readFileSync(inRoot(file), 'utf8').includes(name),
    'the test was renamed: name it anew on the page',
  ).toBe(true);
  expect(isLong(readFileSync(inRoot(file), 'utf8'), name), 'npm test must run it').toBe(false);
});
