import { expect, test } from 'vitest';
import { add, none, readTotals, storyTotals, totalsLine, vitestTotals } from './totals.mjs';

test('counts passed, failed and skipped unit tests', () => {
  const file = {
    status: 'failed',
    assertionResults: [
      { status: 'passed' },
      { status: 'passed' },
      { status: 'failed' },
      { status: 'skipped' },
      { status: 'pending' },
      { status: 'todo' },
    ],
  };
  expect(vitestTotals({ testResults: [file, file] })).toEqual({ passed: 4, failed: 2, skipped: 6 });
});

test('a unit test file that cannot be loaded counts as a failure', () => {
  const report = { testResults: [{ status: 'failed', assertionResults: [] }] };
  expect(vitestTotals(report)).toEqual({ passed: 0, failed: 1, skipped: 0 });
});

test('counts stories, and errors outside any story', () => {
  const report = { stats: { expected: 5, unexpected: 1, flaky: 1, skipped: 2 }, errors: [{ message: 'no' }] };
  expect(storyTotals(report)).toEqual({ passed: 6, failed: 2, skipped: 2 });
});

test('a missing report counts as no tests at all', () => {
  expect(readTotals('no/such/report.json', vitestTotals)).toEqual(none);
});

test('the last line has one fixed form', () => {
  const sum = add({ passed: 1, failed: 2, skipped: 3 }, { passed: 10, failed: 20, skipped: 30 });
  expect(totalsLine(sum)).toBe('11 passed, 22 failed, 33 skipped');
});
