import type { Page } from 'playwright/test';
import { type PdfPage, readPdf } from './pdf.ts';

/** The print page, as an estimator sees it. */
export function printPage(page: Page) {
  const print = page.getByRole('button', { name: 'Print', exact: true });
  return {
    open: async () => {
      // Anew each time, so that what was chosen before is not chosen still.
      if (page.url().endsWith('#/print')) await page.goto('#/legend');
      await page.goto('#/print');
      await page.getByRole('heading', { name: 'Print', exact: true }).waitFor();
    },
    /** Ticks exactly these sheets. */
    choose: async (...names: readonly string[]) => {
      for (const box of await page.getByRole('checkbox').all()) {
        const name = await box.evaluate((element) => element.parentElement?.textContent ?? '');
        await box.setChecked(names.some((one) => name.startsWith(one)));
      }
    },
    paper: (name: string) => page.getByLabel('Paper of the door schedule').selectOption({ label: name }),
    /** Everything that comes out of the printer, page by page. */
    print: async (): Promise<readonly PdfPage[]> => {
      await print.and(page.locator(':enabled')).waitFor();
      return readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    },
  };
}
