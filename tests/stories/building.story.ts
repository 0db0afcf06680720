import { expect } from 'playwright/test';
import { lookAt, test } from './pages/reader.ts';

test('a reviewer finds the room that opens when the mains fail, and how to close it', async ({ page }) => {
  await lookAt(page, 'building');
  await expect(page.getByRole('heading', { name: 'The building as a whole' })).toBeVisible();
  await page.getByRole('radio', { name: /^Battery exhausted/ }).check();
  const finding = page.getByRole('listitem').filter({ hasText: /^\W*Serious\s*Records room/ });
  await expect(finding).toContainText(/batter(y|ies) run down/);
  await finding.getByText('What would resolve it').click();
  await expect(finding.getByText(/^106: /)).toContainText('stays locked here');
  await finding.getByRole('link', { name: '106' }).click();
  await expect(page).toHaveURL(/#\/opening\/opening-106/);
});

test('a reviewer follows a rule along the way out from the building to its openings and to the register', async ({
  page,
}) => {
  await lookAt(page, 'building');
  const finding = page.getByRole('listitem').filter({ hasText: 'released together from one place' });
  await expect(finding).toContainText('Severe');
  await expect(finding.getByRole('link', { name: 'R-55' })).toBeVisible();
  const inDrawing = page.getByRole('link', { name: /^S2-5, .* and / }).first();
  await expect(inDrawing).toBeVisible({ timeout: 20_000 });
  await finding.getByRole('button', { name: 'Show in the drawing' }).click();
  await expect(inDrawing).toHaveClass(/floor-marked/);
  await finding.getByRole('link', { name: 'S2-5', exact: true }).click();
  const wayOut = page.getByRole('region', { name: 'Along the egress path' });
  await expect(wayOut).toContainText('released together from one place');
  await wayOut.getByRole('link', { name: 'S2-P', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'S2-P' })).toBeVisible();
  await expect(wayOut.getByRole('link', { name: 'S2-5', exact: true })).toBeVisible();

  await lookAt(page, 'review');
  await expect(page.getByRole('main')).toContainText('released together from one place');
});

test('the drawing comes floor by floor, and every opening in it is a link', async ({ page }) => {
  await lookAt(page, 'building');
  const floor = page.getByRole('region', { name: 'Drawing of Ground floor' });
  await expect(floor.getByRole('link', { name: /^106, Main lobby and Records room/ })).toBeVisible({
    timeout: 20_000,
  });
});

test('whoever cannot see the drawing reads the same in a table', async ({ page }) => {
  await lookAt(page, 'building');
  await page.getByText(/^Ground floor as tables/).click();
  await expect(page.getByRole('row', { name: /^106 Main lobby Records room.* Locked Free/ })).toBeVisible();
});

test('nothing hangs over the edge of a narrow phone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await lookAt(page, 'building');
  await expect(page.getByRole('heading', { name: 'The building as a whole' })).toBeVisible();
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
});
