import type { Page } from 'playwright/test';
import { lookAt } from './reader.ts';
import { type PdfPage, readPdf } from './pdf.ts';

/** The print page, as an estimator sees it. */
export function printPage(page: Page) {
  const print = page.getByRole('button', { name: 'Print', exact: true });
  return {
    open: async () => {
      await lookAt(page, 'print');
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
