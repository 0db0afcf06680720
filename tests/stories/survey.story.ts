import { expect, test } from 'playwright/test';
import { openingPage } from './pages/opening.ts';
import { lookAt, test as looking } from './pages/reader.ts';
import { newWindow } from './pages/window.ts';

/** An ordinary office door, as a surveyor would answer for it. */
const officeDoor = {
  doorType: 'Single swinging leaf',
  leafMaterial: 'Wood, solid core',
  frameMaterial: 'Hollow metal',
  frameGrouted: 'No',
  latch: 'Mortise latch',
  lockFunction: 'Storeroom (outside always locked)',
  strikePrep: '4-7/8 × 1-1/4 in',
  panicPresent: 'No',
  fireRatingMin: '0',
  wallRatingMin: '0',
  wallKind: 'Ordinary, unrated',
  egressRole: 'Along the egress path of a room or corridor',
  occupantLoad: '6',
  roomUse: 'Office or ordinary room',
  occupancyGroup: 'B',
  readerSides: 'Reader on the secure side',
  securityNeed: 'Medium',
  traffic: 'Medium',
  appearance: 'Standard',
  existingArrangement: 'Lever that always opens from inside',
  operator: 'None',
  powerAtDoor: 'Yes',
  cablePath: 'Yes',
  workStatus: 'Existing, being altered',
  closing: 'Self-closing (closer or spring hinges)',
  holdOpen: 'Not held open',
  suiteDoor: 'Not a suite',
  othersLeaveThroughRoom: 'No',
  exterior: 'No',
  mainDoor: 'No',
  publicEntrance: 'No',
  leafRaceway: 'No',
  clinicalNeed: 'None',
  stairLockWanted: 'Both sides stay open',
  wallConstruction: 'Gypsum on studs',
  frameConduit: 'No',
  latchProjectionIn: '0.75',
  leafThicknessIn: '1.75',
  leafWidthIn: '36',
  leafHeightIn: '84',
  handing: 'RH',
  swingsWithEgress: 'No',
  latchPreload: 'No',
  visionPanel: 'None',
  hinges: 'Butt hinges',
  fireLabel: 'No label',
  egressHardwareHeightIn: '38',
  accessibleRoute: 'Yes',
  exitDirection: 'From the egress side to the secure side',
  headroomIn: '80',
};

test('a surveyor settles an ordinary office door in at most 17 answers', async ({ context }) => {
  const window = await newWindow(context);
  await window.addOpening('ZZ-OFFICE');
  const opening = openingPage(window.page);
  let answers = 0;
  while ((await opening.decision.getByText('Settled', { exact: true }).count()) === 0) {
    expect(await opening.answerNext(officeDoor)).toBe(true);
    answers++;
    // Until the building is checked with the answer, nothing is called settled.
    await expect(opening.decision).not.toContainText('Checking the building');
    expect(answers, 'more answers than anybody gives for an office door').toBeLessThan(30);
  }
  expect(answers).toBeLessThanOrEqual(17);
  await expect(opening.decision).toContainText('Electric strike for a mortise latch, fail secure');
  await expect(opening.decision).toContainText('Free mechanical egress');
  await expect(opening.decision).toContainText('authority having jurisdiction');
});

test('a surveyor who writes a width nobody can read keeps the text and is told why', async ({ context }) => {
  const window = await newWindow(context);
  await window.addOpening('ZZ-WIDTH');
  const opening = openingPage(window.page);
  await opening.type('Leaf width', 'three feet or so');
  await expect(opening.field('Leaf width')).toHaveValue('three feet or so');
  await expect(opening.says(/three feet or so/)).toBeVisible();
  await opening.type('Leaf width', '3\'-0"');
  await expect(opening.field('Leaf width')).toHaveValue('36');
});

test('a rating that the leaf cannot carry refuses a recommendation, at its field', async ({ context }) => {
  const window = await newWindow(context);
  const opening = openingPage(window.page);
  await opening.open('103');
  await opening.group('Fire and smoke');
  await opening.type('Fire rating of the door', '90');
  await expect(opening.decision).toContainText('Refused');
  await expect(opening.says(/its label was not seen/).first()).toBeVisible();
  await window.page.keyboard.press('Escape');
  await window.page.getByRole('button', { name: 'Undo' }).click();
  await expect(opening.decision).toContainText('Settled');
});

