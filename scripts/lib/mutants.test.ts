import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import measured from '../mutation/measured.json';
import { type Broken, measureOf, mutantsPage } from './mutants.ts';

const source = 'const a = 1;\nif (a > 1) {\n  go();\n}\n';
const at = (line: number, from: number, to: number, toLine = line): Broken['location'] => ({
  start: { line, column: from },
  end: { line: toLine, column: to },
});

test('a measure counts what was noticed, names what was not, and keeps why', () => {
  const mutants: readonly Broken[] = [
    { status: 'Killed', location: at(2, 5, 10), replacement: 'true' },
    { status: 'Timeout', location: at(2, 5, 10), replacement: 'false' },
    { status: 'Survived', location: at(2, 5, 10), replacement: 'a >= 1' },
    { status: 'NoCoverage', location: at(2, 12, 2, 4), replacement: '{}' },
    { status: 'Ignored', location: at(1, 11, 12), replacement: '2' },
    { status: 'RuntimeError', location: at(1, 11, 12), replacement: '3' },
  ];
  const first = measureOf({ source, mutants, tests: ['t'], before: undefined });
  expect(first).toEqual({
    tests: ['t'],
    tried: 4,
    killed: 2,
    atLoad: 1,
    survivors: { 'a > 1 → a >= 1': '', '{ go(); } → {}': '' },
  });
  const before = { ...first, survivors: { 'a > 1 → a >= 1': 'never 1', 'gone → ': 'old' } };
  expect(measureOf({ source, mutants, tests: ['t'], before }).survivors).toEqual({
    'a > 1 → a >= 1': 'never 1',
    '{ go(); } → {}': '',
  });
});

test('the page sums rooms and lists survivors under their reason', () => {
  const one = { tests: ['t'], tried: 10, killed: 9, atLoad: 2, survivors: { 'a → b': 'Same thing.' } };
  const page = mutantsPage({
    'src/domain/x/a.ts': one,
    'src/domain/x/b.ts': { ...one, killed: 10, survivors: {} },
  });
  expect(page).toContain('| **`src/domain/x`** | 20 | 19 | 95.0 % | 4 |');
  expect(page).toContain('| b.ts | 10 | 10 | 100.0 % | 2 |');
  expect(page).toContain('### `src/domain/x/a.ts`\n\n- Same thing.\n  - `a → b`');
  expect(page).not.toContain('### `src/domain/x/b.ts`');
  const open = mutantsPage({ 'src/domain/x/a.ts': { ...one, survivors: { 'a → b': '' } } });
  expect(open).toContain('- Not looked at yet: 1, by name');
  expect(open).not.toContain('a → b');
});

test('docs/mutants.md is what was measured', () => {
  const written = readFileSync(new URL('../../docs/mutants.md', import.meta.url), 'utf8');
  expect(written === mutantsPage(measured), 'Run `npm run mutate` and commit docs/mutants.md.').toBe(true);
});
