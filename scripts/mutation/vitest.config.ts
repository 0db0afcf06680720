import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import type { Work } from './work.ts';

const { sources, tests } = JSON.parse(readFileSync('.mutation/work.json', 'utf8')) as Work;
const isScreen = tests.some((place) => /^(src\/(ui|app)|tests\/screens)/.test(place));

/** One file that names all tests, so that they and the code are loaded once and asked again for each slip. */
export default defineConfig({
  plugins: [
    { name: 'broken code', enforce: 'pre', load: (id: string) => sources[id.split('?')[0] ?? ''] },
    react(),
  ],
  test: {
    include: ['.mutation/all.test.ts'],
    environment: isScreen ? 'jsdom' : 'node',
    setupFiles: [...(isScreen ? ['tests/setup-ui.ts'] : []), 'scripts/mutation/quick.ts'],
    runner: 'scripts/mutation/runner.ts',
    reporters: [['default', { summary: false }]],
    restoreMocks: true,
    testTimeout: 60_000,
    // What a slip breaks may also fail where no test waits for it.
    dangerouslyIgnoreUnhandledErrors: true,
    pool: 'threads',
    maxWorkers: 1,
  },
});
