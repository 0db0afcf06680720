import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from 'playwright/test';
import { printPage } from './pages/print.ts';
import { readPdf } from './pages/pdf.ts';
import { newWindow } from './pages/window.ts';

test.setTimeout(150_000);

/** A print without the moment in which it was made, which every printer writes into it. */
async function printed(page: Page): Promise<string> {
  const bytes = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  return bytes.toString('latin1').replace(/\/(CreationDate|ModDate) ?\([^)]*\)/g, '');
}

test('an estimator issues an edition, the building goes on, and the edition prints byte for byte as it was issued', async ({
  context,
}) => {
  const window = await newWindow(context);
  const { page } = window;
  const print = printPage(page);
  await print.open();
  await print.choose('Cover', 'Quantities');
  const editions = page.getByRole('region', { name: 'Editions' });
  await editions.getByLabel('Number').fill('1');
  await editions.getByLabel('Issued for').fill('bid');
  await editions.getByRole('button', { name: 'Issue this edition' }).click();
  await expect(editions).toContainText('Edition 1 is issued and frozen');
  await expect(page.getByRole('region', { name: 'Set numbers' })).toContainText('Set numbers are fixed');
  await editions.getByRole('button', { name: /^Print as issued/ }).click();
  await expect(editions).toContainText('The preview shows edition 1 as it was issued.');
  await print.print();
  const first = await printed(page);
  const pages = await readPdf(Buffer.from(first, 'latin1'));
  for (const one of pages) expect(one.text).toContain('Edition 1');
  expect(pages[0]?.text).toMatch(/1, [A-Z][a-z]+ \d+, \d{4}, for bid/);
  expect(pages[0]?.text).toContain('Issued, preliminary');

  await window.addOpening('A00');
  await expect(window.saving).toContainText('Saved');
  await print.open();
  await print.choose('Cover', 'Quantities');
  await print.print();
  expect(await printed(page)).not.toBe(first);
  await editions.getByRole('button', { name: /^Print as issued/ }).click();
  await expect(editions).toContainText('The preview shows edition 1 as it was issued.');
  await print.print();
  expect(await printed(page)).toBe(first);

  await editions.getByRole('button', { name: 'Show today again' }).click();
  await editions.getByRole('button', { name: 'Put the addendum among the sheets' }).click();
  await expect(editions).toContainText('1 opening');
  await print.choose('Addendum');
  const [addendum, ...others] = await print.print();
  expect(others).toEqual([]);
  expect(addendum?.text).toContain('Addendum: edition 1 to today');
  expect(addendum?.text).toMatch(/A00 Added/);
  expect(addendum?.text).not.toMatch(/\b101\b/);
});

test('an estimator names a set, and a number that another set has is refused at the field', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  await printPage(page).open();
  const numbers = page.getByRole('region', { name: 'Set numbers' });
  await numbers.getByRole('button', { name: 'Fix set numbers' }).click();
  await numbers.getByText('Rename sets').click();
  const number = numbers.getByRole('textbox', { name: 'Number of HS-01' });
  await number.fill('HS-02');
  await number.press('Enter');
  await expect(numbers).toContainText('HS-02 is the number of another set, or was.');
  await number.fill('A-1');
  await number.press('Enter');
  await expect(numbers.getByRole('textbox', { name: 'Number of A-1' })).toHaveValue('A-1');
  const name = numbers.getByRole('textbox', { name: 'Name of A-1' });
  await name.fill('Garage stairs');
  await name.press('Enter');
  await expect(page.getByRole('region', { name: 'Hardware sets' })).toContainText('Garage stairs');
});

test('an estimator sees what is priced, what is missing, and who entered the prices', async ({ context }) => {
  const { page } = await newWindow(context);
  await page.goto('#/bill');
  await expect(page).toHaveURL(/#\/(bill|pricing)$/);
  await expect(page.getByRole('heading', { name: 'Pricing', exact: true })).toBeVisible();
  await expect(page.getByRole('region', { name: 'Prices' })).toContainText(/7 of \d+ missing/);
  const table = page.getByRole('region', { name: 'What is priced' });
  await expect(table).toContainText('Prices entered by: Invented for the demo.');
  await expect(table).toContainText(/Labor, locksmith/);
  await page.getByRole('button', { name: 'Look for alternates that cost less' }).click();
  await expect(table).toContainText(/Alternates, and what each saves.*in place of/s);
  const file = JSON.parse(
    await readFile(new URL('../../demo-data/demo-building.json', import.meta.url), 'utf8'),
  ) as { project: { prices: Record<string, { by?: string }> } };
  for (const price of Object.values(file.project.prices)) expect(price.by).toBe('Invented for the demo');
});
