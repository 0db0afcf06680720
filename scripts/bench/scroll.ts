/**
 * Scrolling the schedule at 5,000 openings and searching it for the first time, in a real browser: by turns with a bare
 * React list of the same rows in the same run. `npm run bench:scroll`.
 */
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright';
import { build } from 'vite';
import { rowsOf } from '../../src/app/gridRows.ts';
import { decideInBuilding } from '../../src/domain/building/joined.ts';
import { columnsFor, groundOf } from '../../src/domain/grid/columns.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { argumentsOf, countOf } from '../lib/arguments.mjs';
import { middleOf, pageOf, withApp } from './app.ts';
import { type Line, report } from './measure.ts';
import { projectOf } from './openings.ts';

const { words } = argumentsOf({ usage: 'npm run bench:scroll [openings]', words: ['openings'] });
const count = countOf(words[0], 'The number of openings', 5000);
const rounds = 5;
const steps = 60;
/** Ten rows at each frame: a wheel that is turned fast. */
const stepPx = 480;
const rowPx = 48;

async function bareScript(): Promise<string> {
  const outDir = 'node_modules/.cache/bench-bare';
  await build({
    configFile: false,
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' },
    build: {
      outDir,
      lib: {
        entry: 'scripts/bench/bareList.tsx',
        formats: ['iife'],
        name: 'bare',
        fileName: () => 'bare.js',
      },
    },
  });
  const script = readFileSync(join(outDir, 'bare.js'), 'utf8');
  rmSync(outDir, { recursive: true, force: true });
  return script;
}

async function barePage(browser: Browser, project: Project): Promise<Page> {
  const decisions = decideInBuilding(project);
  const ground = groundOf(project, decisions);
  const rows = rowsOf(project, { decisions, checking: false });
  const columns = columnsFor(rows, false);
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.setContent('<body style="margin:0"><div id="root"></div></body>');
  await page.addScriptTag({ content: await bareScript() });
  await page.evaluate(
    (bare) => {
      const show = Reflect.get(window, 'showBare') as (all: object) => void;
      show({ ...bare, at: document.getElementById('root') });
    },
    {
      rows: rows.map((row) => columns.map((column) => column.text(row, ground))),
      widthsRem: columns.map(({ width }) => width),
      rowPx,
    },
  );
  await page.locator('#bare').waitFor();
  return page;
}

interface Scrolled {
  /** Time of the page's own thread for one step. */
  readonly stepMs: number;
  readonly scriptMs: number;
  readonly layoutMs: number;
  /** Steps that took longer than 50 ms until their frame was there. */
  readonly slow: number;
}

async function scrolled(page: Page, selector: string): Promise<Scrolled> {
  await page.bringToFront();
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const metrics = async () => {
    const { metrics: all } = await session.send('Performance.getMetrics');
    return (name: string) => (all.find((one) => one.name === name)?.value ?? 0) * 1000;
  };
  const before = await metrics();
  const slow = await page.evaluate(
    async ([where, times, by]) => {
      const list = document.querySelector(where);
      if (!list) throw new Error('No list on this page.');
      list.scrollTop = 0;
      let late = 0;
      for (let step = 0; step < times; step++) {
        const start = performance.now();
        list.scrollTop += by;
        await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
        if (performance.now() - start > 50) late += 1;
      }
      return late;
    },
    [selector, steps, stepPx] as const,
  );
  const after = await metrics();
  await session.detach();
  const each = (...names: readonly string[]) =>
    names.reduce((sum, name) => sum + after(name) - before(name), 0) / steps;
  return {
    stepMs: each('TaskDuration'),
    scriptMs: each('ScriptDuration'),
    layoutMs: each('LayoutDuration', 'RecalcStyleDuration'),
    slow,
  };
}

/** From the letter to the end of the frame that shows what it found. */
const searched = (page: Page, text: string) =>
  page.evaluate(async (typed) => {
    const box = document.querySelector<HTMLInputElement>('input[type="search"]');
    if (!box) throw new Error('No search on this page.');
    const start = performance.now();
    Reflect.set(HTMLInputElement.prototype, 'value', typed, box);
    box.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return performance.now() - start;
  }, text);

await withApp(async (browser, address) => {
  const project = { ...projectOf(count), id: `scroll-${count}`, name: `Bench ${count}` };
  const page = await pageOf(browser, address, project);
  await page.goto(`${address}#/schedule`);
  await page.getByRole('grid').waitFor({ timeout: 120_000 });
  // As long as somebody looks before typing: the building is walked and the words are made in the meantime.
  await page.waitForTimeout(8000);
  const first = await searched(page, '1');
  const later = [await searched(page, ''), await searched(page, '2'), await searched(page, '')];
  const bare = await barePage(browser, project);
  const ours: Scrolled[] = [];
  const theirs: Scrolled[] = [];
  for (let round = 0; round < rounds; round++) {
    ours.push(await scrolled(page, '.grid-scroll'));
    theirs.push(await scrolled(bare, '#bare'));
  }
  const middle = (all: readonly Scrolled[], pick: (one: Scrolled) => number) => middleOf(all.map(pick));
  const figure = (pick: (one: Scrolled) => number) => {
    const [us, them] = [middle(ours, pick), middle(theirs, pick)];
    return `${us.toFixed(1)} ms; bare list ${them.toFixed(1)} ms: ${(us / them).toFixed(1)} times`;
  };
  const lines: Line[] = [
    { what: 'Ten rows further', figure: figure(({ stepMs }) => stepMs) },
    { what: '  of it scripts', figure: figure(({ scriptMs }) => scriptMs) },
    { what: '  of it layout and style', figure: figure(({ layoutMs }) => layoutMs) },
    {
      what: `Steps of ${steps} over 50 ms`,
      figure: `${middle(ours, ({ slow }) => slow)}; bare list ${middle(theirs, ({ slow }) => slow)}`,
    },
    {
      what: 'The first letter in the search',
      figure: `${first.toFixed(0)} ms; later ${middleOf(later).toFixed(0)} ms: ${(first / middleOf(later)).toFixed(1)} times`,
    },
  ];
  report(`The schedule of ${count} openings`, lines);
});
