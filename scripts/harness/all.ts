/**
 * Every harness in turn: `npm run harness` does a few dozen runs of each, `npm run harness -- --quick` four of each.
 * Ends with 1 when anything was lost.
 */
import { spawn } from 'node:child_process';
import { argumentsOf } from '../lib/arguments.mjs';

const { has } = argumentsOf({ usage: 'npm run harness -- [--quick]', flags: ['quick'] });
const harnesses = {
  bareKill: 40,
  barePowerCut: 17,
  kill: 6,
  powerCut: 4,
  leave: 24,
  windows: 12,
  faults: 18,
} as const;

let failed = 0;
for (const [name, runs] of Object.entries(harnesses)) {
  // oxlint-disable-next-line no-await-in-loop -- one browser at a time
  const code = await new Promise<number | null>((resolve) => {
    const call = ['tsx', `scripts/harness/${name}.ts`, String(has('quick') ? 4 : runs)];
    spawn('npx', call, { stdio: 'inherit' }).on('close', resolve);
  });
  if (code !== 0) failed += 1;
}
console.log(
  `${Object.keys(harnesses).length} harnesses, ${failed} with a loss or a run that could not be judged`,
);
process.exitCode = failed > 0 ? 1 : 0;
