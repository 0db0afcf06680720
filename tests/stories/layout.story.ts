import { expect, type Page, test as alone } from 'playwright/test';
import { layoutFaults, openFolds, smallTargets, tooWide, unseenFocus } from './pages/layout.ts';
import { lookAt, test } from './pages/reader.ts';

const pages = [
  'schedule',
  'opening/opening-103',
  'opening/opening-s2-p',
  'walk/opening-103',
  'plan',
  'building/space-daycare',
  'review',
  'pricing',
  'power',
  'print',
  'project',
  'rules/R-31',
  'files',
  'legend',
];

async function expectGoodLayout(page: Page, address: string, widths: readonly number[]) {
  test.setTimeout(90_000);
  await lookAt(page, address);
  // What is out of sight may be a box of guessed height, over which its lines would hang.
  const style = await page.addStyleTag({ content: '* { content-visibility: visible !important; }' });
  for (const width of widths) {
    await page.setViewportSize({ width, height: 900 });
    await openFolds(page);
    // Rows are measured anew after the window changed; what is cut off then stays cut off.
    await expect.poll(() => layoutFaults(page), { message: `${width} px`, timeout: 10_000 }).toEqual([]);
    expect(await tooWide(page), `${width} px`).toBeLessThanOrEqual(0);
  }
  await style.evaluate((element) => (element as HTMLElement).remove());
}

/** Each kind of control: a grid, large buttons, a form, boxes to tick. */
const focusAlways = ['schedule', 'walk/opening-103', 'project', 'print'];

for (const address of pages) {
  test(`no words are cut off or overlap, nothing is wider than the window: ${address}`, async ({ page }) => {
    await expectGoodLayout(page, address, [320, 1440]);
  });
  // 720 px is a desk of 1440 px at a zoom of 200 %.
  test(`the same in windows between a phone and a desk: ${address}`, { tag: '@long' }, async ({ page }) => {
    await expectGoodLayout(page, address, [720, 768]);
  });

  test(`the focus is always to be seen: ${address}`, {
    tag: focusAlways.includes(address) ? [] : '@long',
  }, async ({ page }) => {
    await lookAt(page, address);
    expect(await unseenFocus(page, 40)).toEqual([]);
  });
}

for (const width of [320, 390]) {
  alone(`everything on the walk is as large as a thumb, ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 });
    await page.goto('#/walk/opening-103');
    await page.getByRole('button', { name: 'Skip the tour' }).click();
    await page.getByRole('button', { name: /^Menu/ }).click();
    for (const fold of await page.locator('main details > summary').all()) await fold.click();
    expect(await smallTargets(page)).toEqual([]);
  });
}

alone('the longest mark stands in full on schedule and walk', async ({ page }) => {
  const mark = 'EAST-WING-BASEMENT-GENERATOR-ROOM-0017-A';
  await page.goto('#/schedule');
  await page.getByRole('button', { name: 'New opening' }).click();
  await page.getByRole('textbox', { name: 'Mark', exact: true }).fill(mark);
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: mark })).toBeVisible();
  for (const width of [320, 1440]) {
    await page.setViewportSize({ width, height: 844 });
    await page.getByRole('link', { name: /Latchward/ }).click();
    await page.getByRole('searchbox', { name: 'Find in every field' }).fill(mark);
    await expect(page.getByRole('gridcell', { name: mark })).toBeVisible();
    expect(await layoutFaults(page)).toEqual([]);
    await page.getByRole('gridcell', { name: mark }).click();
    await page.getByRole('link', { name: 'Walk from here' }).click();
    await expect(page.getByRole('heading', { level: 1, name: mark })).toBeVisible();
    expect(await layoutFaults(page)).toEqual([]);
  }
});
