import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { argumentsOf, refuse } from './lib/arguments.mjs';

/**
 * Breaks the code of a room in every small way and counts what the tests notice; rules have a mutator
 * of their own (scripts/proof/mutate.ts). `npm run mutate -- src/domain/schedules`, or one file, or lines of it
 * (`src/domain/schedules/order.ts:10-60`); the tests
 * of its folder are asked, or those of the folder that a second word names. Ends with 1 below 90 % killed. Takes about two seconds a mutant; the runner is
 * installed at the first call, apart from the packages of the app.
 */
const root = fileURLToPath(new URL('..', import.meta.url));
const home = join(root, 'scripts/mutation');
const goal = 0.9;

const { words } = argumentsOf({
  usage: 'npm run mutate -- FOLDER | FILE[:from-to] [TESTS]',
  words: ['place', 'tests'],
});
const [place, tests] = words;
if (place === undefined) refuse('Say which folder or file of src to break.');
const [path = '', lines] = place.split(':');
if (!existsSync(join(root, path)) || relative(join(root, 'src'), resolve(root, path)).startsWith('..')) {
  refuse(`${path} is no folder or file of src.`);
}
const isFile = /\.tsx?$/.test(path);

if (!existsSync(join(home, 'node_modules'))) {
  const installed = spawnSync('npm', ['ci', '--legacy-peer-deps', '--no-audit', '--no-fund'], {
    cwd: home,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (installed.status !== 0) refuse('The mutation runner could not be installed.');
}

const cache = join(root, 'node_modules/.cache/latchward');
mkdirSync(cache, { recursive: true });
const [config, report] = [join(cache, 'mutation-config.json'), join(cache, 'mutation.json')];
const inFolder = [`${path}/**/*.ts`, `${path}/**/*.tsx`, '!src/**/*.test.{ts,tsx}', '!src/**/testing/**'];
writeFileSync(
  config,
  JSON.stringify({
    mutate: isFile ? [lines === undefined ? path : `${path}:${lines}`] : inFolder,
    testRunner: 'vitest',
    plugins: [join(home, 'node_modules/@stryker-mutator/vitest-runner/dist/src/index.js')],
    vitest: { configFile: 'scripts/mutation/vitest.config.ts', related: false },
    // Its reader of tsconfig does not know this compiler; a name that does not exist keeps it away.
    tsconfigFile: 'no-tsconfig.json',
    tempDirName: '.mutation',
    ignorePatterns: ['dist', 'coverage', 'docs', 'scripts/mutation/node_modules'],
    ignoreStatic: true,
    concurrency: 2,
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: report },
  }),
);
const ran = spawnSync(
  process.execPath,
  [join(home, 'node_modules/@stryker-mutator/core/bin/stryker.js'), 'run', config],
  {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, LATCHWARD_MUTATION_TESTS: tests ?? (isFile ? dirname(path) : path) },
  },
);
if (ran.status !== 0) refuse('The mutation runner stopped before its end.');

interface Mutant {
  readonly mutatorName: string;
  readonly status:
    | 'Killed'
    | 'Timeout'
    | 'Survived'
    | 'NoCoverage'
    | 'Ignored'
    | 'CompileError'
    | 'RuntimeError';
  readonly location: { readonly start: { readonly line: number; readonly column: number } };
  readonly replacement?: string;
}
const { files } = JSON.parse(readFileSync(report, 'utf8')) as {
  readonly files: Readonly<Record<string, { readonly mutants: readonly Mutant[] }>>;
};
const noticed = new Set<Mutant['status']>(['Killed', 'Timeout']);
const missed = new Set<Mutant['status']>(['Survived', 'NoCoverage']);
const survivors: string[] = [];
let [killed, tried] = [0, 0];
for (const [file, { mutants }] of Object.entries(files)) {
  const counted = mutants.filter(({ status }) => noticed.has(status) || missed.has(status));
  const dead = counted.filter(({ status }) => noticed.has(status)).length;
  [killed, tried] = [killed + dead, tried + counted.length];
  if (counted.length > 0) console.log(`${file}: ${dead} of ${counted.length} killed`);
  for (const { status, location, mutatorName, replacement } of counted) {
    if (!missed.has(status)) continue;
    const how = status === 'NoCoverage' ? 'no test comes here' : mutatorName;
    survivors.push(`${file}:${location.start.line}:${location.start.column} ${how}: ${replacement ?? ''}`);
  }
}
for (const survivor of survivors) console.log(`- ${survivor}`);
const share = tried === 0 ? 1 : killed / tried;
console.log(`${killed} of ${tried} killed, ${(100 * share).toFixed(1)} % (goal ${100 * goal} %).`);
process.exitCode = share < goal ? 1 : 0;
