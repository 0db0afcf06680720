import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  // Relative addresses, so that the built app also runs from a sub-folder of any web server.
  base: './',
  plugins: [react()],
  build: { target: 'es2023', chunkSizeWarningLimit: 1500 },
  test: {
    passWithNoTests: false,
    restoreMocks: true,
    // Some tests start the compiler or the linter, which takes long on a busy machine.
    testTimeout: 20_000,
    hookTimeout: 30_000,
    coverage: { provider: 'v8', include: ['src/**/*.{ts,tsx}'], reportsDirectory: 'coverage' },
    projects: [
      {
        extends: true,
        test: {
          name: 'domain',
          environment: 'node',
          // Pure code keeps nothing between files; loading 300 rules anew for each file took most of the time.
          isolate: false,
          include: [
            'src/domain/**/*.test.ts',
            'src/intake/**/*.test.ts',
            'src/exporting/**/*.test.ts',
            'src/cli/**/*.test.ts',
            'tests/health/**/*.test.ts',
            'tests/properties/**/*.test.ts',
            'tests/golden/**/*.test.ts',
            'tests/checks/**/*.test.ts',
            'scripts/**/*.test.ts',
          ],
        },
      },
      {
        extends: true,
        test: {
          name: 'ui',
          environment: 'jsdom',
          // One page and one import of the rules for all files: a new one for each took more time than the tests.
          // What a test changes outside its component it puts back (setup-ui.ts empties the page).
          isolate: false,
          setupFiles: ['tests/setup-ui.ts'],
          include: [
            'src/ui/**/*.test.{ts,tsx}',
            'src/app/**/*.test.{ts,tsx}',
            'src/storage/**/*.test.{ts,tsx}',
          ],
        },
      },
    ],
  },
});
