import { expect, type Page, test } from 'playwright/test';

/** A surveyor with a phone in a corridor. */
test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, actionTimeout: 15_000 });

async function walkFrom(page: Page, openingId: string) {
  await page.goto(`#/walk/${openingId}`);
  await page.getByRole('button', { name: 'Skip the tour' }).tap();
}

async function begin(page: Page, mark: string, like: string) {
  await page.getByRole('button', { name: 'New opening', exact: true }).tap();
  await page.getByRole('combobox', { name: 'Facts' }).selectOption({ label: like });
  await page.getByRole('textbox', { name: 'Mark' }).fill(mark);
  await page.getByRole('button', { name: 'Add', exact: true }).tap();
  await expect(page.getByRole('heading', { level: 1, name: mark, exact: true })).toBeVisible();
}

const question = (page: Page) => page.getByRole('region', { name: 'Next question' });

test('the next door is the same as the last: what is assumed is shown whole, and its label is looked at apart', async ({
  page,
}) => {
  await walkFrom(page, 'opening-103');
  await begin(page, 'ZZ-SAME', 'Same as 103');
  const assumed = page.getByRole('region', { name: 'Assumed facts' });
  await expect(assumed).toContainText('Face');
  await assumed.getByRole('button', { name: 'All of it is so here' }).tap();
  await expect(assumed.getByText('Label and preparation: looked at here?')).toBeVisible();
  await assumed.getByRole('button', { name: 'Looked at: the same here' }).tap();
  await expect(assumed).toHaveCount(0);
  await expect(page.getByText('assumed: same as 103')).toHaveCount(0);
});

test('any door is the template: found by mark, what differs is answered there, mark and floor are asked', async ({
  page,
}) => {
  await walkFrom(page, 'opening-103');
  await page.getByRole('button', { name: 'Same as another door, but …' }).tap();
  await page.getByRole('searchbox', { name: 'Find by mark' }).fill('201');
  await page.getByRole('button', { name: /^201 / }).tap();
  const add = page.getByRole('button', { name: /^Add .*, the same as 201$/ });
  const proposed = await page.getByRole('textbox', { name: 'Mark', exact: true }).inputValue();
  await expect(add).toBeEnabled();
  await page.getByRole('textbox', { name: 'Mark', exact: true }).fill('299');
  await expect(page.getByText('Other marks like 299 are on “Second floor”')).toBeVisible();
  await expect(add).toBeDisabled();
  await page.getByRole('button', { name: `Mark it ${proposed}` }).tap();
  await add.tap();
  await expect(page.getByRole('heading', { level: 1, name: proposed, exact: true })).toBeVisible();
  const but = page.getByRole('region', { name: 'Same as 201, but …' });
  await expect(but.getByRole('listitem')).toHaveCount(4);
  await but.getByRole('button', { name: 'Reader: No reader' }).tap();
  await expect(but.getByRole('listitem').filter({ hasText: 'seen here' })).toHaveCount(1);
  await expect(but.getByRole('listitem')).toHaveCount(4);
  const assumed = page.getByRole('region', { name: 'Assumed facts' });
  await expect(assumed.getByText('Label and preparation: looked at here?')).toBeVisible();
});

