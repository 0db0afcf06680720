import { readFile } from 'node:fs/promises';
import { expect, test } from 'playwright/test';
import { readProjectFile } from '../../src/intake/container.ts';
import { fillDisk, newWindow } from './pages/window.ts';

/** The project in a saved copy, as text. */
function textOfCopy(bytes: Uint8Array): string {
  const read = readProjectFile(bytes);
  return read.ok ? read.text : read.says;
}

test('P2: a surveyor whose tab is killed after "Saved" finds everything again', async ({ context }) => {
  const survey = await newWindow(context);
  for (const mark of ['ZZ-1', 'ZZ-2', 'ZZ-3']) {
    await survey.addOpening(mark);
    await expect(survey.heading(mark)).toBeVisible();
  }
  await expect(survey.saving).toContainText('Saved');
  await survey.kill();
  const again = await newWindow(context);
  for (const mark of ['ZZ-1', 'ZZ-2', 'ZZ-3']) {
    await again.find(mark);
    await expect(again.row(mark)).toBeVisible();
  }
});

test('P2: what is typed outlives a crash, and an answer outlives leaving the page in the same moment', async ({
  context,
}) => {
  const survey = await newWindow(context);
  const { page } = survey;
  await page.goto('#/project');
  await page.getByRole('textbox', { name: 'Jurisdiction' }).fill('typed and never left');
  await expect(survey.saving).toContainText('Not saved yet');
  await survey.kill();

  const again = await newWindow(context);
  await expect(again.page.getByText('typed and never left')).toBeVisible();
  await again.page.goto('#/project');
  await expect(again.page.getByRole('textbox', { name: 'Jurisdiction' })).toHaveValue('typed and never left');
  await again.page.getByRole('textbox', { name: 'Jurisdiction' }).fill('');

  await again.page.goto('#/walk/opening-103');
  await again.page.getByRole('button', { name: /^Change Door type/ }).click();
  const question = again.page.getByRole('region', { name: 'Next question' });
  const given = again.page
    .getByRole('listitem')
    .filter({ has: again.page.getByRole('button', { name: 'Change Door type' }) });
  await expect(given).not.toContainText('Pair of leaves');
  // The answer and the end of the page in one turn: nothing slower than the answer itself has a chance.
  await Promise.all([
    again.page.waitForEvent('load'),
    question.getByRole('button', { name: 'Pair of leaves' }).evaluate((button: HTMLElement) => {
      button.click();
      location.reload();
    }),
  ]);
  await expect(given).toContainText('Pair of leaves');
});

test('P3: a surveyor on a full disk is told at once, works on and saves a copy', async ({ context }) => {
  const survey = await newWindow(context);
  await expect(survey.saving).toContainText('Saved');
  await fillDisk(survey.page, true);
  await survey.addOpening('ZZ-FULL');
  await expect(survey.saving).toContainText('Not saved');
  await expect(survey.saving).toContainText('full');
  await survey.addOpening('ZZ-MORE');
  await expect(survey.heading('ZZ-MORE')).toBeVisible();
  const copy = textOfCopy(await readFile(await survey.saveCopy()));
  expect(copy).toContain('ZZ-FULL');
  expect(copy).toContain('ZZ-MORE');
  await fillDisk(survey.page, false);
  await expect(survey.saving).toContainText('Saved', { timeout: 20_000 });
  await survey.page.close();
  const again = await newWindow(context);
  await again.find('ZZ-MORE');
  await expect(again.row('ZZ-MORE')).toBeVisible();
});

test('P10: somebody who opens the project twice can only read in the second window, until the first is closed', async ({
  context,
}) => {
  const first = await newWindow(context);
  await expect(first.saving).toContainText('Saved');
  const second = await newWindow(context);
  await expect(second.saving).toContainText('Read only');
  await expect(second.saving).toContainText('another window');
  await first.addOpening('ZZ-ONE');
  await expect(first.saving).toContainText('Saved');
  await second.find('ZZ-ONE');
  await expect(second.row('ZZ-ONE')).toBeVisible();
  await first.page.close();
  await expect(second.saving).toContainText('Saved');
  await second.addOpening('ZZ-TWO');
  await expect(second.saving).toContainText('Saved');
  await second.find('ZZ-TWO');
  await expect(second.row('ZZ-TWO')).toBeVisible();
});

test('P1: somebody who only looks changes nothing in the browser’s store', async ({ context }) => {
  const looking = await newWindow(context);
  await expect(looking.saving).toContainText('Saved');
  const stored = () =>
    looking.page.evaluate(
      () =>
        new Promise<string>((resolve, reject) => {
          const request = indexedDB.open('latchward');
          request.addEventListener('error', () => reject(new Error('The database did not open.')));
          request.addEventListener('success', () => {
            const all = request.result.transaction('projects').objectStore('projects').getAll();
            all.addEventListener('success', () => {
              request.result.close();
              resolve(JSON.stringify(all.result));
            });
          });
        }),
    );
  const before = await stored();
  await looking.page.reload();
  await expect(looking.saving).toContainText('Saved');
  await looking.find('1');
  expect(await stored()).toBe(before);
});
