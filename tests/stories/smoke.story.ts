import { expect, test } from 'playwright/test';

test('somebody who opens the app sees its name in the window title', async ({ page }) => {
  await page.goto('');
  await expect(page).toHaveTitle(/Latchward/);
});
