import type { Page } from 'playwright/test';

/** The page of the whole project: names, code basis, building, floors, spaces. */
export function projectPage(page: Page) {
  const main = page.getByRole('main');
  return {
    open: async () => {
      await page.goto('#/project');
      await main.getByRole('heading', { level: 2, name: 'Code basis' }).waitFor();
    },
    chooseEdition: async (book: string, edition: string) =>
      main
        .getByRole('region', { name: 'Code basis', exact: true })
        .getByRole('combobox', { name: book, exact: true })
        .selectOption({ label: edition }),
    basisMeans: main.getByRole('region', { name: 'Code basis' }).getByRole('status'),
    part: (name: string) => main.getByRole('region', { name, exact: true }),
  };
}
