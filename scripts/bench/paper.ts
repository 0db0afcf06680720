/**
 * A large building on paper, in a real browser: every sheet of 500 and of 1,000 openings in parts, with the most memory
 * the page ever held, and the door schedule of 500 beside LibreOffice, which makes a PDF of the same rows.
 * `npm run bench:paper`, or `npm run bench:paper 500`. Ends with 1 where a goal is missed.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { decideInBuilding } from '../../src/domain/building/joined.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { scheduleColumns, scheduleSheet } from '../../src/exporting/sheets/doorSchedule.ts';
import { workbookOf } from '../../src/exporting/xlsx/workbook.ts';
import { tickSheets } from '../../tests/stories/pages/print.ts';
import { argumentsOf, countOf } from '../lib/arguments.mjs';
import { findOffice } from '../lib/office.ts';
import { pageOf, withApp } from './app.ts';
import { type Line, report } from './measure.ts';
import { projectOf } from './openings.ts';

const { words } = argumentsOf({ usage: 'npm run bench:paper [openings]', words: ['openings'] });
const sizes = words[0] === undefined ? [500, 1000] : [countOf(words[0], 'The number of openings', 500)];
const mostMb = 500;

const projectFor = (count: number): Project => ({
  ...projectOf(count),
  id: `paper-${count}`,
  name: `Bench ${count}`,
});

/** What the page wrote, counted where it lies: each page of a PDF is an object of its own. */
const pagesIn = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

interface Held {
  /** Of its own: what a browser’s task manager shows. */
  readonly ownMb: number;
  /** With the program itself, which all windows share. */
  readonly allMb: number;
}

/** The most memory the process behind the page ever held, since it was started. */
async function mostMemory(browser: Browser): Promise<Held> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  const held = processInfo
    .filter(({ type }) => type === 'renderer')
    .map(({ id }): Held => {
      const status = readFileSync(`/proc/${id}/status`, 'utf8');
      const mb = (name: string) => Number(new RegExp(`${name}:\\s+(\\d+) kB`).exec(status)?.[1] ?? 0) / 1024;
      return { allMb: mb('VmHWM'), ownMb: mb('VmHWM') - mb('RssFile') };
    });
  const [most] = held.toSorted((a, b) => b.ownMb - a.ownMb);
  if (!most) throw new Error('No process of a page was found.');
  return most;
}

interface Printed {
  readonly pages: number;
  readonly ms: number;
  readonly parts: number;
}

const pdfOf = (page: Page) => page.pdf({ preferCSSPageSize: true, printBackground: true });

/** Every sheet, printed by the page's own run; each time it calls the printer a PDF is made of what it shows. */
async function everySheet(page: Page): Promise<Printed> {
  await tickSheets(page, 'all');
  const all = page.getByRole('button', { name: /^Print all \d+ parts$/ }).and(page.locator(':enabled'));
  await all.waitFor({ timeout: 120_000 });
  const parts = Number(/\d+/.exec((await all.textContent()) ?? '')?.[0]);
  let pages = 0;
  let done = 0;
  // To make a PDF is an afterprint event of its own, on which the page goes on to lay out what comes next.
  let turn = Promise.resolve();
  await page.exposeFunction('toPrinter', async () => {
    turn = turn.then(async () => {
      const label = await page.getByRole('progressbar').getAttribute('aria-label');
      const made = pagesIn(await pdfOf(page));
      pages += made;
      done += 1;
      console.log(`  ${label?.slice(0, 110)}: ${made} pages`);
    });
    await turn;
  });
  await page.evaluate(() => {
    window.print = () => void (Reflect.get(window, 'toPrinter') as () => Promise<void>)();
  });
  const start = performance.now();
  await all.click();
  await page.getByRole('progressbar').waitFor();
  await page.getByRole('progressbar').waitFor({ state: 'detached', timeout: 1_800_000 });
  if (done !== parts) throw new Error(`${done} of ${parts} parts came out of the printer.`);
  await turn;
  return { pages, parts, ms: performance.now() - start };
}

