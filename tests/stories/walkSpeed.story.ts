import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from 'playwright/test';
import { Finger } from './pages/finger.ts';
import { answerAll, otherDoors } from './pages/otherDoors.ts';

/**
 * How much a survey costs, in real taps on a phone, from an empty project. The counts stand in `docs/walk.md`; with
 * LATCHWARD_ACCEPT=1 it is written anew.
 */
test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, actionTimeout: 20_000 });
test.describe.configure({ timeout: 120_000 });

const paper = fileURLToPath(new URL('../../docs/walk.md', import.meta.url));

const complete = (page: Page) =>
  page.getByText(
    'Nothing more needs to be asked: every answer that could change this decision or its order is known.',
  );

test('set-up, an ordinary office door, the next like it, and ten at once', { tag: '@long' }, async ({
  page,
}) => {
  const finger = new Finger(page);
  await page.goto('#/files');
  await page.getByRole('button', { name: 'Skip the tour' }).tap();
  await finger.type('New project', 'Walked office');
  await finger.press('Start');
  await expect(page.getByRole('heading', { level: 1, name: 'Walked office' })).toBeVisible({
    timeout: 20_000,
  });
  await finger.press('Menu, now at Project');
  await page.getByRole('link', { name: 'Walk', exact: true }).first().tap();
  finger.taps++;

  // Set-up before the first door.
  for (const name of [
    'Offices (B)',
    'Sprinklered throughout (NFPA 13), fire alarm',
    '3 stories, not a high-rise',
    /^Above the ceiling from a closet, 24 V/,
    'Existing, not altered',
    'Inside, in gypsum walls',
    /^Confirmed, local amendments/,
    /^Reader outside, locked at all hours/,
    'Ordinary room, used a little',
    /^Hollow metal leaf in hollow metal frame/,
    'Closer, no operator, not held open',
  ])
    await finger.answer(name);
  const setUp = finger.taps;

  // The first office door, its mark included.
  finger.start();
  await finger.press('New opening');
  await finger.type('Mark', '2-05');
  await finger.press('Add');
  await finger.answer('Controlled');
  await finger.answer(/^As usual: /);
  await finger.answer(/^As usual: /);
  await finger.answer('Cylindrical lever, outside always locked');
  await finger.answer('No label on leaf or frame, and none is called for');
  await finger.answer(/^4-7\/8 cutout, latch 1\/2 in, sounds hollow/);
  await finger.answer('Ordinary inside wall, gypsum, not rated');
  await finger.answer(/^Office or ordinary room/);
  await expect(complete(page)).toBeVisible();
  await expect(page.locator('.thumb-bar').getByText('Settled')).toBeVisible();
  const office = { answers: finger.answers, taps: finger.taps };

  // The next like it.
  finger.start();
  await finger.press('Next: 2-06, the same as 2-05');
  await finger.press('All of it is so here');
  await finger.press('Looked at: the same here');
  await expect(complete(page)).toBeVisible();
  const like = finger.taps;

  // Ten at once, each still to be looked at.
  finger.start();
  await page.getByText('Several the same …').tap();
  finger.taps++;
  await finger.press('2-07 to 2-16 as 2-06');
  await expect(page.getByRole('heading', { level: 1, name: '2-07' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Looked at: the same here' })).toBeVisible();
  const ten = finger.taps;

  // A door nobody wants anything of.
  await finger.press('New opening');
  await page.getByRole('combobox', { name: 'Facts' }).selectOption({ label: 'Start empty' });
  await finger.type('Mark', '2-30');
  await finger.press('Add');
  finger.start();
  await finger.answer('Not controlled; a lever always opens it from inside');
  await expect(page.locator('.thumb-bar').getByText('Left as it is')).toBeVisible();
  await expect(complete(page)).toBeVisible();
  const left = finger.taps;

  // Doors that cost more, each begun beside the last and answered to the end.
  const others: string[] = [];
  for (const door of otherDoors) {
    finger.start();
    await finger.press(/^Next: 2-\d+, from the start$/);
    await answerAll(finger, door);
    await expect(complete(page)).toBeVisible();
    await expect(page.locator('.thumb-bar').getByText('Settled')).toBeVisible();
    others.push(`| ${door.name}, complete for order | ${finger.answers} | ${finger.taps} |`);
  }

  expect(setUp).toBeLessThanOrEqual(15);
  expect(office.answers).toBeLessThanOrEqual(8);
  expect(office.taps).toBeLessThanOrEqual(12);
  expect(like).toBeLessThanOrEqual(3);
  expect(ten).toBeLessThanOrEqual(3);
  expect(left).toBe(1);
  const said = `# What a survey costs

Counted by \`tests/stories/walkSpeed.story.ts\` with real taps on a screen of 390 × 844, from an empty project. A text
that is typed counts as one tap. Looking at the door is not counted.

| what | answers | taps |
| --- | --- | --- |
| set-up before the first door, the name of the project included | | ${setUp} |
| ordinary office door, its mark included, complete for order | ${office.answers} | ${office.taps} |
| the next door like it, looked at and confirmed, complete for order | | ${like} |
| ten doors like it at once, each still to be looked at | | ${ten} |
| a door that is not controlled | 1 | ${left} |
${others.join('\n')}

No goal is set for the last three: they are counted as they are. Each is begun from the door before it, in one tap, and
“none of these” counts as an answer. One answer at the pair is given once for the building: how many people it holds.
`;
  if (process.env['LATCHWARD_ACCEPT'] === '1') writeFileSync(paper, said);
  expect(readFileSync(paper, 'utf8')).toBe(said);
});
