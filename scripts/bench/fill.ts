/**
 * How full the pages are: each sheet of the demo building is printed to a PDF of its own and read back. Names every page
 * less than half full that is not the last of its sheet. `npx tsx scripts/bench/fill.ts [folder for the PDFs [beginning of one name]]`.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { demoProject } from '../demo/demoProject.ts';
import { argumentsOf } from '../lib/arguments.mjs';
import { fillOf, readPdf } from '../../tests/stories/pages/pdf.ts';
import { pageOf, withApp } from './app.ts';

const { words } = argumentsOf({
  usage: 'npx tsx scripts/bench/fill.ts [folder [sheet]]',
  words: ['folder', 'sheet'],
});
const [folder, only = ''] = words;
if (folder !== undefined) mkdirSync(folder, { recursive: true });

await withApp(async (browser, address) => {
  const page = await pageOf(browser, address, demoProject());
  await page.goto(`${address}#/print`);
  const boxes = page.getByRole('group', { name: 'What to print' }).getByRole('checkbox');
  await boxes.first().waitFor({ timeout: 120_000 });
  const names = await Promise.all(
    (await boxes.all()).map((box) => box.evaluate((one) => one.parentElement?.textContent ?? '')),
  );
  for (const [chosen, name] of names.entries()) {
    if (!name.startsWith(only)) continue;
    // The next is ticked before the last is let go: a print of nothing lays nothing out.
    await boxes.nth(chosen).check();
    for (const at of names.keys()) if (at !== chosen) await boxes.nth(at).uncheck();
    const sheet = page.locator('.print-preview .paper').first();
    const isThere = await sheet.waitFor({ timeout: 8_000 }).then(
      () => true,
      () => false,
    );
    if (!isThere) continue;
    // What is more than one run of the printer shows its first part.
    await page
      .getByRole('button', { name: /^Print/ })
      .and(page.locator(':enabled'))
      .first()
      .waitFor();
    const data = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    const file = name
      .toLowerCase()
      .replaceAll(/[^a-z]+/g, '-')
      .slice(0, 24);
    if (folder !== undefined) writeFileSync(join(folder, `${file}.pdf`), data);
    const pages = await readPdf(data);
    const fills = pages.map(fillOf);
    const mean = fills.reduce((sum, one) => sum + one, 0) / fills.length;
    const low = fills.flatMap((one, at) => (one < 0.5 ? [`${at + 1} (${Math.round(one * 100)} %)`] : []));
    console.log(
      `${name.slice(0, 40)}: ${pages.length} pages, ${Math.round(mean * 100)} % full on average; less than half: ${low.join(', ') || 'none'}`,
    );
  }
});
