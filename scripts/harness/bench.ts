import { spawn } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { type BrowserContext, chromium } from 'playwright';
import { newWindow } from '../../tests/stories/pages/window.ts';
import { browserArgs, findBrowser } from '../browser.mjs';
import { argumentsOf, countOf, refuse } from '../lib/arguments.mjs';
import { freePort } from '../lib/free-port.mjs';

export type AppWindow = Awaited<ReturnType<typeof newWindow>>;

/** What one run came to: what was lost, or what was kept and what the page said about it. */
export interface Outcome {
  readonly lost: readonly string[];
  readonly says?: string;
}

export interface Bench {
  /** A browser of its own on a profile on the disk. */
  readonly start: (profile: string) => Promise<BrowserContext>;
  readonly baseURL: string;
}

/**
 * Runs one harness: serves the built app, does as many runs as asked for, one after the other, and ends with 1 when
 * anything was lost or a run could not be judged.
 */
export async function harness(
  name: string,
  usual: number,
  run: (bench: Bench, index: number) => Promise<Outcome>,
): Promise<void> {
  const { words } = argumentsOf({ usage: `npx tsx scripts/harness/${name}.ts [runs]`, words: ['runs'] });
  const runs = countOf(words[0], 'The number of runs', usual);
  const executablePath = findBrowser();
  if (executablePath === undefined) {
    refuse('The harness needs Chromium. Run: node scripts/browser.mjs --install');
  }
  const port = await freePort();
  const baseURL = `http://127.0.0.1:${port}/`;
  const server = spawn(process.execPath, ['scripts/serve-built.mjs', String(port)], { stdio: 'ignore' });
  const bench: Bench = {
    baseURL,
    start: (profile) =>
      chromium.launchPersistentContext(profile, {
        executablePath,
        args: browserArgs,
        baseURL,
        timeout: 120_000,
      }),
  };
  let lost = 0;
  let unjudged = 0;
  try {
    await served(baseURL);
    for (let index = 0; index < runs; index += 1) {
      // oxlint-disable-next-line no-await-in-loop -- one browser at a time
      const outcome = await run(bench, index).catch((error: unknown) => {
        unjudged += 1;
        return { lost: [], says: `could not be judged: ${String(error).split('\n')[0]}` };
      });
      if (outcome.lost.length > 0) lost += 1;
      const says = outcome.says === undefined ? '' : `; ${outcome.says}`;
      console.log(
        `${index + 1} of ${runs}: ${outcome.lost.length > 0 ? `LOST ${outcome.lost.join(', ')}` : 'kept'}${says}`,
      );
    }
  } finally {
    server.kill();
  }
  console.log(`${name}: ${runs} runs, ${lost} with a loss, ${unjudged} that could not be judged`);
  process.exitCode = lost + unjudged > 0 ? 1 : 0;
}

/** The server builds the app first when it is out of date; a browser that comes before that is refused. */
async function served(baseURL: string, tries = 1_500): Promise<void> {
  const isUp = await fetch(baseURL).then(
    (answer) => answer.ok,
    () => false,
  );
  if (isUp) return;
  if (tries === 0) throw new Error('The built app is not served.');
  await setTimeout(200);
  await served(baseURL, tries - 1);
}

/** A profile on the disk for one run, and nothing of it left afterwards. */
export async function withProfile<T>(work: (profile: string) => Promise<T>): Promise<T> {
  const profile = await mkdtemp(path.join(tmpdir(), 'latchward-harness-'));
  try {
    return await work(profile);
  } finally {
    await rm(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

/** Every process of the browser on this profile dies at once, as when the system kills it or the battery is empty. */
export async function killBrowser(profile: string): Promise<void> {
  const processes = (await readdir('/proc')).filter((name) => /^\d+$/.test(name));
  await Promise.all(
    processes.map(async (id) => {
      const call = await readFile(`/proc/${id}/cmdline`, 'utf8').catch(() => '');
      if (!call.split('\0').some((word) => word.includes(profile))) return;
      try {
        process.kill(Number(id), 'SIGKILL');
      } catch {
        // It ended by itself.
      }
    }),
  );
}

/** Adds openings one after the other, as somebody types; `accepted` hears of each that is shown. */
export async function addAll(window: AppWindow, marks: readonly string[], accepted: (mark: string) => void) {
  for (const mark of marks) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    await window.addOpening(mark);
    // oxlint-disable-next-line no-await-in-loop
    await window.heading(mark).waitFor();
    accepted(mark);
  }
}

export const untilSaved = (window: AppWindow) =>
  window.page.locator('[data-saving="saved"]').waitFor({ timeout: 60_000 });

/** Which of the marks a new window of this browser does not find. */
export async function missing(context: BrowserContext, marks: readonly string[]) {
  const window = await newWindow(context);
  const gone: string[] = [];
  for (const mark of marks) {
    // oxlint-disable-next-line no-await-in-loop -- one search field
    await window.find(mark);
    // oxlint-disable-next-line no-await-in-loop
    const isThere = await window
      .row(mark)
      .waitFor({ timeout: 8_000 })
      .then(
        () => true,
        () => false,
      );
    if (!isThere) gone.push(mark);
  }
  const said = await window.page.locator('.notices .message p').allTextContents();
  return { gone, window, said };
}

export const pause = (milliseconds: number) => setTimeout(milliseconds);
