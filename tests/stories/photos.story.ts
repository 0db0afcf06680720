import { readFile } from 'node:fs/promises';
import { expect, test } from 'playwright/test';
import { readProjectFile } from '../../src/intake/container.ts';
import { aPhoto, seen } from './pages/camera.ts';
import { fillDisk } from './pages/window.ts';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

test('a photo is taken at the door without a signal, pointed at, survives a reload and goes out without its place', async ({
  page,
  context,
}) => {
  await page.goto('#/walk/opening-103');
  await page.getByRole('button', { name: 'Skip the tour' }).tap();
  const photo = await aPhoto(page);
  // The parts that draw a photo are on the screen already; nothing of it may need a network.
  await context.setOffline(true);

  await test.step('a full disk is said where the photo was taken, and it is not lost', async () => {
    await fillDisk(page, true);
    await page.locator('.walk-bar').getByLabel('Photo').setInputFiles(photo);
    await expect(page.getByRole('alert').filter({ hasText: 'the photo is not kept' })).toBeVisible();
    await fillDisk(page, false);
    await page.getByRole('button', { name: 'Try again' }).tap();
    await expect(page.getByRole('alert').filter({ hasText: 'the photo is not kept' })).toHaveCount(0);
  });

  await test.step('an arrow is drawn with a finger and a caption typed', async () => {
    const photos = page.getByRole('region', { name: 'Photos' });
    await photos.getByText('Photos', { exact: false }).first().tap();
    await photos.getByRole('button', { name: /^Photo, / }).tap();
    await photos.getByRole('textbox', { name: 'Caption' }).fill('label painted over');
    await photos.getByRole('button', { name: 'Draw an arrow' }).tap();
    const pen = photos.getByTestId('pen');
    const box = await pen.boundingBox();
    if (!box) throw new Error('no pen');
    await page.mouse.move(box.x + box.width * 0.2, box.y + box.height * 0.8);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.5, box.y + box.height * 0.5, { steps: 4 });
    await page.mouse.up();
    await expect(photos.getByRole('button', { name: /label painted over; 1 arrow$/ })).toBeVisible();
  });
  await context.setOffline(false);

  await test.step('after a reload it stands on the sheet of the opening and on paper', async () => {
    await expect(page.locator('[data-saving="saved"]')).toBeAttached();
    await page.goto('#/opening/opening-103');
    await page.reload();
    const photos = page.getByRole('region', { name: 'Photos' });
    await photos.getByText('Photos').first().tap();
    await expect(photos.getByRole('button', { name: /label painted over; 1 arrow$/ })).toBeVisible();
    await page.goto('#/schedule');
    await page.getByRole('searchbox', { name: 'Find in every field' }).fill('103');
    await page.goto('#/print?only=openings');
    const sheet = page.getByRole('article', { name: '103', exact: true });
    await expect(sheet.getByText(/label painted over; 1 arrow$/)).toBeVisible();
    await expect(sheet.locator('.opening-photos img')).toHaveJSProperty('complete', true);
  });

  await test.step('the file holds it upright, small, and with nothing that a phone wrote beside it', async () => {
    await page.goto('#/files');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page
        .getByRole('button', { name: /^Save a copy/ })
        .first()
        .tap(),
    ]);
    const read = readProjectFile(new Uint8Array(await readFile(await download.path())));
    if (!read.ok) throw new Error(read.says);
    const [bytes] = read.photos.values();
    if (!bytes) throw new Error('no photo in the file');
    expect(await seen(page, bytes)).toEqual({ width: 800, height: 1600, above: 'red', below: 'blue' });
    const text = Buffer.from(bytes).toString('latin1');
    expect(photo.buffer.toString('latin1')).toContain('Exif');
    expect(text).not.toContain('Exif');
    expect(text).not.toContain('\u00FF\u00E1');
  });
});
