import { expect, test } from 'playwright/test';
import { filesPage } from './pages/files.ts';
import { newWindow } from './pages/window.ts';

/** Two rows cannot come in: a mark that stands twice, and one that is missing. */
const schedule = [
  `Door No.\tLevel\tRoom\tWidth\tHeight\tFire Rating\tFinish`,
  `ZZ-901\tAnnex\tOffice\t3'-0"\t7'-0"\t20 MIN\tPT-1`,
  `ZZ-902\tAnnex\tOffice\t36 in\t84 in\tB\tPT-1`,
  `ZZ-901\tAnnex\tOffice\t36 in\t84 in\tnone\tPT-1`,
  `\tAnnex\tOffice\t36 in\t84 in\tnone\tPT-1`,
];

test('an estimator imports a schedule, sees its two bad rows by name, and undoes the whole of it', async ({
  context,
}) => {
  const window = await newWindow(context);
  const files = filesPage(window.page);
  await files.open();
  await files.paste(schedule);
  await expect(files.preview).toContainText('2 openings, 1 new floor');
  await expect(files.preview).toContainText('Mark ZZ-901 stands in row 2 and again in row 4');
  await expect(files.preview).toContainText('Row 5');
  await expect(files.column('Width')).toContainText('known');
  await expect(files.column('Fire Rating')).toContainText('not taken');
  await expect(files.column('Finish')).toContainText('unused');
  await expect(files.bringIn).toBeDisabled();

  await files.goodRowsOnly.check();
  await files.bringIn.click();
  await expect(files.section).toContainText('2 openings imported');
  await window.find('ZZ-90');
  await expect(window.row('ZZ-901')).toBeVisible();
  await expect(window.row('ZZ-902')).toBeVisible();

  await window.page.getByRole('button', { name: 'Undo' }).click();
  await expect(window.row('ZZ-901')).toHaveCount(0);
  await expect(window.row('ZZ-902')).toHaveCount(0);
});

test('a row whose mark is in the project is held against it, and what was entered here stays', async ({
  context,
}) => {
  const window = await newWindow(context);
  await window.addOpening('ZZ-903');
  const files = filesPage(window.page);
  await files.open();
  await files.paste(['Door No.,Width', 'ZZ-903,36 in']);
  await expect(files.preview).toContainText('0 openings added, 1 changed, 0 the same');
  await files.bringIn.click();
  await expect(files.section).toContainText('1 opening of the file brought into the project');
});

test('a file that is no project is refused in a sentence and nothing changes', async ({ context }) => {
  const { page } = await newWindow(context);
  await filesPage(page).open();
  const part = page.getByRole('region', { name: 'Project file' });
  await part
    .getByLabel('Project file', { exact: true })
    .setInputFiles({ name: 'list.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
  await expect(part.getByRole('alert')).toContainText('not a Latchward project file');
});

test('removing a project asks by its name first, and a backup brings it back', async ({ context }) => {
  const { page } = await newWindow(context);
  await filesPage(page).open();
  const projects = page.getByRole('region', { name: 'Projects in this browser' });
  await projects.getByRole('textbox', { name: 'New project' }).fill('Annex');
  await projects.getByRole('button', { name: 'Start' }).click();
  // Its code basis, floors and spaces come first.
  await expect(page.getByRole('heading', { level: 1, name: 'Annex' })).toBeVisible();
  await expect(page.getByRole('region', { name: 'Code basis' })).toBeVisible();
  await filesPage(page).open();
  await projects.getByRole('button', { name: 'Open Demo building' }).click();
  await projects.getByRole('button', { name: /^Remove Annex/ }).click();
  await expect(projects).toContainText('Remove Annex from this browser?');
  await projects.getByRole('button', { name: 'Remove Annex', exact: true }).click();
  await expect(projects.getByRole('rowheader', { name: 'Annex' })).toHaveCount(0);
  const backups = page.getByRole('region', { name: 'Backups' });
  await backups.getByRole('button', { name: /^Restore Annex/ }).click();
  await backups.getByRole('button', { name: 'Restore Annex', exact: true }).click();
  await expect(projects.getByRole('rowheader', { name: 'Annex' })).toBeVisible();
});

test('before a device is handed on, a project is erased with everything that was kept of it', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  await filesPage(page).open();
  const projects = page.getByRole('region', { name: 'Projects in this browser' });
  await projects.getByRole('textbox', { name: 'New project' }).fill('Annex');
  await projects.getByRole('button', { name: 'Start' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Annex' })).toBeVisible();
  await filesPage(page).open();
  await projects.getByRole('button', { name: 'Open Demo building' }).click();
  await projects.getByRole('button', { name: /^Remove Annex/ }).click();
  await projects.getByRole('button', { name: 'Remove Annex', exact: true }).click();
  const backups = page.getByRole('region', { name: 'Backups' });
  await backups.getByRole('button', { name: /^Erase for good Annex/ }).click();
  await backups.getByRole('button', { name: 'Erase Annex', exact: true }).click();
  await expect(backups.getByRole('rowheader', { name: 'Annex' })).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expect(page.getByText('Annex')).toHaveCount(0);
});
