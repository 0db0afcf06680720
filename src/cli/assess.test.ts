import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decideAll } from '../domain/decide/decide.ts';
import { hardwareSets } from '../domain/sets/sets.ts';
import { openProjectText, saveProjectText } from '../domain/versions/file.ts';
import type { BuildingRecord, DecisionRecord } from '../exporting/jsonl/schema.ts';
import { stepModel } from '../intake/ifc/testing/stepModel.ts';
import { readBasis } from './basis.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
// Among the packages, so that the reader of building models is found: it brings a program of its own and is not put in.
const folder = mkdtempSync(join(root, 'node_modules', 'assess-'));
afterAll(() => rmSync(folder, { recursive: true }));

// Put together once: each start from source would take two seconds.
beforeAll(async () => {
  await build({
    configFile: false,
    logLevel: 'error',
    build: { ssr: join(root, 'src/cli/assess.ts'), outDir: folder, emptyOutDir: false, minify: false },
    ssr: { noExternal: true, external: ['web-ifc'] },
  });
}, 60_000);

const start = (command: string, call: readonly string[]) => {
  const options = { cwd: root, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 } as const;
  const { status, stdout, stderr } = spawnSync(command, call, options);
  return { status, stdout, stderr };
};
const run = (...call: readonly string[]) => start(process.execPath, [join(folder, 'assess.js'), ...call]);
/** A few openings of the demo building, in all its rooms: enough to see what an option does. */
function few() {
  const opened = openProjectText(readFileSync(join(root, 'demo-data/demo-building.json'), 'utf8'));
  if (!opened.ok) throw new Error('The demo building does not open.');
  const marks = new Set(['P01', 'P02', '209', '404A']);
  const openings = Object.entries(opened.project.openings).filter(([, { mark }]) => marks.has(mark));
  return { ...opened.project, openings: Object.fromEntries(openings) };
}
/** The demo building is called the same way by several tests: one start of it serves them all. */
const kept = new Map<string, ReturnType<typeof start>>();
function demo(...call: readonly string[]) {
  const key = call.join(' ');
  const answer = kept.get(key) ?? run('demo-data/demo-building.json', ...call);
  kept.set(key, answer);
  return answer;
}
const lines = (stdout: string) =>
  stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as DecisionRecord);
const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
let files = 0;
function file(content: string | Uint8Array, ending = 'csv'): string {
  const path = join(folder, `file${(files += 1)}.${ending}`);
  writeFileSync(path, content);
  return path;
}

const header = 'mark,doorType,leafMaterial,frameMaterial,latch,readerSides,occupantLoad\r\n';
const good = 'single,hollowMetal,hollowMetal,mortise,secure,4\r\n';

