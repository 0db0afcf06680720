// The rooms of src/ keep to themselves. Lint and the compiler say so; these tests prove that both really do,
// by planting files that break the rules (in a folder of the system, never in the tree), and then check every
// import of the tree a second way, by where it leads instead of how it is written.
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { domainRooms, withRooms, withRoomTable } from '../../scripts/lib/domain-rooms.ts';
import { inRoot, root, tools } from '../../scripts/lib/repo.mjs';

interface Planted {
  readonly file: string;
  readonly code: string;
  /** The lint rule that must object; none means that the file keeps to the rules. */
  readonly breaks?:
    | 'no-restricted-imports'
    | 'no-restricted-globals'
    | 'no-restricted-properties'
    | 'no-explicit-any';
}

/** One file for each import, in the room of the given file. */
const banned = (near: string, specifiers: string): Planted[] =>
  specifiers.split(' ').map((specifier, index) => ({
    file: `src/${near}/banned-${index}.ts`,
    code: `import '${specifier}';\n`,
    breaks: 'no-restricted-imports',
  }));

const allowed = (near: string, specifiers: string): Planted => ({
  file: `src/${near}/allowed.ts`,
  code: specifiers
    .split(' ')
    .map((specifier) => `import '${specifier}';\n`)
    .join(''),
});

const asTest = (plant: Planted): Planted => ({ ...plant, file: plant.file.replace(/\.ts$/, '.test.ts') });

const inDomain = (name: string, code: string, breaks: NonNullable<Planted['breaks']>): Planted => ({
  file: `src/domain/rules/${name}.ts`,
  code: `${code}\n`,
  breaks,
});

/** Every way to write an import of a higher room inside the domain. */
const upward = (room: string, higher: string): Planted[] =>
  [
    `import { x } from '../${higher}/x.ts';\nexport const y = x;`,
    `import type { X } from '../${higher}/x.ts';\nexport type Y = X;`,
    `import { type X } from '../${higher}/x.ts';\nexport type Y = X;`,
    `export { x } from '../${higher}/x.ts';`,
    `export type { X } from '../${higher}/x.ts';`,
    `export * from '../${higher}/x.ts';`,
    `export const x = import('../${higher}/x.ts');`,
    `import '../../domain/${higher}/x.ts';`,
    `import './../${higher}/x.ts';`,
    `import './deep/../../${higher}/x.ts';`,
  ].map((code, index) => ({
    file: `src/domain/${room}/upward-${index}.ts`,
    code: `${code}\n`,
    breaks: 'no-restricted-imports',
  }));

const roomNames = domainRooms.map(({ room }) => room);

