import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import type { Broken } from '../lib/mutants.ts';
import { tools } from '../lib/repo.mjs';
import type { Found, Work } from './work.ts';

/** A file with its slips. */
export interface BrokenFile {
  readonly path: string;
  readonly source: string;
  readonly mutants: readonly (Broken & { readonly id: string })[];
}

interface Mutant {
  readonly id: string;
  readonly fileName: string;
  readonly replacement: string;
  readonly status?: Broken['status'];
  /** Counted from 0. */
  readonly location: Broken['location'];
}
interface Instrumenter {
  instrument(
    files: readonly { readonly name: string; readonly content: string; readonly mutate: boolean }[],
    options: object,
  ): Promise<{
    readonly files: readonly { readonly name: string; readonly content: string }[];
    readonly mutants: readonly Mutant[];
  }>;
}

/** The sources of a folder, without tests and what tests are made with. */
export function sourcesIn(root: string, folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$|\/testing\//.test(path))
    .toSorted();
}

/** The unit in qty(3, 'ft') is for the compiler; it is not there when the code runs. */
const unitNames = {
  shouldIgnore({ node, parent }: Path): string | undefined {
    const call = parent?.type === 'CallExpression' ? parent : undefined;
    return call?.callee?.name === 'qty' && call.arguments?.[1] === node ? 'a unit' : undefined;
  },
};
interface Path {
  readonly node: object;
  readonly parent?: {
    readonly type: string;
    readonly callee?: { readonly name?: string };
    readonly arguments?: readonly object[];
  } | null;
}

/** Puts every slip into the files, switched off, and lays them out for the tests. */
export async function breakAll(
  root: string,
  paths: readonly string[],
  lines: string | undefined,
  tests: readonly string[],
): Promise<readonly BrokenFile[]> {
  const { Instrumenter } = (await import(
    pathToFileURL(join(root, 'scripts/mutation/node_modules/@stryker-mutator/instrumenter/dist/src/index.js'))
      .href
  )) as { Instrumenter: new (logger: object) => Instrumenter };
  const quiet = { debug: () => {}, info: () => {}, isDebugEnabled: () => false };
  const sources = paths.map((path) => ({
    name: join(root, path),
    content: readFileSync(join(root, path), 'utf8'),
    mutate: true,
  }));
  const made = await new Instrumenter(quiet).instrument(sources, {
    plugins: null,
    excludedMutations: [],
    ignorers: [unitNames],
  });
  const [from = 1, to = Number.POSITIVE_INFINITY] = lines?.split('-').map(Number) ?? [];
  const isWanted = ({ location, status }: Mutant) =>
    status !== 'Ignored' && location.start.line + 1 >= from && location.end.line + 1 <= to;
  const mutants = made.mutants.filter(isWanted);
  const work: Work = {
    sources: Object.fromEntries(made.files.map(({ name, content }) => [name, content])),
    slips: mutants.map(({ id }) => id),
    tests,
  };
  rmSync(join(root, '.mutation'), { recursive: true, force: true });
  mkdirSync(join(root, '.mutation'));
  writeFileSync(join(root, '.mutation/work.json'), JSON.stringify(work));
  const named = tests.flatMap((place) => (/\.tsx?$/.test(place) ? [place] : testsIn(root, place)));
  writeFileSync(join(root, '.mutation/all.test.ts'), named.map((path) => `import '../${path}';\n`).join(''));
  return sources.map(({ name, content }, index) => ({
    path: paths[index] ?? '',
    source: content,
    mutants: mutants
      .filter(({ fileName }) => fileName === name)
      .map(({ id, location: { start, end }, replacement }) => ({
        id,
        status: 'Ignored',
        replacement,
        location: {
          start: { line: start.line + 1, column: start.column + 1 },
          end: { line: end.line + 1, column: end.column + 1 },
        },
      })),
  }));
}

function testsIn(root: string, folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.test\.tsx?$/.test(name))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .toSorted();
}

const longestMs = 60_000;

/** Asks the tests about every slip; null where they fail without one. */
export async function askTests(
  root: string,
  files: readonly BrokenFile[],
): Promise<readonly BrokenFile[] | null> {
  const foundAt = join(root, '.mutation/found.json');
  const read = () => JSON.parse(readFileSync(foundAt, 'utf8')) as Found;
  writeFileSync(foundAt, JSON.stringify({ status: {}, under: null } satisfies Found));
  const slips = files.flatMap(({ mutants }) => mutants);
  for (;;) {
    const before = Object.keys(read().status).length;
    if (before === slips.length) break;
    console.log(`${before} of ${slips.length}`);
    const { isPassed, stoppedAt } = await oneProcess(root, read);
    const found = read();
    if (stoppedAt !== null) {
      found.status[stoppedAt] = 'Timeout';
      writeFileSync(foundAt, JSON.stringify({ ...found, under: null }));
    } else if (!isPassed || Object.keys(found.status).length === before) {
      return null;
    }
  }
  const { status } = read();
  return files.map((file) => ({
    ...file,
    mutants: file.mutants.map((one) => ({ ...one, status: status[one.id] ?? one.status })),
  }));
}

/** One process of the tests, stopped where a slip keeps it for long. */
function oneProcess(
  root: string,
  read: () => Found,
): Promise<{ readonly isPassed: boolean; readonly stoppedAt: string | null }> {
  const child = spawn(process.execPath, [tools.vitest, 'run', '-c', 'scripts/mutation/vitest.config.ts'], {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  let stoppedAt: string | null = null;
  let [under, since] = [null as string | null, Date.now()];
  const watch = setInterval(() => {
    const now = safely(read)?.under ?? null;
    if (now !== under) [under, since] = [now, Date.now()];
    if (under === null || Date.now() - since < longestMs) return;
    stoppedAt = under;
    child.kill('SIGKILL');
  }, 2000);
  return new Promise((done) => {
    child.on('exit', (code) => {
      clearInterval(watch);
      done({ isPassed: code === 0, stoppedAt });
    });
  });
}

/** The file may be half written at the moment of reading. */
function safely<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch {
    return undefined;
  }
}