test('one answer leads to the next question, is shown, and can be taken back or corrected', async ({
  page,
}) => {
  await walkFrom(page, 'opening-103');
  await begin(page, 'ZZ-WALK', 'Start empty');
  const heading = question(page).getByRole('heading');
  await expect(heading).toHaveText('What is wanted here?');
  await question(page).getByRole('button', { name: 'Controlled', exact: true }).tap();
  await question(page)
    .getByRole('button', { name: /^Reader outside, locked at all hours/ })
    .tap();
  await question(page)
    .getByRole('button', { name: /^None of these/ })
    .tap();
  await expect(heading).toHaveText('How does it open?');
  await question(page).getByRole('button', { name: 'Single swinging leaf' }).tap();
  await expect(heading).not.toHaveText('How does it open?');
  await expect(heading).toBeFocused();
  await expect(heading).toBeInViewport();
  await expect(page.getByText('6 answers so far')).toBeVisible();

  await page.getByRole('button', { name: 'Undo: ZZ-WALK: Door type' }).tap();
  await expect(page.getByText('Undone: ZZ-WALK: Door type.')).toBeVisible();
  await expect(heading).toHaveText('How does it open?');
  await expect(page.getByText('5 answers so far')).toBeVisible();

  await question(page).getByRole('searchbox', { name: 'Find in the list' }).fill('pair');
  await question(page).getByRole('button', { name: 'Pair of leaves' }).tap();
  await page.getByRole('button', { name: 'Change Door type' }).tap();
  await expect(question(page).getByRole('button', { name: 'Pair of leaves' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await question(page).getByRole('button', { name: 'Single swinging leaf' }).tap();
  await expect(page.getByText('Single swinging leaf')).toBeVisible();
});

test('who cannot tell is not asked again, and the answer is listed as missing', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await begin(page, 'ZZ-TELL', 'Start empty');
  await question(page).getByRole('button', { name: 'Controlled', exact: true }).tap();
  await question(page)
    .getByRole('button', { name: /^None of these/ })
    .tap();
  const asked = (await question(page).getByRole('heading').textContent()) ?? '';
  await question(page).getByRole('button', { name: 'I can’t tell' }).tap();
  await expect(question(page).getByRole('heading')).not.toHaveText(asked);
  await expect(page.getByText('Not known', { exact: true })).toBeVisible();
});

test('a wrong width is put right in feet and inches or in millimeters', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await page.getByText(/^Earlier answers/).tap();
  await page.getByRole('button', { name: 'Change Leaf width' }).tap();
  const width = question(page).getByRole('textbox', { name: /How wide is the leaf/ });
  await width.fill('3 or so');
  await question(page).getByRole('button', { name: 'Answer' }).tap();
  await expect(question(page).getByRole('alert')).toContainText('“3 or so” is not a length');
  await expect(width).toHaveValue('3 or so');
  await width.fill('915 mm');
  await expect(question(page).getByText('3\'-0" · 915 mm')).toBeVisible();
  await question(page).getByRole('button', { name: 'Answer' }).tap();
  await expect(page.getByText('36.02 in (3\'-0" · 915 mm)')).toBeVisible();
});

test('why an opening is refused stands above the question, with the way to the answer', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await page.getByText(/^Earlier answers/).tap();
  await page.getByRole('button', { name: 'Change Fire rating of the door' }).tap();
  await question(page).getByRole('textbox').fill('90');
  await question(page).getByRole('button', { name: 'Answer' }).tap();
  const why = page.getByRole('region', { name: 'Contradictions' });
  await expect(why).toBeVisible();
  await expect(page.locator('.thumb-bar').getByText('Refused')).toBeVisible();
  await why.getByRole('button', { name: 'Answer again: Fire rating of the door' }).first().tap();
  await question(page).getByRole('textbox').fill('0');
  await question(page).getByRole('button', { name: 'Answer' }).tap();
  await expect(why).toHaveCount(0);
});

test('a note is kept, and the bar leads from door to door', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  const notes = page.getByRole('textbox', { name: 'Notes' });
  await page.getByRole('button', { name: 'Note', exact: true }).tap();
  await expect(notes).toBeFocused();
  await expect(notes).toBeInViewport({ ratio: 1 });
  const low = (await notes.boundingBox())?.height ?? 0;
  await notes.fill('Closer leaks oil.\nHinge side bent.\nAsk for the key to 105.\nLabel behind paint.');
  expect((await notes.boundingBox())?.height).toBeGreaterThan(low * 1.5);
  await notes.fill('Closer leaks oil.');
  await page.getByRole('link', { name: '104 →' }).tap();
  const mark = page.getByRole('heading', { level: 1, name: '104', exact: true });
  await expect(mark).toBeInViewport();
  await expect(mark).toBeFocused();
  await page.getByRole('link', { name: '← 103' }).tap();
  await expect(page.getByRole('textbox', { name: 'Notes' })).toHaveValue('Closer leaks oil.');
});

