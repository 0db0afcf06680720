import type { BrowserContext, Page } from 'playwright/test';

/** One window of the app, as somebody at the screen sees it. */
function appWindow(page: Page) {
  const saving = page.locator('[data-saving]');
  return {
    page,
    saving,
    open: async () => {
      await page.goto('');
      await page.getByRole('button', { name: 'New opening' }).waitFor();
    },
    addOpening: async (mark: string) => {
      await page.getByRole('link', { name: 'Schedule', exact: true }).first().click();
      await page.getByRole('button', { name: 'New opening' }).click();
      await page.getByRole('textbox', { name: 'Mark', exact: true }).fill(mark);
      await page.getByRole('button', { name: 'Add', exact: true }).click();
    },
    find: async (mark: string) => {
      await page.getByRole('link', { name: 'Schedule', exact: true }).first().click();
      await page.getByRole('searchbox', { name: 'Find in every field' }).fill(mark);
    },
    row: (mark: string) => page.getByRole('gridcell', { name: mark, exact: true }),
    heading: (mark: string) => page.getByRole('heading', { name: mark, exact: true }),
    saveCopy: async () => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save a copy' }).first().click(),
      ]);
      return download.path();
    },
    /** The process behind the page dies, without a word to the page. */
    kill: async () => {
      const crashed = page.waitForEvent('crash');
      const session = await page.context().newCDPSession(page);
      void session.send('Page.crash').catch(() => undefined);
      await crashed;
    },
  };
}

export async function newWindow(context: BrowserContext) {
  const window = appWindow(await context.newPage());
  await window.open();
  return window;
}

/** From now on this window finds the disk full, until it is told otherwise. */
export async function fillDisk(page: Page, full: boolean) {
  await page.evaluate((isFull) => {
    const real =
      Reflect.get(IDBObjectStore.prototype, 'realPut') ?? Reflect.get(IDBObjectStore.prototype, 'put');
    const none = () => {
      throw new DOMException('The disk is full.', 'QuotaExceededError');
    };
    Object.assign(IDBObjectStore.prototype, { realPut: real, put: isFull ? none : real });
  }, full);
}
