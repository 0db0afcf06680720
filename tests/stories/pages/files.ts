import type { Page } from 'playwright/test';

/** The page of files: what goes in and out. */
export function filesPage(page: Page) {
  const section = page.getByRole('region', { name: 'Import a door schedule' });
  const preview = page.getByRole('region', { name: 'Preview of pasted rows' });
  return {
    preview,
    section,
    open: async () => {
      await page.goto('#/files');
      await section.waitFor();
    },
    paste: async (rows: readonly string[]) => {
      await section.getByRole('textbox', { name: 'Or paste rows with their heading' }).fill(rows.join('\n'));
      await section.getByRole('button', { name: 'Check these rows' }).click();
    },
    column: (name: string) => preview.getByRole('row').filter({ has: page.getByRole('rowheader', { name }) }),
    bringIn: preview.getByRole('button', { name: /^Import/ }),
    goodRowsOnly: preview.getByRole('checkbox', { name: /valid rows/ }),
  };
}

/** Chooses a project file, as a person does in the dialog of the browser. */
export async function openFile(page: Page, path: string) {
  const section = page.getByRole('region', { name: 'Project file', exact: true });
  await section.getByLabel('Project file').setInputFiles(path);
}