test('the place of an opening is stated on the walk, and the next one begins on its floor', async ({
  page,
}) => {
  await walkFrom(page, 'opening-103');
  await begin(page, 'ZZ-PLACE', 'Start empty');
  await page.getByText('Ground floor', { exact: true }).first().tap();
  await page.getByRole('combobox', { name: 'Egress side' }).selectOption({ label: 'Café' });
  await expect(page.getByText('Ground floor · Café')).toBeVisible();
  await page.getByRole('button', { name: 'Undo: ZZ-PLACE: place' }).tap();
  await expect(page.getByText('Ground floor · Café')).toHaveCount(0);
});

test('a rating is answered by one press, and taken again from the list of answers', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await page.getByText(/^Earlier answers/).tap();
  await page.getByRole('button', { name: 'Change Fire rating of the door' }).tap();
  await expect(question(page).getByRole('button', { name: 'None, 0 min', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await question(page).getByRole('button', { name: '20 MIN, 20 min', exact: true }).tap();
  await expect(page.getByText('Fire rating of the door 20 min')).toBeVisible();
});

test('an answer that has the opening refused shows why, not only the next question', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await page.getByText(/^Earlier answers/).tap();
  await page.getByRole('button', { name: 'Change Fire rating of the door' }).tap();
  await expect(question(page).getByRole('button', { name: '3 HR, 180 min', exact: true })).toBeVisible();
  // As it stands on a phone after a few answers: the question at the top edge, the rest above it.
  await question(page).evaluate((element) => element.scrollIntoView({ block: 'start' }));
  await question(page).getByRole('button', { name: '3 HR, 180 min', exact: true }).tap();
  await expect(page.getByRole('status').getByText('Refused')).toBeVisible();
  const why = page.getByRole('region', { name: 'Contradictions' }).getByRole('paragraph').first();
  await expect(why).toBeInViewport({ ratio: 1 });
});

test('taking back a new opening leads to the one before it, and says so', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await begin(page, 'ZZ-GONE', 'Start empty');
  await page.getByRole('button', { name: 'Undo: New opening ZZ-GONE' }).tap();
  await expect(page.getByText('Undone: New opening ZZ-GONE.')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1, name: 'ZZ-GONE' })).toHaveCount(0);
  await expect(page.locator('.thumb-bar')).toBeVisible();
});

test('a room is made at the door by its number', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await page.locator('.walk-place summary').tap();
  await page.getByRole('textbox', { name: 'Room behind the door, by name or number' }).fill('Room 114');
  await page.getByRole('button', { name: 'Add: Room behind the door, by name or number' }).tap();
  await expect(page.locator('.walk-place summary')).toContainText('Room 114');
});

test('before leaving the floor its doors are listed by what is left of them', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await page.getByText('Before you leave the floor').tap();
  await expect(page.getByRole('region', { name: 'Done' }).getByRole('listitem').first()).toBeVisible();
  await expect(page.getByRole('region', { name: 'Locks to report today' })).toBeVisible();
});

test('a mark of forty signs breaks neither the bar nor the page', async ({ page }) => {
  await walkFrom(page, 'opening-103');
  await begin(page, '103-THIS-MARK-IS-FORTY-SIGNS-LONG-X-X-XX', 'Start empty');
  const bar = await page.locator('.thumb-bar').boundingBox();
  expect(bar?.height).toBeLessThan(150);
  await page.getByRole('link', { name: /^←/ }).tap();
  expect((await page.locator('.thumb-bar').boundingBox())?.height).toBeLessThan(150);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});
