import { fileURLToPath } from 'node:url';
import { defineConfig } from 'playwright/test';
import { browserArgs, findBrowser } from '../../scripts/browser.mjs';

const fromRoot = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

// `npm test` hands over a port that it found free; alone, the stories use a fixed one.
const port = Number(process.env['LATCHWARD_STORIES_PORT'] ?? 4317);
const baseURL = `http://127.0.0.1:${port}/`;

const executablePath = findBrowser();
if (executablePath === undefined) {
  throw new Error('The stories need Chromium. Run: node scripts/browser.mjs --install');
}

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.story.ts',
  outputDir: fromRoot('node_modules/.cache/latchward/stories'),
  fullyParallel: true,
  workers: 2,
  retries: 0,
  // Long ones walk a matrix of pages, looks and widths; they are run before a release (`npm run stories:long`). Each
  // promise and each numbered behavior has its story among the usual ones (tests/health).
  projects: [
    { name: 'usual', grepInvert: /@long/ },
    { name: 'long', grep: /@long/ },
  ],
  forbidOnly: Boolean(process.env['CI']),
  timeout: 90_000,
  expect: { timeout: 20_000 },
  reporter: [['list'], ['json', { outputFile: fromRoot('node_modules/.cache/latchward/stories.json') }]],
  use: {
    baseURL,
    headless: true,
    actionTimeout: 20_000,
    navigationTimeout: 30_000,
    // Storing every file for later takes the machine away from the story; offline.story.ts lets it.
    serviceWorkers: 'block',
    trace: 'off',
    video: 'off',
    screenshot: 'off',
    // Screen readers, dates and numbers: the same on every machine.
    locale: 'en-US',
    timezoneId: 'UTC',
    viewport: { width: 1440, height: 900 },
    launchOptions: { executablePath, args: browserArgs },
  },
  webServer: {
    command: `"${process.execPath}" scripts/serve-built.mjs ${port}`,
    cwd: fromRoot('.'),
    url: baseURL,
    reuseExistingServer: false,
    timeout: 60_000,
  },
});
