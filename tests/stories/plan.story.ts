import { expect, type Page, test } from 'playwright/test';

test.use({ serviceWorkers: 'allow' });

/** A drawing of two pages; the second shows a floor of 100 ft in a frame. */
async function aPdf(page: Page) {
  const drawing = await page.context().newPage();
  await drawing.setContent(
    '<style>div{break-after:page}svg{width:9in}</style><div>Cover</div><svg viewBox="0 0 900 500"><rect x="50" y="50" width="800" height="400" fill="none" stroke="#000" stroke-width="6"/><path d="M450 50V450M50 250H850" stroke="#000" stroke-width="4"/><text x="60" y="40" font-size="24">GROUND FLOOR</text></svg>',
  );
  const buffer = await drawing.pdf({ width: '11in', height: '8.5in' });
  await drawing.close();
  return { name: 'A-101.pdf', mimeType: 'application/pdf', buffer };
}

async function tap(page: Page, x: number, y: number) {
  const area = page.locator('.plan-tap');
  const box = await area.boundingBox();
  if (!box) throw new Error('nothing to tap');
  await area.click({ position: { x: box.width * x, y: box.height * y } });
}

test('a page of a PDF becomes the plan of a floor without a network: scaled, pinned, walked from and printed', async ({
  page,
  context,
}) => {
  test.setTimeout(150_000);
  const wrong: string[] = [];
  page.on('console', (message) => {
    if (/Content Security Policy|Refused to/i.test(message.text())) wrong.push(message.text());
  });
  const pdf = await aPdf(page);
  await page.goto('');
  await expect(page.getByText('stored on this device')).toBeVisible({ timeout: 60_000 });
  // In the very first window: what was stored serves it without a reload.
  await context.setOffline(true);
  await page.goto('#/plan');
  await page.getByRole('combobox', { name: 'Floor' }).selectOption({ label: 'Ground floor' });
  await page
    .getByLabel('Choose an image or a PDF')
    .setInputFiles({ ...pdf, name: 'torn.pdf', buffer: pdf.buffer.subarray(0, 300) });
  await expect(page.getByRole('alert').filter({ hasText: 'damaged' })).toBeVisible();
  await page.getByLabel('Choose an image or a PDF').setInputFiles(pdf);
  await page.getByRole('combobox', { name: 'Page of the PDF' }).selectOption('2');
  await page.getByRole('button', { name: 'Use this page' }).click();
  await expect(page.getByRole('img', { name: 'Plan of Ground floor' })).toBeVisible();

  await page.getByRole('button', { name: 'Set the scale' }).click();
  await tap(page, 0.2, 0.5);
  await tap(page, 0.8, 0.5);
  await page.getByRole('textbox', { name: 'Length between the two points' }).fill('120 ft');
  await page.getByRole('button', { name: 'Keep the scale' }).click();
  await expect(page.getByText('Scale: 120 ft between the two points')).toBeVisible();

  const place = page.getByRole('combobox', { name: 'Place on the plan' });
  await place.selectOption({ label: '103' });
  await tap(page, 0.4, 0.3);
  await place.selectOption({ label: '101' });
  await page.locator('.plan-tap').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await place.selectOption({ label: 'Leave as is' });
  await expect(page.getByRole('link', { name: /^101, .*: open in the walk$/ })).toBeVisible();
  await page.getByRole('link', { name: /^103, .*: open in the walk$/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: '103', exact: true })).toBeVisible();

  await page.getByRole('link', { name: 'On the plan of this floor' }).click();
  await expect(page.getByRole('link', { name: /^103, .*: open in the walk$/ })).toHaveAttribute(
    'aria-current',
    'location',
  );
  await page.getByRole('link', { name: 'Walk 103' }).first().click();
  await expect(page.getByRole('heading', { level: 1, name: '103', exact: true })).toBeVisible();

  await page.goto('#/print?only=plans');
  const sheet = page.getByRole('article', { name: 'Ground floor' });
  await expect(sheet.getByText('103', { exact: true })).toBeVisible();
  await expect(sheet.locator('img')).toHaveJSProperty('complete', true);
  expect(wrong).toEqual([]);
});
