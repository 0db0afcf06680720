/** What the harnesses without screens share: a page that is the session alone, and one life of it after the other. */
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright';
import { build, preview } from 'vite';
import { browserArgs, findBrowser } from '../browser.mjs';
import { refuse } from '../lib/arguments.mjs';
import { freePort } from '../lib/free-port.mjs';
import { inRoot } from '../lib/repo.mjs';

interface Found {
  readonly name: string;
  readonly notes: string;
  readonly marks: readonly string[];
  readonly said: readonly string[];
}

/** What the page hands out (`bare/main.ts`). */
interface Bare {
  readonly start: (small: boolean) => Promise<void>;
  readonly edits: (from: number, count: number, gapMs: number) => Promise<void>;
  readonly found: () => Found;
  readonly flush: () => Promise<void>;
  readonly saving: () => string;
}
declare global {
  // oxlint-disable-next-line no-var -- a global is declared so
  var bare: Bare;
}

export interface Session {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly found: Found;
  /** Resolves when the page next says this of its saving, or after three seconds. */
  readonly next: (state: string) => Promise<void>;
}

/** An edit is taken when the session has accepted it, and shown a frame later, when a person could see it. */
export type Hear = (what: 'taken' | 'shown', serial: number) => void;

export interface BareBench {
  /** Starts the browser on a profile and the session in it, and hears the number of each edit. */
  readonly start: (profile: string, hear: Hear) => Promise<Session>;
  readonly small: boolean;
}

/** Runs lives, each on a profile of its own, and ends with 1 when anything was lost or a life could not be judged. */
export async function bareLives(
  lives: number,
  live: (bench: BareBench, profile: string, index: number) => Promise<void>,
): Promise<{ readonly failed: number }> {
  const executablePath = findBrowser();
  if (executablePath === undefined)
    refuse('The harness needs Chromium. Run: node scripts/browser.mjs --install');
  const folder = await mkdtemp(path.join(tmpdir(), 'latchward-bare-'));
  const root = inRoot('scripts', 'harness', 'bare');
  const outDir = path.join(folder, 'dist');
  await build({
    root,
    base: './',
    configFile: false,
    logLevel: 'warn',
    build: { outDir, emptyOutDir: true },
  });
  const port = await freePort();
  const server = await preview({
    root,
    configFile: false,
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port, strictPort: true, open: false },
  });
  const startOf =
    (small: boolean): BareBench['start'] =>
    async (profile, hear) => {
      const context = await chromium.launchPersistentContext(profile, {
        executablePath,
        args: browserArgs,
        timeout: 120_000,
      });
      const page = context.pages()[0] ?? (await context.newPage());
      const waiting = new Map<string, () => void>();
      await page.exposeBinding('heard', (_source, event: string) => {
        const [kind, serial] = event.split(' ');
        if (kind === 'taken' || kind === 'shown') hear(kind, Number(serial));
        waiting.get(event)?.();
        waiting.delete(event);
      });
      await page.goto(`http://127.0.0.1:${port}/`);
      await page.waitForFunction(() => 'bare' in globalThis);
      await page.evaluate((isSmall) => globalThis.bare.start(isSmall), small);
      const found = await page.evaluate(() => globalThis.bare.found());
      const next = (state: string) =>
        new Promise<void>((resolve) => {
          const timer = setTimeout(resolve, 3_000);
          waiting.set(state, () => {
            clearTimeout(timer);
            resolve();
          });
        });
      return { context, page, found, next };
    };
  let failed = 0;
  try {
    const kept: Record<'small' | 'large', string> = {
      small: path.join(folder, 'small'),
      large: path.join(folder, 'large'),
    };
    for (const size of ['small', 'large'] as const) {
      // oxlint-disable-next-line no-await-in-loop -- one browser at a time
      const { context, page } = await startOf(size === 'small')(kept[size], () => undefined);
      // oxlint-disable-next-line no-await-in-loop
      await page.evaluate(() => globalThis.bare.flush());
      // oxlint-disable-next-line no-await-in-loop
      await context.close();
    }
    for (let index = 0; index < lives; index += 1) {
      const small = index % 4 !== 3;
      const profile = path.join(folder, `life-${index}`);
      // oxlint-disable-next-line no-await-in-loop
      await cp(small ? kept.small : kept.large, profile, { recursive: true });
      // oxlint-disable-next-line no-await-in-loop
      await live({ start: startOf(small), small }, profile, index).catch((error: unknown) => {
        failed += 1;
        console.log(`life ${index + 1} could not be judged: ${String(error).split('\n')[0]}`);
      });
      // oxlint-disable-next-line no-await-in-loop
      await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    }
  } finally {
    await server.close();
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
  return { failed };
}

/** What of these edits a start does not find: each added an opening, and the newest one wrote the notes. */
export function lostOf(found: Found, serials: readonly number[]): string[] {
  const marks = new Set(found.marks);
  const lost = serials.map((serial) => `ZZ-${serial}`).filter((mark) => !marks.has(mark));
  const newest = serials.at(-1);
  if (newest === undefined) return lost;
  // An edit of which nobody heard may have been kept too.
  const noted = Number(/^ZZ-(\d+)$/.exec(found.notes)?.[1] ?? Number.NaN);
  return noted >= newest ? lost : [...lost, `notes of ZZ-${newest}, found “${found.notes}”`];
}