/** From the tick to the finished PDF. */
async function onlySchedule(page: Page): Promise<Printed> {
  await tickSheets(page, []);
  const start = performance.now();
  await tickSheets(page, ['Door schedule']);
  await page.getByRole('button', { name: 'Print', exact: true }).and(page.locator(':enabled')).waitFor();
  await page.locator('.door-schedule').waitFor();
  const pdf = await pdfOf(page);
  return { pages: pagesIn(pdf), parts: 1, ms: performance.now() - start };
}

/** The same rows in the same columns as a workbook, and from there to PDF; the start of the program is said apart. */
async function byOffice(
  project: Project,
): Promise<{ ms: number; startMs: number; pages: number } | undefined> {
  const office = findOffice();
  if (office === undefined) return undefined;
  const sheet = scheduleSheet(project, decideInBuilding(project));
  const head = scheduleColumns.map((column) => column.head);
  const rows = sheet.floors.flatMap(({ lines }) =>
    lines.map(({ mark, cells }) => [mark, ...cells.map(({ says }) => says.join('; '))]),
  );
  const folder = mkdtempSync(join(tmpdir(), 'latchward-'));
  const convert = async (name: string, all: readonly (readonly string[])[]) => {
    const file = join(folder, `${name}.xlsx`);
    writeFileSync(file, await workbookOf([{ name: 'Openings', head, rows: all }]));
    const start = performance.now();
    execFileSync(office, ['--headless', '--convert-to', 'pdf', '--outdir', folder, file], {
      stdio: 'ignore',
    });
    return performance.now() - start;
  };
  try {
    await convert('first', rows.slice(0, 1));
    const startMs = await convert('one', rows.slice(0, 1));
    const ms = await convert('all', rows);
    return { ms, startMs, pages: pagesIn(readFileSync(join(folder, 'all.pdf'))) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const seconds = (ms: number) => `${(ms / 1000).toFixed(1)} s`;
const lines: Line[] = [];

const memoryLine = (what: string, { ownMb, allMb }: Held): Line => ({
  what,
  figure: `${ownMb.toFixed(0)} MB of its own, ${allMb.toFixed(0)} MB with the program`,
  goal: `${mostMb} MB`,
  met: ownMb < mostMb,
});

/** A browser of its own each time: the most a page ever held is of this print and of no earlier one. */
async function atPrintPage(
  project: Project,
  work: (page: Page, most: () => Promise<Held>) => Promise<void>,
): Promise<void> {
  await withApp(async (browser, address) => {
    const page = await pageOf(browser, address, project);
    await page.goto(`${address}#/print`);
    await page.getByRole('heading', { name: 'Print', exact: true }).waitFor({ timeout: 120_000 });
    await work(page, () => mostMemory(browser));
  });
}

const [first] = sizes;
if (first !== undefined) {
  const project = projectFor(first);
  await atPrintPage(project, async (page, most) => {
    const ours = await onlySchedule(page);
    const theirs = await byOffice(project);
    const against = theirs
      ? {
          figure: `${seconds(ours.ms)} for ${ours.pages} pages; LibreOffice ${seconds(theirs.ms)} for ${theirs.pages}, ${seconds(theirs.startMs)} of it for a single row: ours ÷ theirs ${(ours.ms / theirs.ms).toFixed(2)}`,
          goal: 'below 1',
          met: ours.ms < theirs.ms,
        }
      : { figure: `${seconds(ours.ms)} for ${ours.pages} pages; LibreOffice is not installed` };
    lines.push({ what: `Door schedule of ${first}`, ...against });
    lines.push(memoryLine(`Most memory, door schedule of ${first}`, await most()));
  });
}
for (const count of sizes) {
  console.log(`${count} openings, every sheet`);
  await atPrintPage(projectFor(count), async (page, most) => {
    const all = await everySheet(page);
    lines.push(
      {
        what: `Every sheet of ${count}`,
        figure: `${all.pages} pages in ${all.parts} parts, ${seconds(all.ms)}`,
      },
      memoryLine(`Most memory, every sheet of ${count}`, await most()),
    );
  });
}
report('A large building on paper', lines);