describe('assess, run as a program', () => {
  it('says at each opening what another basis would change, and with which rule', () => {
    const path = file(saveProjectText(few()), 'json');
    const { status, stdout } = run(path, '--compare-basis', 'ibc2024');
    expect(status).toBe(0);
    const compared = new Map(lines(stdout).map((one) => [one.mark, one.comparison]));
    expect([...compared.values()].every((one) => one?.basis.startsWith('IBC 2024'))).toBe(true);
    expect(compared.get('P02')?.differences).toEqual([]);
    const lobby = compared.get('209')?.differences.find((one) => one.kind === 'decided');
    expect(lobby?.rules.map((one) => one.rule)).toContain('R-94');
    expect(run(path, '--compare-basis', 'ibc2030').status).toBe(2);
    const same = run(path, '--compare-no-amendments');
    expect(lines(same.stdout).every((one) => one.comparison?.differences.length === 0)).toBe(true);
    expect(lines(demo().stdout)[0]).not.toHaveProperty('comparison');
  });

  it('decides every opening of a project file', () => {
    // As the manual says it is called.
    const documented = ['run', '--silent', 'assess', '--', 'demo-data/demo-building.json'];
    const answer = start(npm, documented);
    kept.set('', answer);
    const { status, stdout, stderr } = answer;
    expect([status, stderr]).toEqual([0, '']);
    const records = lines(stdout);
    expect(records.length).toBeGreaterThan(20);
    for (const record of records) {
      expect(record.caution).toContain('authority having jurisdiction');
      expect(record.basis).toContain('IBC 2021');
    }
    expect(Object.keys(records[0] ?? {})).toEqual([
      'mark',
      'globalId',
      'set',
      'setFixed',
      'state',
      'complete',
      'device',
      'failMode',
      'release',
      'onFireAlarm',
      'score',
      'review',
      'signOff',
      'requires',
      'maybe',
      'cautions',
      'findings',
      'missing',
      'rejected',
      'waysForward',
      'doubts',
      'basis',
      'caution',
    ]);
    for (const { state, waysForward } of records) expect(waysForward !== null).toBe(state === 'none');
    const pair = records.find((record) => record.mark === '119');
    expect(pair?.waysForward?.ways[0]?.changes).toMatchObject([
      { field: 'panicPresent', trade: 'locksmith' },
    ]);
  });

  it('numbers hardware sets as the project keeps them', () => {
    const project = few();
    const decisions = decideAll(project);
    const p02 = hardwareSets(project, decisions).find((set) =>
      set.openings.some((one) => one.mark === 'P02'),
    );
    const kept = {
      ...project,
      hardwareSets: {
        s: {
          id: 's',
          number: 'HS-40',
          name: '',
          revision: 0,
          members: { [p02?.openings[0]?.id ?? '']: true as const },
          content: p02?.content ?? '',
        },
      },
    };
    const records = lines(run(file(saveProjectText(kept), 'json')).stdout);
    const setOf = (mark: string) => records.find((record) => record.mark === mark);
    expect(setOf('P02')).toMatchObject({ set: 'HS-40', setFixed: true });
    expect(setOf('P01')).toMatchObject({ set: 'HS-41', setFixed: false });
    expect(setOf('404A')).toMatchObject({ set: null, setFixed: false });
  });

  it('reads a building model beside itself', () => {
    const { status, stdout } = run(file(stepModel(), 'ifc'));
    expect(status).toBe(0);
    expect(lines(stdout).map(({ mark, globalId }) => `${mark} ${globalId?.slice(-2)}`)).toEqual([
      '101 01',
      '102 02',
      '201 03',
    ]);
  });

  it('takes another code basis, and prints for people', () => {
    const path = file(`${header}101,${good}`);
    const other = run(path, '--basis', 'ibc2018,nfpa101-2021');
    expect(lines(other.stdout)[0]?.basis).toContain('IBC 2018 · NFPA 101 2021');
    expect(run(path, '--pretty').stdout).toContain('\n  "mark": "101",\n');
    expect(run(path, '--basis', 'ibc1890')).toMatchObject({ status: 2, stdout: '' });
  });

  it('adds the building as the last line only when asked', () => {
    const { status, stdout } = run('demo-data/demo-building.json', '--building');
    const without = demo().stdout;
    expect(status).toBe(0);
    expect(stdout.startsWith(without)).toBe(true);
    const { building } = JSON.parse(stdout.slice(without.length)) as { readonly building: BuildingRecord };
    const alongTheWay = building.findings.find((one) => one.rule === 'R-55');
    expect(alongTheWay).toMatchObject({ severity: 'severe', openings: ['S2-5', 'S2-P'], conditions: [] });
    expect(alongTheWay?.cites.join()).toContain('IBC 2021');
    const records = building.findings.find((one) => one.space?.startsWith('Records room'));
    expect(records).toMatchObject({ kind: 'exposed', rule: null, cites: [], path: ['106'] });
    expect(records?.conditions).toContain('batterySpent');
    const table = run(file(`${header}101,${good}`), '--building').stdout;
    expect(JSON.parse(table.trim().split('\n').at(-1) ?? '')).toHaveProperty('building.findings');
  });

  it('decides the good rows, names the bad ones and ends with 1', () => {
    const { status, stdout, stderr } = run(
      file(
        `${header}101,${good}102,${good.replace('4', '-4')}101,${good}104,${good.replace('mortise', 'glue')}`,
      ),
    );
    expect(status).toBe(1);
    expect(lines(stdout).map((record) => record.mark)).toEqual(['101', '102', '104']);
    expect(stderr.split('\n')).toEqual([
      'Row 3, column occupantLoad: Occupant load served cannot be below 0 people.',
      'Row 4, column mark: Mark 101 stands in row 2 and again in row 4. The row was left out.',
      expect.stringMatching(/^Row 5, column latch: Latch or exit device cannot be “glue”; it may be /),
      '',
    ]);
  });

  it('reads semicolons and a byte-order mark', () => {
    const { status, stdout } = run(file(`\uFEFF${header}101,${good}`.replaceAll(',', ';')));
    expect(status).toBe(0);
    expect(lines(stdout)).toMatchObject([{ mark: '101' }]);
  });

  it('sets damaged openings of a project file aside and ends with 1', () => {
    const openings = {
      a: {
        id: 'a',
        mark: '1',
        floorId: null,
        fromSpaceId: null,
        toSpaceId: null,
        facts: { doorType: { is: 'known', value: 'hole' } },
        notes: '',
        override: null,
        review: null,
      },
    };
    const project = {
      id: 'p',
      name: 'P',
      preparedBy: '',
      jurisdiction: '',
      notes: '',
      basis: { ibc: 2021, nfpa101: null, nec: null, nfpa72: null },
      amendments: [],
      building: {},
      weights: { security: 1, simplicity: 1, effort: 1, cost: 1, durability: 1, appearance: 1, power: 1 },
      floors: {},
      spaces: {},
      openings,
    };
    const { status, stdout, stderr } = run(
      file(JSON.stringify({ format: 'latchward-project', formatVersion: 1, project }), 'json'),
    );
    expect(status).toBe(1);
    expect(lines(stdout)).toHaveLength(1);
    expect(stderr).toContain('1, doorType:');
  });

  it('reads UTF-16 and Windows-1252, as the app does', () => {
    expect(lines(run(file(wide)).stdout)).toMatchObject([{ mark: '101' }]);
    const old = run(file(Buffer.from(`${header}10\u00e9,${good}`, 'latin1')));
    expect(lines(old.stdout)).toMatchObject([{ mark: '10\u00e9' }]);
    expect(old.stderr).toContain('Windows-1252');
  });

  const wide = Buffer.from(`\uFEFF${header}101,${good}`, 'utf16le');
  it.each<[string, string | Uint8Array, string]>([
    ['broken JSON', '{"format": "latchward-project", ', 'not readable as JSON'],
    [
      'a newer format',
      '{"format":"latchward-project","formatVersion":999,"project":{}}',
      'newer version (format 999',
    ],
    ['another program’s JSON', '[1, 2]', 'not a Latchward project file'],
    ['an empty file', '', 'The file is empty.'],
    ['a table without marks', 'a,b\n1,2\n', 'No row names the columns'],
  ])('ends with 2 and one sentence on %s', (_name, content, says) => {
    const { status, stdout, stderr } = run(file(content));
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain(says);
    expect(stderr.trim().split('\n')).toHaveLength(1);
  });

  it('ends with 2 without a file, with an unknown option or with a file that is not there', () => {
    expect(run()).toMatchObject({ status: 2, stderr: expect.stringContaining('Usage:') });
    expect(run('--color')).toMatchObject({ status: 2 });
    expect(run('nowhere.json')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('cannot be read'),
    });
  });
});

describe('the code basis on the command line', () => {
  const start = { ibc: 2021, nfpa101: null, nec: 2020, nfpa72: 2019 } as const;
  it('changes only the books that are named', () => {
    expect(readBasis('nfpa101-2024, ibc-none', start)).toEqual({
      ok: true,
      basis: { ...start, ibc: null, nfpa101: 2024 },
    });
  });
  it('refuses a book or year nobody entered', () => {
    expect(readBasis('ubc1997', start)).toMatchObject({ ok: false });
    expect(readBasis('ibc2020', start)).toMatchObject({
      ok: false,
      says: expect.stringContaining('2018, 2021'),
    });
  });
});