const planted: readonly Planted[] = [
  // Each room against its neighbor above, and the lowest against the highest.
  ...roomNames.slice(0, -1).flatMap((room, index) => upward(room, roomNames[index + 1] ?? '')),
  ...roomNames.slice(1).map((room, index) => allowed(`domain/${room}`, `../${roomNames[index] ?? ''}/x.ts`)),
  ...banned('domain/units', '../manual/x.ts ../../domain/decide/x.ts'),
  ...banned('domain/rules', 'react zustand dexie papaparse elkjs zod/mini node:fs fs'),
  ...banned('domain/decide', '../../storage/x.ts ../../app/x.ts ../../ui/x.ts ../../exporting/x.ts'),
  ...banned('domain/codes', '../../cli/x.ts ../../main.tsx ../testing/x.ts ../../../tests/x.ts'),
  allowed('domain/rules', 'zod ./x.ts ../model/x.ts'),
  ...banned('domain/building', 'react node:fs ../../storage/x.ts'),
  allowed('domain/building', 'zod ../model/x.ts'),
  ...banned('domain/rules', 'react dexie ../../ui/x.ts').map(asTest),
  asTest(allowed('domain/rules', 'vitest fast-check node:fs ../testing/x.ts')),
  ...banned('exporting', 'react node:fs ../storage/x.ts ../app/x.ts ../ui/x.ts ../cli/x.ts'),
  ...banned('exporting', '../domain/decide/decide.ts'),
  ...banned('cli', '../domain/decide/decide.ts'),
  allowed('exporting', 'papaparse hucre/xlsx zod ../domain/rules/x.ts'),
  ...banned(
    'intake',
    'react zod node:fs hucre ../storage/x.ts ../app/x.ts ../ui/x.ts ../cli/x.ts ../exporting/x.ts',
  ),
  allowed('intake', 'papaparse hucre/xlsx ../domain/import/x.ts'),
  ...banned('exporting', '../intake/x.ts'),
  ...banned('storage', 'react zustand ../app/x.ts ../ui/x.ts ../exporting/x.ts ../domain/rules/x.ts'),
  allowed('storage', 'dexie ../domain/model/x.ts ../domain/versions/x.ts ../domain/commands/x.ts'),
  ...banned('app', 'react dexie node:fs ../ui/x.ts ../cli/x.ts'),
  allowed('app', 'zustand zustand/middleware ../domain/rules/x.ts ../storage/x.ts ../exporting/x.ts'),
  ...banned('ui/editor', 'dexie papaparse zustand node:fs ../../storage/x.ts ../../cli/x.ts'),
  ...banned('ui/editor', '../../app/decisionsAlone.ts ../../domain/decide/decide.ts'),
  ...banned('ui/building', '../../app/decisionsAlone.ts ../../domain/decide/decide.ts'),
  allowed('ui/editor', 'react @tanstack/react-virtual ../../app/x.ts ../parts/x.ts'),
  allowed('ui/reasons', '../../domain/manual/x.ts ../../exporting/x.ts ./reasons.css'),
  ...banned('ui/parts', 'elkjs elkjs/lib/elk-api.js'),
  allowed('ui/building', 'elkjs/lib/elk-api.js react ../../domain/building/x.ts'),
  ...banned('cli', 'react dexie ../storage/x.ts ../app/x.ts ../ui/x.ts'),
  allowed('cli', 'node:fs node:fs/promises ../domain/rules/x.ts ../exporting/x.ts'),
  inDomain('page', 'export const page = document.title;', 'no-restricted-globals'),
  inDomain('store', "export const saved = localStorage.getItem('x');", 'no-restricted-globals'),
  inDomain('clock', 'export const now = Date.now();', 'no-restricted-properties'),
  inDomain('chance', 'export const chance = Math.random();', 'no-restricted-properties'),
  inDomain('lazy', "export const lazy = import('dexie');", 'no-restricted-imports'),
  inDomain('again', "export { createStore } from 'zustand';", 'no-restricted-imports'),
  inDomain('any', 'export const loose = (x: any): unknown => x;', 'no-explicit-any'),
];

const browserCode = "import { version } from 'react';\nexport const title = document.title + version;\n";

let folder = '';

const node = (...args: string[]) => spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' });

/** The lint rules that object to each file. */
function lint(cwd: string): Map<string, Set<string>> {
  const run = spawnSync(process.execPath, [tools.oxlint, '--format=json', 'src'], { cwd, encoding: 'utf8' });
  const report: { diagnostics: { filename: string; code: string }[]; number_of_files: number } = JSON.parse(
    run.stdout,
  );
  expect(report.number_of_files, 'lint read no file at all').toBeGreaterThan(0);
  const found = new Map<string, Set<string>>();
  for (const { filename, code } of report.diagnostics) {
    const file = filename.replaceAll('\\', '/');
    found.set(file, (found.get(file) ?? new Set()).add(code.replace(/^.*\((.*)\)$/, '$1')));
  }
  return found;
}

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'latchward-boundaries-'));
  for (const config of ['.oxlintrc.json', 'tsconfig.json', 'package.json']) {
    cpSync(inRoot(config), path.join(folder, config));
  }
  for (const { file, code } of planted) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), code);
  }
  symlinkSync(inRoot('node_modules'), path.join(folder, 'node_modules'), 'junction');
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('lint', () => {
  let objections: Map<string, Set<string>>;
  beforeAll(() => {
    objections = lint(folder);
  });

  const objects = ({ file }: Planted, rule: string) => objections.get(file)?.has(rule) === true;

  test('rejects every planted file that breaks a rule', () => {
    const missed = planted.filter((plant) => plant.breaks !== undefined && !objects(plant, plant.breaks));
    expect(missed).toEqual([]);
  });

  test('accepts every planted file that keeps to the rules', () => {
    const accused = planted.filter(
      (plant) => plant.breaks === undefined && objects(plant, 'no-restricted-imports'),
    );
    expect(accused).toEqual([]);
  });

  test('finds no forbidden import, global or property in the tree', () => {
    const kinds = new Set<string | undefined>(planted.map(({ breaks }) => breaks));
    const broken = [...lint(root)].flatMap(([file, rules]) =>
      [...rules].filter((rule) => kinds.has(rule)).map((rule) => `${file}: ${rule}`),
    );
    expect(broken).toEqual([]);
  });
});

