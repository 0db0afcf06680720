import { expect, type Page } from 'playwright/test';
import { lookAt } from './reader.ts';
import { type PdfPage, readPdf } from './pdf.ts';

/** Ticks exactly these sheets, in one go: to lay out each step on the way takes long and fills memory. */
export async function tickSheets(page: Page, names: readonly string[] | 'all'): Promise<void> {
  const boxes = page.getByRole('group', { name: 'What to print' }).getByRole('checkbox');
  await boxes.first().waitFor();
  await boxes.evaluateAll(async (all, wanted) => {
    for (const box of all as HTMLInputElement[]) {
      const name = box.parentElement?.textContent ?? '';
      if (box.checked === (wanted === 'all' || wanted.some((one) => name.startsWith(one)))) continue;
      box.click();
      // oxlint-disable-next-line no-await-in-loop -- the page hears one tick after the other
      await Promise.resolve();
    }
  }, names);
}

/** The print page, as an estimator sees it. */
export function printPage(page: Page) {
  const print = page.getByRole('button', { name: 'Print', exact: true });
  return {
    open: async () => {
      await lookAt(page, 'print');
    },
    choose: async (...names: readonly string[]) => {
      await tickSheets(page, names);
      for (const name of names) await expect(page.getByRole('checkbox', { name }).first()).toBeChecked();
    },
    paper: (name: string) => page.getByLabel('Paper of the door schedule').selectOption({ label: name }),
    /** Everything that comes out of the printer, page by page. */
    print: async (): Promise<readonly PdfPage[]> => {
      await print.and(page.locator(':enabled')).waitFor();
      return readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    },
  };
}
