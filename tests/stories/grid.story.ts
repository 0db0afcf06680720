import { expect, test } from 'playwright/test';

test('an office pastes from a spreadsheet, sees the bad cells by name, and undoes it in one step', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('#/schedule');
  await page.getByRole('button', { name: 'Skip the tour' }).click();
  const cell = (mark: string, column: string) =>
    page
      .getByRole('row')
      .filter({ has: page.getByRole('gridcell', { name: mark, exact: true }) })
      .locator(`[data-column="${column}"]`);
  const latches = () => Promise.all(['P02', 'P03', 'P04'].map((mark) => cell(mark, 'latch').textContent()));
  await cell('P02', 'latch').click();
  const before = await latches();

  // As it comes from a spreadsheet: the latch, the label in words of its own, and one column that is not the grid’s.
  await page.evaluate(() =>
    navigator.clipboard.writeText('Mortise latch\t3/4 HR\r\nglue\t36 in\r\n"Rim exit device"\tNR\r\n'),
  );
  await page.keyboard.press('Control+v');
  const dialog = page.getByRole('dialog', { name: 'Paste: look before it is applied' });
  await expect(dialog.getByRole('row', { name: /^P03 Latch .* glue Refused: / })).toBeVisible();
  await expect(dialog.getByRole('row', { name: /^P03 Label .* 36 in Refused: / })).toBeVisible();
  await expect(dialog.getByRole('row', { name: /^P02 Label .* 3\/4 HR Changes to 45 min/ })).toBeVisible();
  expect(await latches()).toEqual(before);
  await page.keyboard.press('Enter');
  await expect(dialog).toBeHidden();
  await expect(cell('P04', 'latch')).toHaveText('Rim exit device');
  expect((await latches())[1]).toBe(before[1]);

  // What was pasted goes back to the spreadsheet as it reads.
  await cell('P02', 'latch').click();
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Control+c');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toMatch(/^Mortise latch\t45 min\r?\n$/);

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(cell('P04', 'latch')).toHaveText(before[2] ?? '');
  expect(await latches()).toEqual(before);
});

test('an office sorts, groups and narrows the schedule, saves the view and finds it again after a reload', async ({
  page,
}) => {
  await page.goto('#/schedule');
  await page.getByRole('button', { name: 'Skip the tour' }).click();
  await page.getByRole('columnheader', { name: 'Load' }).getByRole('button').click();
  await expect(page.getByRole('columnheader', { name: 'Load' })).toHaveAttribute('aria-sort', 'ascending');
  await page.getByText('Order and groups').click();
  await page.getByLabel('Group by').selectOption('State');
  await page.getByText('Filter by value').click();
  await page.getByRole('checkbox', { name: /^Provisional/ }).check();
  await page.getByRole('checkbox', { name: /^Refused/ }).check();
  const heads = page.getByRole('gridcell').getByRole('button', { expanded: true });
  await expect(page.getByText('8 of 108 openings: only some values are shown of State.')).toBeVisible();
  await expect(heads).toHaveText([/Provisional.*openings/, /Refused.*1 opening/]);
  await page.getByText('Columns', { exact: true }).click();
  await page.getByLabel('Add a column').selectOption('Set');
  await page.getByText('Saved views').click();
  await page.getByLabel('Name of this view').fill('To be called about');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'View as at first' }).click();
  await expect(heads).toHaveCount(0);

  await page.reload();
  await page.getByText('Saved views').click();
  await page.getByRole('button', { name: 'To be called about', exact: true }).click();
  await expect(heads).toHaveCount(2);
  await expect(page.getByRole('columnheader', { name: 'Set', exact: true })).toBeAttached();
  await heads.first().click();
  await expect(heads).toHaveCount(1);
});
