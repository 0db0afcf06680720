// npm test: everything a change must pass, from a bare clone to the browser stories.
// The last line is always "N passed, N failed, N skipped"; any failure stops the run with a non-zero code.
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { argumentsOf } from './lib/arguments.mjs';
import { requireNode } from './lib/node-version.mjs';
import { ensureInstalled } from './lib/install.mjs';
import { build } from './lib/build.mjs';
import { freePort } from './lib/free-port.mjs';
import { inRoot, reportsDir, tools } from './lib/repo.mjs';
import { runNode } from './lib/run.mjs';
import { add, none, readTotals, storyTotals, totalsLine, vitestTotals } from './lib/totals.mjs';

argumentsOf({ usage: 'npm test' });

class StepFailed extends Error {}

const seconds = (/** @type {number} */ value) => `${value.toFixed(1)} s`;
const heading = (/** @type {string} */ text) => console.log(`\n== ${text}`);

/**
 * One step, shown as it runs.
 * @template T
 * @param {string} title
 * @param {() => Promise<T>} body
 */
async function step(title, body) {
  heading(title);
  const started = Date.now();
  try {
    return await body();
  } finally {
    console.log(`   ${title}: ${seconds((Date.now() - started) / 1000)}`);
  }
}

/** @param {Promise<import('./lib/run.mjs').Outcome>} outcome */
async function mustSucceed(outcome) {
  const { code } = await outcome;
  if (code !== 0) throw new StepFailed();
}

/**
 * Steps that do not depend on each other, side by side. Each one's output is shown in one piece when it ends.
 * @param {readonly { title: string, body: () => Promise<import('./lib/run.mjs').Outcome> }[]} steps
 */
async function together(steps) {
  const codes = await Promise.all(
    steps.map(async ({ title, body }) => {
      const { code, output, seconds: took } = await body();
      heading(title);
      if (code !== 0) process.stdout.write(output);
      console.log(`   ${title}: ${seconds(took)}${code === 0 ? '' : ', FAILED'}`);
      return code;
    }),
  );
  if (codes.some((code) => code !== 0)) throw new StepFailed();
}

const unitReport = path.join(reportsDir, 'unit.json');
const storiesReport = path.join(reportsDir, 'stories.json');
let totals = none;

async function everything() {
  requireNode();
  await step('Packages', ensureInstalled);
  mkdirSync(reportsDir, { recursive: true });
  for (const report of [unitReport, storiesReport]) rmSync(report, { force: true });

  await step('Browser', async () => {
    const { findOrInstallBrowser } = await import('./browser.mjs');
    console.log(`   ${findOrInstallBrowser()}`);
  });

  // The switches of the linter are written down once, in package.json.
  const { scripts } = JSON.parse(readFileSync(inRoot('package.json'), 'utf8'));
  const lintArgs = scripts.lint.split(' ').slice(1);
  await together([
    { title: 'Types', body: () => runNode([tools.tsc, '-p', '.'], { quiet: true }) },
    { title: 'Types of the domain', body: () => runNode([tools.tsc, '-p', 'src/domain'], { quiet: true }) },
    { title: 'Lint', body: () => runNode([tools.oxlint, ...lintArgs], { quiet: true }) },
    { title: 'Format', body: () => runNode([tools.biome, 'format', '.'], { quiet: true }) },
    { title: 'Unused code', body: () => runNode([tools.knip, '--production'], { quiet: true }) },
    { title: 'Build', body: () => build({ quiet: true }) },
  ]);

  await step('Unit tests', async () => {
    const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${unitReport}`];
    const outcome = runNode([tools.vitest, 'run', ...reporters]);
    await outcome;
    totals = add(totals, readTotals(unitReport, vitestTotals));
    await mustSucceed(outcome);
  });

  await step('Stories in the browser', async () => {
    const env = { LATCHWARD_STORIES_PORT: String(await freePort()) };
    const outcome = runNode(
      [tools.playwright, 'test', '-c', 'tests/stories/playwright.config.ts', '--project=usual'],
      {
        env,
      },
    );
    await outcome;
    totals = add(totals, readTotals(storiesReport, storyTotals));
    await mustSucceed(outcome);
  });

  if (totals.passed + totals.failed === 0) throw new Error('Not a single test ran.');
  if (totals.failed > 0) throw new StepFailed();
}

try {
  await everything();
} catch (error) {
  // A failed step has already said what is wrong.
  if (!(error instanceof StepFailed)) console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
console.log(`\n${totalsLine(totals)}`);