looking('an estimator works the schedule by keyboard alone', async ({ page }) => {
  await lookAt(page, 'schedule');
  const first = page.getByRole('gridcell').first();
  await first.focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('End');
  await expect(page.locator(':focus')).toHaveAttribute('data-column', 'notes');
  await page.keyboard.press('ArrowLeft');
  await expect(page.locator(':focus')).toHaveAttribute('data-column', 'securityNeed');
  await page.keyboard.press('F2');
  await page.keyboard.press('Escape');
  await expect(page.locator(':focus')).toHaveAttribute('data-column', 'securityNeed');
  await page.keyboard.press('Control+End');
  await page.keyboard.press('Control+Home');
  await expect(page.locator(':focus')).toHaveAttribute('data-cell', '0-0');
  const mark = (await page.locator(':focus').getByRole('link').textContent()) ?? '';
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: mark, exact: true })).toBeVisible();
});

test('an estimator who chooses otherwise must say why, and a reviewer is asked', async ({ context }) => {
  const window = await newWindow(context);
  const opening = openingPage(window.page);
  await opening.open('103');
  await opening.decision.getByRole('button', { name: 'Choose by hand' }).click();
  const choice = opening.decision.getByRole('combobox', { name: 'What to use instead' });
  await choice.selectOption({ label: 'Electrified mortise lock, fail secure · Free mechanical egress' });
  await opening.decision.getByRole('button', { name: 'Use it' }).click();
  await expect(opening.decision.getByRole('alert')).toContainText('Say why');
  await opening.decision.getByRole('textbox', { name: 'Reason' }).fill('The owner keeps this lock in stock.');
  await opening.decision.getByRole('button', { name: 'Use it' }).click();
  await expect(opening.decision).toContainText('Electrified mortise lock, fail secure');
  await expect(opening.decision).toContainText('Must be signed before issue');
});

looking('an estimator goes from opening to opening by key and stays in the same field', async ({ page }) => {
  const opening = openingPage(page);
  await lookAt(page, 'opening/opening-103');
  await opening.field('Leaf height').focus();
  await page.keyboard.press('Alt+PageDown');
  await expect(page.getByRole('heading', { level: 1, name: '104', exact: true })).toBeVisible();
  await expect(opening.field('Leaf height')).toBeFocused();
  await page.keyboard.press('Alt+PageUp');
  await expect(page.getByRole('heading', { level: 1, name: '103', exact: true })).toBeVisible();
});

test('an estimator takes over one part of another opening, as assumed, and back again', async ({
  context,
}) => {
  const window = await newWindow(context);
  await window.addOpening('ZZ-TAKE');
  const { page } = window;
  await page.getByRole('button', { name: 'Copy facts from …' }).click();
  await page.getByRole('combobox', { name: 'From', exact: true }).selectOption({ label: '103' });
  for (const part of await page.getByRole('group', { name: 'Which parts' }).getByRole('checkbox').all()) {
    await part.uncheck();
  }
  await page.getByRole('checkbox', { name: 'Frame' }).check();
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await expect(page.getByText(/facts were copied from 103/)).toBeVisible();
  const opening = openingPage(page);
  await opening.group('Frame');
  await expect(opening.says('Assumed: same as 103').first()).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(opening.says('Assumed: same as 103')).toHaveCount(0);
});

looking('letters on the schedule find a mark, and help names every key', async ({ page }) => {
  await lookAt(page, 'schedule');
  await page.getByRole('gridcell').first().focus();
  await page.keyboard.type('103');
  await expect(page.getByRole('gridcell', { name: '103', exact: true })).toBeFocused();
  await page.keyboard.press('?');
  const help = page.getByRole('dialog', { name: 'Help' });
  await expect(help).toBeVisible();
  for (const key of ['F2', 'Ctrl + D', 'Alt + Page Down'])
    await expect(help.getByText(key, { exact: true })).toBeVisible();
  await expect(help.getByText('No workable hardware')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('gridcell', { name: '103', exact: true })).toBeFocused();
});

test('somebody new is led through the pages step by step, and can stop at any of them', async ({ page }) => {
  await page.goto('');
  const tour = page.getByRole('complementary', { name: 'Tour' });
  await tour.getByRole('button', { name: 'Next: one opening' }).click();
  await expect(page.getByRole('heading', { level: 1, name: '103', exact: true })).toBeVisible();
  await expect(tour).toContainText('2 of 5');
  await tour.getByRole('button', { name: 'Skip the tour' }).click();
  await expect(tour).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: '103', exact: true })).toBeVisible();
  await expect(tour).toHaveCount(0);
});
