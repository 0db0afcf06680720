import { readFile } from 'node:fs/promises';
import { expect, test } from 'playwright/test';
import { openingPage } from './pages/opening.ts';
import { reviewPage } from './pages/review.ts';
import { printPage } from './pages/print.ts';
import { newWindow } from './pages/window.ts';

test('a reviewer signs an opening and the mark turns stale when a fact it relied on changes', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  // Read and signed on a small phone.
  await page.setViewportSize({ width: 320, height: 640 });
  const review = reviewPage(page);
  await review.open();
  await review.show('Waits for a reviewer');
  await expect(review.entry('213')).toContainText('Must be signed before issue');
  await review.sign('213', 'J. Reviewer');
  await expect(review.entry('213')).toContainText(/Approved[\s\S]*J\. Reviewer/i);
  expect(await review.overflow()).toBeLessThanOrEqual(0);
  await page.setViewportSize({ width: 1440, height: 900 });

  await review.goTo('213');
  const opening = openingPage(page);
  await opening.group('Fire and smoke');
  await opening.type('Fire rating of the door', '180');
  await expect(review.fold).toContainText('Stale');

  await review.open();
  await review.show('Stale: changed since it was reviewed');
  await expect(review.changes('213')).toContainText(/Fire rating of the door/);
});

test('a reviewer prints the packet for the authority, with the letter as it was edited', async ({
  context,
}) => {
  test.setTimeout(90_000);
  const { page } = await newWindow(context);
  const review = reviewPage(page);
  await review.open();
  await page.getByRole('link', { name: 'Packet for the authority' }).click();
  const letter = page.getByRole('textbox', { name: 'Text of the letter' });
  await letter.fill(`${await letter.inputValue()}\nWe can meet at the building in the week of March 9.`);
  await letter.blur();
  const questions = await page.getByRole('region', { name: /^Question \d+$/ }).count();
  expect(questions).toBeGreaterThan(10);
  const pages = await printPage(page).print();
  const text = pages.map((one) => one.text).join(' ');
  expect(text).toContain('in the week of March 9');
  expect(text.match(/Answer of the authority/g)).toHaveLength(questions);
  expect(text.match(/Proposed answer/g)?.length).toBeGreaterThan(10);
  expect(text).toContain('Question 1. ');
  expect(text).toMatch(/IBC 2021 \d+/);
  expect(text).toContain('Facts relied on');
  expect(text).toContain('Line power lost');
  // Nothing that waits for a name goes out as final, whichever sheet of it is picked up.
  for (const one of pages) expect(one.text).toMatch(/PRELIMINARY: \d+ openings? unsigned/);
  // The letter is part of the project: it is there after a reload, and goes when it is put back.
  await page.reload();
  await expect(letter).toHaveValue(/in the week of March 9/);
  await page.getByRole('button', { name: 'Back to the text offered' }).click();
  await expect(letter).not.toHaveValue(/in the week of March 9/);

  await review.open();
  await page.getByRole('combobox', { name: 'Grouped' }).selectOption({ label: 'By question' });
  const first = page.getByRole('article').first();
  const title = await first.getByRole('heading').innerText();
  await first.getByText(/^Answer for/).click();
  await first.getByRole('link', { name: 'Enter the answer as a local amendment' }).click();
  await expect(page.getByRole('textbox', { name: 'What it requires' })).toHaveValue(`${title}: `);
});

test('a question at an opening is asked, answered and closed, and the history says who did what', async ({
  context,
}) => {
  const window = await newWindow(context);
  const { page } = window;
  await page.setViewportSize({ width: 390, height: 844 });
  const opening = openingPage(page);
  await opening.open('213');
  const remarks = page.getByRole('region', { name: 'Comments and questions' });
  await remarks.getByText(/^Comments and questions/).click();
  await remarks.getByRole('textbox', { name: 'Question' }).fill('Which leaf carries the reader?');
  await remarks.getByRole('button', { name: 'Keep the question' }).click();
  await expect(remarks).toContainText('waits for an answer');
  await remarks.getByRole('textbox', { name: 'Answer' }).fill('The active leaf, on the secure side.');
  await remarks.getByRole('button', { name: 'Keep the answer' }).click();
  await remarks.getByRole('button', { name: 'Close this question' }).click();
  await expect(remarks).toContainText('closed');
  await expect(window.saving).toContainText('Saved');

  await page.reload();
  await expect(remarks).toContainText('none open');
  const history = page.getByRole('region', { name: 'History', exact: true });
  await history.getByText('History of this opening').click();
  await expect(history).toContainText('Question closed: “Which leaf carries the reader?”');
  await expect(history).toContainText('Question answered: “The active leaf, on the secure side.”');

  await page.goto('#/files');
  const whole = page.getByRole('region', { name: 'History', exact: true });
  await expect(whole).toContainText('Opening 213. Question entered: “Which leaf carries the reader?”');
  const saved = page.waitForEvent('download');
  await whole.getByRole('button', { name: 'Save the history as CSV' }).click();
  const text = await readFile(await (await saved).path(), 'utf8');
  expect(text).toContain('When,Who,Openings,What');
  expect(text).toContain('Entry 1 of the log: ');
  const overflow = await reviewPage(page).overflow();
  expect(overflow).toBeLessThanOrEqual(0);
});
