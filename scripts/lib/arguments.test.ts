import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inRoot } from './repo.mjs';

/** Every file below scripts that a person starts: it says how. */
const started = (readdirSync(inRoot('scripts'), { recursive: true }) as string[])
  .filter((name) => /\.(ts|mjs)$/.test(name) && !name.includes('.test.') && !name.startsWith('lib'))
  .map((name) => ({ name, text: readFileSync(inRoot('scripts', name), 'utf8') }));

test('no script reads its call by itself', () => {
  const own = started.filter(({ text }) => /process\.argv\b(?!\[1\])/.test(text)).map(({ name }) => name);
  expect(own).toEqual([]);
});

test.each([
  ['proof/enumerate.ts', ['many'], 'must be a whole number'],
  ['proof/mutate.ts', ['X-99'], 'No rule'],
  ['rules-doc.ts', ['--chek'], 'Usage'],
] as const)('%s %j is refused', (script, given, says) => {
  const run = spawnSync(process.execPath, ['--import', 'tsx', inRoot('scripts', script), ...given], {
    cwd: inRoot(),
    encoding: 'utf8',
  });
  expect(run.stderr).toContain(says);
  expect(run.status).toBe(2);
});
