import react from '@vitejs/plugin-react';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { policyInPage } from './scripts/lib/policy.mjs';

/** Every file is kept on the device at the first visit, so that each page opens without a network afterward. */
const offline = VitePWA({
  // A new version waits until somebody asks for it: never in the middle of an answer.
  registerType: 'prompt',
  injectRegister: null,
  includeManifestIcons: true,
  workbox: {
    globPatterns: ['**/*.{js,mjs,css,html,svg,png,woff2,woff,json,wasm,webmanifest}'],
    maximumFileSizeToCacheInBytes: 30_000_000,
    navigateFallback: 'index.html',
    cleanupOutdatedCaches: true,
    // The very first window, too: a file it has not asked for yet, such as the PDF reader, is there without a reload.
    clientsClaim: true,
  },
  manifest: {
    name: 'Latchward',
    short_name: 'Latchward',
    description: 'Door opening schedules for electronic access control.',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#f8f7f2',
    theme_color: '#f8f7f2',
    icons: [
      { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
      { src: 'icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
      { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
      { src: 'icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
});

export default defineConfig({
  // Relative addresses, so that the built app also runs from a sub-folder of any web server.
  base: './',
  plugins: [react(), policyInPage(), offline],
  build: { target: 'es2023', chunkSizeWarningLimit: 1500 },
  test: {
    passWithNoTests: false,
    restoreMocks: true,
    // Some tests start the compiler or the linter, which takes long on a busy machine.
    testTimeout: 120_000,
    hookTimeout: 30_000,
    // Left to itself a run on two cores takes one.
    maxWorkers: '100%',
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
