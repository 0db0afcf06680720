/**
 * Leaves the page within 0 to 165 ms of an edit, by reloading, by going elsewhere and by closing the tab, with a text
 * typed and not saved in another field. `npx tsx scripts/harness/leave.ts 24`.
 */
import { newWindow } from '../../tests/stories/pages/window.ts';
import { addAll, harness, missing, pause } from './bench.ts';

const ways = ['reload', 'elsewhere', 'close', 'kill'] as const;
const typed = 'not saved yet ZZ';

await harness('leave', 24, (bench, index) =>
  bench.withProfile(async (profile) => {
    const way = ways[index % ways.length] ?? 'reload';
    const context = await bench.start(profile);
    const window = await newWindow(context);
    const { page } = window;
    page.on('dialog', (dialog) => void dialog.accept());
    await page.goto('#/project');
    await page.getByRole('textbox', { name: 'Jurisdiction' }).fill(typed);
    // Going to the page by its address leaves the field without a word to it.
    await page.evaluate(() => {
      location.hash = '#/schedule';
    });
    await page.getByRole('button', { name: 'New opening' }).waitFor();
    await addAll(window, ['ZZ-1'], () => undefined);
    await pause(Math.random() * 165);
    if (way === 'reload') await page.reload();
    else if (way === 'elsewhere') await page.goto('about:blank');
    else if (way === 'close') await page.close({ runBeforeUnload: true });
    else await window.kill();
    if (way === 'close') await pause(500);
    const { gone, window: after } = await missing(context, ['ZZ-1']);
    const found = await after.page
      .getByText(typed)
      .first()
      .waitFor({ timeout: 8_000 })
      .then(
        () => true,
        () => false,
      );
    await context.close();
    return { lost: found ? gone : [...gone, 'the typed text'], says: way };
  }),
);
