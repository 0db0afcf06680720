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
  await expect(review.entry('P04')).toContainText('Must be signed before issue');
  await review.sign('P04', 'J. Reviewer');
  await expect(review.entry('P04')).toContainText('Approved by J. Reviewer');

  await review.goTo('P04');
  const opening = openingPage(page);
  await opening.group('Fire and smoke');
  await opening.type('Fire rating of the door', '90');
  await expect(review.fold).toContainText('Stale');

  await review.open();
  await review.show('Stale: changed since it was reviewed');
  await expect(review.changes('P04')).toContainText('Fire rating of the door: was 180 min, is 90 min.');
});

test('a reviewer reads the register on a small phone', async ({ context }) => {
  const { page } = await newWindow(context);
  await page.setViewportSize({ width: 320, height: 640 });
  const review = reviewPage(page);
  await review.open();
  await review.sign('P04', 'J. Reviewer');
  await expect(review.entry('P04')).toContainText('Approved by J. Reviewer');
  expect(await review.overflow()).toBeLessThanOrEqual(0);
});
