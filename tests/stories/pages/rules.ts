import type { Page } from 'playwright/test';

/** The manual. */
export function rulesPage(page: Page) {
  const rule = (title: string) =>
    page.getByRole('article').filter({ has: page.getByRole('heading', { level: 3, name: title }) });
  return {
    rule,
    search: async (text: string) => page.getByRole('searchbox', { name: 'Search' }).fill(text),
    found: (title: string) => page.getByRole('link', { name: title }),
    firedAt: (title: string, mark: string) => rule(title).getByRole('link', { name: mark, exact: true }),
  };
}
