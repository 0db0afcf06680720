import { spawn } from 'node:child_process';
import { cp, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
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
  /** Hands over a profile that holds the building of this run, and leaves nothing of it afterwards. */
  readonly withProfile: <T>(work: (profile: string) => Promise<T>) => Promise<T>;
}

/**
 * Most runs take an empty building, where an edit takes a tenth of the time, so that there can be ten times as many;
 * every fourth one takes the demo building, whose record is large enough to be torn.
 */
const isLarge = (index: number) => index % 4 === 3;

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
  const start = (profile: string) =>
    chromium.launchPersistentContext(profile, {
      executablePath,
      args: browserArgs,
      baseURL,
      timeout: 120_000,
      // Storing every file for later takes the machine away from the run; it has nothing to do with the work stored.
      serviceWorkers: 'block',
      // Tall enough that every added opening has its row.
      viewport: { width: 1280, height: 2_400 },
    });
  const profiles = await mkdtemp(path.join(tmpdir(), 'latchward-harness-'));
  let lost = 0;
  let unjudged = 0;
  try {
    await served(baseURL);
    const kept = { small: path.join(profiles, 'small'), large: path.join(profiles, 'large') };
    await prepare(await start(kept.large), false);
    await prepare(await start(kept.small), true);
    for (let index = 0; index < runs; index += 1) {
      // oxlint-disable-next-line no-await-in-loop -- one browser at a time
      const outcome = await run(
        { start, withProfile: withCopy(isLarge(index) ? kept.large : kept.small) },
        index,
      ).catch((error: unknown) => {
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
    await rm(profiles, { recursive: true, force: true, maxRetries: 5 });
  }
  console.log(`${name}: ${runs} runs, ${lost} with a loss, ${unjudged} that could not be judged`);
  process.exitCode = lost + unjudged > 0 ? 1 : 0;
}

/** The server builds the app first when it is out of date; a browser that comes before that is refused. */
export async function served(baseURL: string, tries = 1_500): Promise<void> {
  const isUp = await fetch(baseURL).then(
    (answer) => answer.ok,
    () => false,
  );
  if (isUp) return;
  if (tries === 0) throw new Error('The built app is not served.');
  await setTimeout(200);
  await served(baseURL, tries - 1);
}

/** A first start, so that no run has to make one: the demo building is stored, or an empty one is opened beside it. */
async function prepare(context: BrowserContext, small: boolean) {
  const window = await newWindow(context);
  const { page } = window;
  await untilSaved(window);
  if (small) {
    await page.goto('#/files');
    await page.getByRole('textbox', { name: 'New project', exact: true }).fill('Harness');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await page.getByRole('heading', { level: 1, name: 'Harness' }).waitFor();
    await untilSaved(window);
  }
  await context.close();
}

const withCopy =
  (of: string): Bench['withProfile'] =>
  async (work) => {
    const profile = await mkdtemp(path.join(tmpdir(), 'latchward-harness-'));
    try {
      await cp(of, profile, { recursive: true });
      return await work(profile);
    } finally {
      await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    }
  };

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

/** Which of the marks a new window of this browser does not find; every mark begins with the same letters. */
export async function missing(context: BrowserContext, marks: readonly string[]) {
  const window = await newWindow(context);
  await window.find(commonStart);
  const gone: string[] = [];
  for (const mark of marks) {
    // oxlint-disable-next-line no-await-in-loop -- only the first one is waited for
    const isThere = await window
      .row(mark)
      .waitFor({ timeout: 15_000 })
      .then(
        () => true,
        () => false,
      );
    if (!isThere) gone.push(mark);
  }
  const said = await window.page.locator('.notices .message p').allTextContents();
  return { gone, window, said };
}
const commonStart = 'ZZ-';

export const pause = (milliseconds: number) => setTimeout(milliseconds);