describe('the list of rooms inside the domain', () => {
  test('names every room, and no room that is not there', () => {
    const there = readdirSync(inRoot('src', 'domain'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && entry.name !== 'testing')
      .map(({ name }) => name);
    expect(roomNames.toSorted()).toEqual(there.toSorted());
  });

  test('is what lint enforces', () => {
    const { overrides } = JSON.parse(readFileSync(inRoot('.oxlintrc.json'), 'utf8'));
    expect(overrides, 'run npm run rooms').toEqual(withRooms(overrides));
  });

  test('is what the map in DEVELOPERS.md shows', () => {
    const page = readFileSync(inRoot('DEVELOPERS.md'), 'utf8');
    expect(page, 'run npm run rooms').toBe(withRoomTable(page));
  });
});

describe('the compiler', () => {
  const compile = (project: string) => {
    const { status, stdout } = node(tools.tsc, '-p', project);
    return { status, stdout };
  };

  test('rejects the page of a browser in the domain, and only there', () => {
    const rooms = ['domain', 'elsewhere'].map((name) => path.join(folder, 'compiled', 'src', name));
    const [domain = '', elsewhere = ''] = rooms;
    for (const room of rooms) {
      mkdirSync(room, { recursive: true });
      writeFileSync(path.join(room, 'clean.ts'), 'export const two = 1 + 1;\n');
    }
    cpSync(inRoot('tsconfig.json'), path.join(folder, 'compiled', 'tsconfig.json'));
    cpSync(inRoot('src/domain/tsconfig.json'), path.join(domain, 'tsconfig.json'));
    expect(compile('compiled/src/domain')).toEqual({ status: 0, stdout: '' });

    writeFileSync(path.join(elsewhere, 'browser.ts'), browserCode);
    expect(compile('compiled')).toEqual({ status: 0, stdout: '' });

    writeFileSync(path.join(domain, 'browser.ts'), browserCode);
    const rejected = compile('compiled/src/domain');
    expect(rejected.status).not.toBe(0);
    expect(rejected.stdout).toContain("Cannot find name 'document'");
  });
});

describe('every import of the tree', () => {
  const sources = readdirSync(inRoot('src'), { recursive: true, encoding: 'utf8' })
    .map((file) => `src/${file.replaceAll('\\', '/')}`)
    .filter((file) => /\.tsx?$/.test(file));

  const shipped = sources.filter((file) => !/\.test\.tsx?$|^src\/domain\/testing\//.test(file));

  /** Imports, re-exports, imports on demand and imports inside types. */
  function importsOf(file: string): string[] {
    const code = readFileSync(inRoot(file), 'utf8');
    return [
      /^\s*(?:import|export)\s[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]/gm,
      /^\s*import\s*['"]([^'"]+)['"]/gm,
      /\bimport\(\s*['"]([^'"]+)['"]/g,
    ].flatMap((pattern) => [...code.matchAll(pattern)].map((match) => match[1] ?? ''));
  }

  const roomOf = (file: string) => /^src\/([^/]+)\//.exec(file)?.[1] ?? 'main';

  /** Which rooms a room may reach into. Packages are left to lint. */
  const mayReach: Readonly<Record<string, readonly string[]>> = {
    domain: ['domain'],
    exporting: ['exporting', 'domain'],
    intake: ['intake', 'domain'],
    storage: ['storage', 'domain', 'intake'],
    app: ['app', 'domain', 'intake', 'storage', 'exporting'],
    ui: ['ui', 'app', 'domain', 'intake', 'exporting'],
    cli: ['cli', 'domain', 'intake', 'exporting'],
    main: ['main', 'domain', 'intake', 'storage', 'exporting', 'app', 'ui'],
  };

  test('leads to a room that may be reached', () => {
    const wrong = shipped.flatMap((file) =>
      importsOf(file)
        .filter((specifier) => specifier.startsWith('.'))
        .map((specifier) => path.posix.join(path.posix.dirname(file), specifier))
        .filter(
          (target) =>
            !target.startsWith('src/') ||
            target.startsWith('src/domain/testing/') ||
            !mayReach[roomOf(file)]?.includes(roomOf(target)),
        )
        .map((target) => `${file} imports ${target}`),
    );
    expect(wrong).toEqual([]);
  });

  test('goes from a room of the domain to a room below it', () => {
    const floor = (file: string) => roomNames.indexOf(/^src\/domain\/([^/]+)\//.exec(file)?.[1] ?? '');
    const wrong = shipped
      .filter((file) => file.startsWith('src/domain/'))
      .flatMap((file) =>
        importsOf(file)
          .filter((specifier) => specifier.startsWith('.'))
          .map((specifier) => path.posix.join(path.posix.dirname(file), specifier))
          .filter((target) => floor(target) > floor(file))
          .map((target) => `${file} imports ${target}`),
      );
    expect(wrong).toEqual([]);
  });

  test('names a package that the domain may use', () => {
    const wrong = shipped
      .filter((file) => file.startsWith('src/domain/'))
      .flatMap((file) =>
        importsOf(file)
          .filter((specifier) => !specifier.startsWith('.') && specifier !== 'zod')
          .map((specifier) => `${file} imports ${specifier}`),
      );
    expect(wrong).toEqual([]);
  });

  test('is found at all: this very check reads the entry of the app', () => {
    expect(importsOf('src/main.tsx')).toContain('react');
  });

  test('nobody outside the domain reads a decision as it was without the building', () => {
    const reading = shipped
      .filter((file) => ['ui', 'exporting', 'cli'].includes(roomOf(file)))
      .filter((file) => /\.alone\b/.test(readFileSync(inRoot(file), 'utf8')));
    expect(reading, 'what the building leaves of it is what is so').toEqual([]);
  });

  test('no address of a page is written by hand', () => {
    const written = shipped
      .filter((file) => file !== 'src/app/addresses.ts')
      .filter((file) => /(['"`])#\/|location\.hash\s*=[^=]/.test(readFileSync(inRoot(file), 'utf8')));
    expect(written, 'linkTo and moveTo of src/app/addresses.ts know every page').toEqual([]);
  });

  test('nobody says by hand of which type a fact is', () => {
    const casting = shipped.filter((file) =>
      /\bas (\w+<\w+, )?(AnyFact|AnyValue|Fact<|FactValue)|type \w+ = string \| number \| boolean/.test(
        readFileSync(inRoot(file), 'utf8').replace(/export type AnyValue = .*/, ''),
      ),
    );
    expect(casting, 'factAt, factEntries and valueEntries of domain/model give it with its type').toEqual([]);
  });

  test('the domain never asks what time it is', () => {
    const asking = shipped
      .filter((file) => file.startsWith('src/domain/'))
      .filter((file) => /\bDate\(\s*\)|\bnew Date\b(?!\s*\()/.test(readFileSync(inRoot(file), 'utf8')));
    expect(asking, 'hand the date in instead').toEqual([]);
  });
});
