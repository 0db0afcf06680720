import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { argumentsOf } from '../lib/arguments.mjs';

/**
 * `npm run bench`. Each benchmark is bundled for Node first, as the app is bundled for the browser: run file by file
 * from source the same code takes twice as long.
 */
argumentsOf({ usage: 'npm run bench' });
const benchmarks = ['core', 'building', 'power'];
// Inside node_modules, so that the rule library, which is left out of the bundle, is found.
mkdirSync('node_modules/.cache', { recursive: true });
const out = mkdtempSync('node_modules/.cache/bench-');
try {
  for (const name of benchmarks) {
    const entry = `scripts/bench/${name}.ts`;
    if (!existsSync(entry)) continue;
    await build({
      configFile: false,
      logLevel: 'error',
      build: { ssr: entry, outDir: out, emptyOutDir: false, target: 'es2023', minify: false },
      ssr: { noExternal: true, external: ['json-rules-engine'] },
    });
    console.log(`\n══ ${name}`);
    const { status } = spawnSync(process.execPath, [join(out, `${name}.js`)], { stdio: 'inherit' });
    if (status !== 0) process.exitCode = status ?? 1;
  }
  console.log('\n══ screen');
  const { status } = spawnSync(process.execPath, ['--import', 'tsx', 'scripts/bench/screen.ts'], {
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  if (status !== 0) process.exitCode = status ?? 1;
} finally {
  rmSync(out, { recursive: true, force: true });
}
