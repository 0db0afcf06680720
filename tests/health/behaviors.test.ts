import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inRoot } from '../../scripts/lib/repo.mjs';

const page = readFileSync(inRoot('docs/spec/behaviors.md'), 'utf8');
const named = [...page.matchAll(/`(tests\/[\w/.]+)` “(.+)”/g)].map(([, file = '', name = '']) => ({
  file,
  name,
}));
const numbers = [...page.matchAll(/^- \*\*(\d+)\*\*/gm)].map(([, number]) => Number(number));

test('every numbered behavior names its test', () => {
  expect(numbers).toEqual(numbers.map((_, index) => index + 1));
  expect(named).toHaveLength(numbers.length);
});

test.each(named)('$file: $name', ({ file, name }) => {
  expect(existsSync(inRoot(file)), `${file} is gone`).toBe(true);
  expect(
    readFileSync(inRoot(file), 'utf8').includes(name),
    'the test was renamed: name it anew on the page',
  ).toBe(true);
});
