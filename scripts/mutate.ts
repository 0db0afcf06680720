import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import process from 'node:process';
import { argumentsOf, refuse } from './lib/arguments.mjs';
import { type Measures, measureOf, mutantsPage, noticed, shareOf } from './lib/mutants.ts';
import { root } from './lib/repo.mjs';
import { askTests, breakAll, sourcesIn } from './mutation/broken.ts';

/**
 * Breaks the code of a room in every small way and counts what the tests notice; rules have a mutator
 * of their own (scripts/proof/mutate.ts). `npm run mutate -- src/domain/schedules`, or one file, or lines of it
 * (`src/domain/sets/forOrder.ts:10-60`), several with commas between them. Asked are the tests a second word names (files and folders, commas between
 * them), else those of the last time, else those of its folder. What is found of whole files is kept in
 * scripts/mutation/measured.json and written into docs/mutants.md; `npm run mutate` alone writes the page.
 * Ends with 1 below 90 % killed. What breaks the code is installed at the first call, apart from the packages of the app.
 */
const home = join(root, 'scripts/mutation');
const goal = 0.9;
const kept = join(home, 'measured.json');
const page = join(root, 'docs/mutants.md');

const { words } = argumentsOf({
  usage: 'npm run mutate -- [FOLDER | FILE[:from-to] [TESTS]]',
  words: ['place', 'tests'],
});
const readMeasures = () => JSON.parse(readFileSync(kept, 'utf8')) as Measures;
const measures = readMeasures();
const [place, wanted] = words;
if (place === undefined) {
  writeFileSync(page, mutantsPage(measures));
  process.exit();
}
const [named = '', lines] = place.split(':');
const paths = named.split(',');
for (const path of paths) {
  if (!existsSync(join(root, path)) || relative(join(root, 'src'), resolve(root, path)).startsWith('..')) {
    refuse(`${path} is no folder or file of src.`);
  }
}
const isFile = (path: string) => /\.tsx?$/.test(path);
const testsBeside = (path: string) => measures[path]?.tests ?? [isFile(path) ? dirname(path) : path];
const tests = wanted?.split(',') ?? [...new Set(paths.flatMap(testsBeside))];
for (const one of tests) if (!existsSync(join(root, one))) refuse(`${one} is no file or folder of tests.`);

if (!existsSync(join(home, 'node_modules'))) {
  const installed = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: home,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (installed.status !== 0) refuse('What breaks the code could not be installed.');
}

const sources = paths.flatMap((path) => (isFile(path) ? [path] : sourcesIn(root, path)));
const broken = await breakAll(root, sources, lines, tests);
const files = await askTests(root, broken);
if (files === null) refuse('The tests do not pass, or stopped before their end.');

// Reasons may have been written meanwhile.
const now = readMeasures();
const found = Object.fromEntries(
  files.map(({ path: file, source, mutants }) => [
    file,
    measureOf({ source, mutants, tests, before: now[file] }),
  ]),
);
for (const { path: file, source, mutants } of files) {
  for (const mutant of mutants) {
    const told = noticed(mutant, source);
    if (told.is !== 'missed') continue;
    const { line, column } = mutant.location.start;
    const seen = mutant.status === 'NoCoverage' ? ' (no test comes here)' : '';
    console.log(`- ${file}:${line}:${column}${seen} ${told.slip}`);
  }
}
for (const [file, { killed, tried }] of Object.entries(found)) {
  if (tried > 0) console.log(`${file}: ${killed} of ${tried} killed`);
}
if (lines === undefined) {
  const all = Object.entries({ ...now, ...found }).filter(([, { tried }]) => tried > 0);
  const sorted = Object.fromEntries(all.toSorted(([a], [b]) => (a < b ? -1 : 1)));
  writeFileSync(kept, `${JSON.stringify(sorted, null, 2)}\n`);
  writeFileSync(page, mutantsPage(sorted));
}
const { killed, tried, share } = shareOf(Object.values(found));
console.log(`${killed} of ${tried} killed, ${(100 * share).toFixed(1)} % (goal ${100 * goal} %).`);
process.exitCode = share < goal ? 1 : 0;
