import process from 'node:process';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

/** The tests that are held against broken code; the screens among them need a page. */
const folder = process.env['LATCHWARD_MUTATION_TESTS'];
if (folder === undefined) throw new Error('LATCHWARD_MUTATION_TESTS names no folder of tests.');
const isScreen = /^(src\/(ui|app)|tests\/screens)/.test(folder);

export default defineConfig({
  plugins: [react()],
  test: {
    include: [`${folder}/**/*.test.{ts,tsx}`],
    environment: isScreen ? 'jsdom' : 'node',
    setupFiles: isScreen ? ['tests/setup-ui.ts'] : [],
    restoreMocks: true,
    testTimeout: 120_000,
  },
});
