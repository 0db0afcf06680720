/**
 * A building model of 60 MB in the real browser: the page stays alive while it is read, progress moves, Stop leaves the
 * project as it was, and then it is read to the end. `npx tsx scripts/harness/largeModel.ts [megabytes]`.
 */
import { spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import process from 'node:process';
import { type Browser, chromium, type Page } from 'playwright';
import { newWindow } from '../../tests/stories/pages/window.ts';
import { browserArgs, findBrowser } from '../browser.mjs';
import { argumentsOf, countOf, refuse } from '../lib/arguments.mjs';
import { freePort } from '../lib/free-port.mjs';
import { served } from './bench.ts';
import { largeIfc } from './largeIfc.ts';

/** A page that paints less often than this no longer answers a finger. */
const longestFrameMs = 200;

const { words } = argumentsOf({
  usage: 'npx tsx scripts/harness/largeModel.ts [megabytes]',
  words: ['megabytes'],
});
const megabytes = countOf(words[0], 'The number of megabytes', 60);
const executablePath = findBrowser();
if (executablePath === undefined) refuse('This needs Chromium. Run: node scripts/browser.mjs --install');

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/**
 * The longest piece of work of the page itself, in the time the processor gave to it: beside other programs a frame may come
 * late through no fault of the page. Until the last frame without the preview, and after it.
 */
function longestWorkMs(trace: Buffer): { readonly reading: number; readonly showing: number } {
  const { traceEvents } = JSON.parse(trace.toString()) as { traceEvents: readonly TraceEvent[] };
  const threadOf = ({ pid, tid }: TraceEvent) => `${pid} ${tid}`;
  const pages = new Set(
    traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(threadOf),
  );
  const shown = Math.max(0, ...traceEvents.flatMap(({ name, ts }) => (name === stillReading ? ts : [])));
  const work = traceEvents.filter((event) => event.name.endsWith('RunTask') && pages.has(threadOf(event)));
  const longest = (of: readonly TraceEvent[]) =>
    Math.round(of.reduce((most, { tdur = 0 }) => Math.max(most, tdur), 0) / 1_000);
  return {
    reading: longest(work.filter(({ ts }) => ts < shown)),
    showing: longest(work.filter(({ ts }) => ts >= shown)),
  };
}

interface Watched {
  readonly frames: number;
  /** Between two frames while the model was read, and once its preview came. */
  readonly readingMs: number;
  readonly showingMs: number;
  readonly said: readonly string[];
}
const stillReading = 'still reading';

/** From here on every frame is counted, with the longest time between two, and each different line of progress. */
async function watch(page: Page, browser: Browser) {
  await browser.startTracing(page, { categories: ['toplevel', 'blink.user_timing'] });
  await page.evaluate((mark) => {
    const seen = {
      frames: 0,
      readingMs: 0,
      showingMs: 0,
      said: new Set<string>(),
      last: performance.now(),
      is: true,
    };
    // A method, because the function is sent to the page as it stands, without what a named one would lean on.
    const loop = {
      frame(now: number) {
        if (!seen.is) return;
        const isShown = document.querySelector('.import-preview') !== null;
        seen.frames += 1;
        if (isShown) seen.showingMs = Math.max(seen.showingMs, now - seen.last);
        else seen.readingMs = Math.max(seen.readingMs, now - seen.last);
        if (!isShown) performance.mark(mark);
        seen.last = now;
        const line = document.querySelector('progress')?.parentElement?.querySelector('p')?.textContent;
        if (line) seen.said.add(line);
        requestAnimationFrame((next) => loop.frame(next));
      },
    };
    requestAnimationFrame((next) => loop.frame(next));
    Object.assign(globalThis, { seen });
  }, stillReading);
}

async function watched(page: Page, browser: Browser) {
  const seen = await page.evaluate((): Watched => {
    const found = Reflect.get(globalThis, 'seen') as Omit<Watched, 'said'> & {
      said: Set<string>;
      is: boolean;
    };
    found.is = false;
    const { frames, readingMs, showingMs, said } = found;
    return { frames, readingMs: Math.round(readingMs), showingMs: Math.round(showingMs), said: [...said] };
  });
  return { ...seen, work: longestWorkMs(await browser.stopTracing()) };
}

const port = await freePort();
const baseURL = `http://127.0.0.1:${port}/`;
const server = spawn(process.execPath, ['scripts/serve-built.mjs', String(port)], { stdio: 'ignore' });
const folder = await mkdtemp(path.join(tmpdir(), 'latchward-large-'));
const faults: string[] = [];
const check = (holds: boolean, what: string) => {
  console.log(`${holds ? 'ok    ' : 'FAULT '} ${what}`);
  if (!holds) faults.push(what);
};
/** A late frame is a fault of the page where its own work was long; otherwise other programs had the processor. */
function judge(when: string, { frames, readingMs, work }: Awaited<ReturnType<typeof watched>>) {
  const late = readingMs > longestFrameMs ? ` (load of the machine ${(loadavg()[0] ?? 0).toFixed(1)})` : '';
  check(
    work.reading <= longestFrameMs,
    `${when}: ${frames} frames, at most ${readingMs} ms apart${late}, work of the page at most ${work.reading} ms`,
  );
}

try {
  const file = path.join(folder, 'large.ifc');
  const { text, doors } = largeIfc(megabytes * 1_000_000, 80);
  await writeFile(file, text);
  console.log(`a model of ${(text.length / 1e6).toFixed(1)} MB with ${doors} doors`);
  await served(baseURL);
  const browser = await chromium.launch({ executablePath: executablePath ?? '', args: browserArgs });
  const context = await browser.newContext({ baseURL, serviceWorkers: 'block', locale: 'en-US' });
  const { page } = await newWindow(context);
  // Deciding what is there already is other work of the page, and over before anything is measured.
  const openings = async () => {
    const line = page.getByText(/^\d+ openings/).first();
    await line.filter({ hasNotText: 'being decided' }).waitFor({ timeout: 60_000 });
    return /^\d+/.exec((await line.textContent()) ?? '')?.[0] ?? '';
  };
  const before = await openings();
  await page.goto('#/files');
  const input = page.getByLabel('Schedule or building model');
  await input.waitFor();
  // The page that was just opened is laid out first; that is no part of reading.
  await page.waitForTimeout(1_500);

  await watch(page, browser);
  await input.setInputFiles(file);
  await page.getByText(/^Reading the building model: [1-9]/).waitFor();
  // Somebody types meanwhile.
  const paste = page.getByRole('textbox', { name: /paste rows/ });
  const begin = performance.now();
  await paste.fill('still here');
  check(
    performance.now() - begin < 1_000,
    `typing beside it took ${Math.round(performance.now() - begin)} ms`,
  );
  await paste.fill('');
  const stop = performance.now();
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await page.getByText('Reading was stopped. Nothing was taken.').waitFor();
  check(performance.now() - stop < 1_000, `stopped in ${Math.round(performance.now() - stop)} ms`);
  const first = await watched(page, browser);
  judge('until it was stopped', first);
  check((await page.getByRole('region', { name: /^Preview of/ }).count()) === 0, 'nothing of it is shown');

  await watch(page, browser);
  const start = performance.now();
  await input.setInputFiles(file);
  await page.getByRole('region', { name: 'Preview of large.ifc' }).waitFor({ timeout: 180_000 });
  const seconds = (performance.now() - start) / 1_000;
  const second = await watched(page, browser);
  judge(`to the end in ${seconds.toFixed(1)} s`, second);
  console.log(
    `      then the preview: a frame after ${second.showingMs} ms, work of ${second.work.showing} ms`,
  );
  check(
    second.said.length >= 10,
    `${second.said.length} different lines of progress, such as “${second.said[Math.floor(second.said.length / 2)] ?? ''}”`,
  );
  check(await page.getByText(`${doors} openings,`).first().isVisible(), `${doors} doors are shown`);
  await page.goto('#/schedule');
  check((await openings()) === before, `the project is as it was: ${before} openings`);
  await browser.close();
} finally {
  server.kill();
  await rm(folder, { recursive: true, force: true });
}
console.log(faults.length === 0 ? 'no fault' : `${faults.length} faults`);
process.exitCode = faults.length === 0 ? 0 : 1;
