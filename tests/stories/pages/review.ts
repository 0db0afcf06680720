import type { Page } from 'playwright/test';

/** The review register, as a reviewer sees it. */
export function reviewPage(page: Page) {
  const entry = (mark: string) => page.getByRole('article', { name: mark, exact: true });
  return {
    open: async () => {
      await page.goto('#/review');
      await page.getByRole('heading', { name: 'Review', exact: true }).waitFor();
      await page.getByRole('combobox', { name: 'Grouped' }).selectOption({ label: 'By opening' });
    },
    entry,
    /** The review beside the decision of one opening. */
    fold: page.getByRole('region', { name: 'Review', exact: true }),
    show: (state: string) => page.getByRole('combobox', { name: 'Show' }).selectOption({ label: state }),
    /** With the keyboard alone, from the fold of the opening to the button that signs. */
    sign: async (mark: string, name: string) => {
      const fold = entry(mark).getByText('Review', { exact: true });
      await fold.focus();
      await page.keyboard.press('Enter');
      await entry(mark).getByRole('radio').first().waitFor();
      await page.keyboard.press('Tab');
      await page.keyboard.press('Space');
      await entry(mark).getByRole('textbox', { name: 'By (name)' }).fill(name);
      await entry(mark).getByRole('textbox', { name: 'Role' }).fill('Plan reviewer');
      await entry(mark).getByRole('button', { name: 'File the verdict' }).focus();
      await page.keyboard.press('Enter');
    },
    /** Follows the mark to the opening itself. */
    goTo: (mark: string) => entry(mark).getByRole('link', { name: mark, exact: true }).click(),
    changes: (mark: string) => entry(mark).getByRole('list', { name: 'Changed since' }),
    /** How far the page is wider than the screen. */
    overflow: () =>
      page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  };
}
