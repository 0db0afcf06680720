import { spawn } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright';
import { browserArgs, findBrowser } from './browser.mjs';
import { argumentsOf } from './lib/arguments.mjs';

/**
 * Pictures of every screen and sheet, for looking at: `npm run screens` writes them to docs/screens.
 * The README's picture is one of them, so it is always of the product as it is.
 */
argumentsOf({ usage: 'npm run screens' });
const root = fileURLToPath(new URL('..', import.meta.url));
const folder = `${root}docs/screens`;
const port = 4391;
const address = `http://127.0.0.1:${port}/`;

const pages = [
  ['schedule', 'schedule'],
  ['opening', 'opening/opening-103'],
  ['walk', 'walk/opening-216'],
  ['building', 'building'],
  ['review', 'review'],
  ['print', 'print'],
  ['project', 'project'],
  ['rules', 'rules/R-31'],
  ['files', 'files'],
  ['legend', 'legend'],
] as const;
const widths = { phone: [390, 844], tablet: [768, 1024], desk: [1440, 900] } as const;
const themes = ['light', 'dark'] as const;

async function picture(
  browser: Browser,
  name: string,
  hash: string,
  size: keyof typeof widths,
  theme: string,
) {
  const [width, height] = widths[size];
  const page = await browser.newPage({ viewport: { width, height }, locale: 'en-US', timezoneId: 'UTC' });
  // The tour is for people; the pictures show the pages.
  await page.addInitScript(() => localStorage.setItem('latchward.tourSeen', 'yes'));
  await page.goto(`${address}#/${hash}`);
  await page.evaluate((chosen) => document.documentElement.setAttribute('data-theme', chosen), theme);
  await page.locator('h1').first().waitFor();
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(400);
  await page.screenshot({ path: `${folder}/${name}-${size}-${theme}.jpg`, type: 'jpeg', quality: 62 });
  await page.close();
}

/** Each printed sheet as the preview shows it, which is the thing that prints: its beginning, at desk width. */
async function sheets(browser: Browser) {
  const page = await browser.newPage({
    viewport: { width: 1440, height: 900 },
    locale: 'en-US',
    timezoneId: 'UTC',
  });
  await page.goto(`${address}#/print`);
  await page.evaluate(() => document.documentElement.setAttribute('data-theme', 'light'));
  await page.locator('h1').first().waitFor();
  // Alone, each of them: many together go to the printer in parts, and only the part at hand is laid out.
  const boxes = await page.getByRole('checkbox').all();
  for (const box of boxes) await box.uncheck();
  for (const box of boxes) {
    await box.check();
    await page.waitForTimeout(1500);
    for (const sheet of await page.locator('section.paper').all()) {
      const name = ((await sheet.getAttribute('aria-label')) ?? 'sheet')
        .toLowerCase()
        .replaceAll(/[^a-z]+/g, '-');
      await sheet.evaluate((element) => element.scrollIntoView({ block: 'start' }));
      await page.waitForTimeout(500);
      await page.screenshot({ path: `${folder}/sheet-${name}.jpg`, type: 'jpeg', quality: 62 });
    }
    await box.uncheck();
  }
  await page.close();
}

async function main() {
  const server = spawn(process.execPath, ['scripts/serve-built.mjs', String(port)], {
    cwd: root,
    stdio: 'inherit',
  });
  try {
    await untilServed();
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder, { recursive: true });
    const browser = await chromium.launch({ executablePath: findBrowser() ?? '', args: browserArgs });
    for (const [name, hash] of pages) {
      for (const size of Object.keys(widths) as (keyof typeof widths)[]) {
        for (const theme of themes) {
          // oxlint-disable-next-line no-await-in-loop -- one page at a time keeps two cores honest
          await picture(browser, name, hash, size, theme);
        }
      }
    }
    await sheets(browser);
    await browser.close();
  } finally {
    server.kill();
  }
}

async function untilServed() {
  for (let attempt = 0; attempt < 120; attempt++) {
    // oxlint-disable-next-line no-await-in-loop -- waiting is the purpose
    const up = await fetch(address).then(
      (answer) => answer.ok,
      () => false,
    );
    if (up) return;
    // oxlint-disable-next-line no-await-in-loop -- waiting is the purpose
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  throw new Error('The built app did not come up.');
}

await main();
