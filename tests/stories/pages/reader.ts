import { test as alone, expect, type Page } from 'playwright/test';

interface Started {
  /** One window a worker, started once. */
  readonly reader: Page;
  /** The page's policy is put aside, for a checker that is put into it as a script. */
  readonly withoutPolicy: boolean;
}

/**
 * Stories of somebody who only looks: they share one window, since to start the app takes longer than to look. A story
 * that edits, filters or says something the browser remembers takes a window of its own (`test` of playwright).
 */
export const test = alone.extend<{ page: Page }, Started>({
  withoutPolicy: [false, { option: true, scope: 'worker' }],
  reader: [
    async ({ browser, withoutPolicy }, use, worker) => {
      const { baseURL } = worker.project.use;
      const context = await browser.newContext({
        ...(baseURL === undefined ? {} : { baseURL }),
        bypassCSP: withoutPolicy,
        serviceWorkers: 'block',
        locale: 'en-US',
        timezoneId: 'UTC',
      });
      const page = await context.newPage();
      page.setDefaultTimeout(20_000);
      await page.goto('');
      await page.getByRole('button', { name: 'New opening' }).waitFor();
      await use(page);
      await context.close();
    },
    { scope: 'worker', timeout: 60_000 },
  ],
  page: async ({ reader }, use) => {
    await reader.setViewportSize({ width: 1440, height: 900 });
    await reader.emulateMedia({ reducedMotion: null, media: null, forcedColors: null });
    await use(reader);
    await reader.evaluate(() => document.documentElement.removeAttribute('data-theme'));
  },
});

/** Led there inside the app, not loaded anew; a page that is there already is left first, so that it begins afresh. */
export async function lookAt(page: Page, address: string): Promise<void> {
  if (pageOf(await page.evaluate(() => location.hash)) === pageOf(address)) {
    await goTo(page, pageOf(address) === 'legend' ? 'files' : 'legend');
  }
  await goTo(page, address);
}

const pageOf = (hash: string) => hash.replace(/^#\//, '').split('/')[0] || 'schedule';

async function goTo(page: Page, address: string): Promise<void> {
  const [before, title] = [await page.evaluate(() => location.hash), await page.title()];
  await page.goto(`#/${address}`);
  // The title follows once the page is another one; until then the heading of the one before stands there.
  if (pageOf(before) !== pageOf(address)) await expect(page).not.toHaveTitle(title);
  await expect(page.locator('main h1').first()).toBeVisible();
  await page.evaluate(() => document.fonts.ready);
}
