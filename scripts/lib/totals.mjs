// Adds up what the two test runners report.
import { existsSync, readFileSync } from 'node:fs';

/**
 * @typedef {object} Totals
 * @property {number} passed
 * @property {number} failed
 * @property {number} skipped
 */

/** @type {Totals} */
export const none = { passed: 0, failed: 0, skipped: 0 };

/** @param {Totals} a @param {Totals} b @returns {Totals} */
export const add = (a, b) => ({
  passed: a.passed + b.passed,
  failed: a.failed + b.failed,
  skipped: a.skipped + b.skipped,
});

/** @param {Totals} totals */
export const totalsLine = ({ passed, failed, skipped }) =>
  `${passed} passed, ${failed} failed, ${skipped} skipped`;

/**
 * @typedef {{ status: string, assertionResults: readonly { status: string }[] }} VitestFile
 * @param {{ testResults: readonly VitestFile[] }} report
 * @returns {Totals}
 */
export function vitestTotals(report) {
  return report.testResults
    .map((file) => {
      const count = (/** @type {string[]} */ ...wanted) =>
        file.assertionResults.filter((test) => wanted.includes(test.status)).length;
      const passed = count('passed');
      const failed = count('failed');
      // A file that could not be loaded has no failed test, and must not go unnoticed.
      const brokenFile = file.status === 'failed' && failed === 0 ? 1 : 0;
      return { passed, failed: failed + brokenFile, skipped: file.assertionResults.length - passed - failed };
    })
    .reduce(add, none);
}

/**
 * @param {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number },
 *           errors?: readonly unknown[] }} report
 * @returns {Totals}
 */
export function storyTotals({ stats, errors = [] }) {
  return {
    passed: stats.expected + stats.flaky,
    // An error outside any test, such as a story file that does not load, counts as one failure.
    failed: stats.unexpected + errors.length,
    skipped: stats.skipped,
  };
}

/**
 * A runner that died early leaves no report: that is nothing passed, and its exit code tells the rest.
 * @template T
 * @param {string} file
 * @param {(report: T) => Totals} count
 * @returns {Totals}
 */
export const readTotals = (file, count) =>
  existsSync(file) ? count(JSON.parse(readFileSync(file, 'utf8'))) : none;
