import { expect, test } from 'playwright/test';
import { openingPage } from './pages/opening.ts';
import { reviewPage } from './pages/review.ts';
import { newWindow } from './pages/window.ts';

test('a reviewer signs an opening and the mark turns stale when a fact it relied on changes', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  const review = reviewPage(page);
  await review.open();
  await review.show('Waits for a reviewer');
  await expect(review.entry('213')).toContainText('Must be signed before issue');
  await review.sign('213', 'J. Reviewer');
  await expect(review.entry('213')).toContainText(/Approved[\s\S]*J\. Reviewer/i);

  await review.goTo('213');
  const opening = openingPage(page);
  await opening.group('Fire and smoke');
  await opening.type('Fire rating of the door', '180');
  await expect(review.fold).toContainText('Stale');

  await review.open();
  await review.show('Stale: changed since it was reviewed');
  await expect(review.changes('213')).toContainText(/Fire rating of the door/);
});

test('a reviewer reads the register on a small phone', async ({ context }) => {
  const { page } = await newWindow(context);
  await page.setViewportSize({ width: 320, height: 640 });
  const review = reviewPage(page);
  await review.open();
  await review.sign('213', 'J. Reviewer');
  await expect(review.entry('213')).toContainText(/Approved[\s\S]*J\. Reviewer/i);
  expect(await review.overflow()).toBeLessThanOrEqual(0);
});
