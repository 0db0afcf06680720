/**
 * Cuts the end off the log of the browser's database, as a power failure within a save does, then works on, quits and
 * starts again. `npx tsx scripts/harness/powerCut.ts 16` after `npm run build`; ends with 1 when anything was lost.
 */
import { spawn } from 'node:child_process';
import { mkdtemp, readdir, rm, stat, truncate } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { type BrowserContext, chromium } from 'playwright';
import { newWindow } from '../../tests/stories/pages/window.ts';
import { browserArgs, findBrowser } from '../browser.mjs';
import { argumentsOf, countOf, refuse } from '../lib/arguments.mjs';
import { freePort } from '../lib/free-port.mjs';

const { words } = argumentsOf({ usage: 'npx tsx scripts/harness/powerCut.ts [cuts]', words: ['cuts'] });
const cuts = countOf(words[0], 'The number of cuts', 4);
const executablePath = findBrowser();
if (executablePath === undefined)
  refuse('The harness needs Chromium. Run: node scripts/browser.mjs --install');
const port = await freePort();
const baseURL = `http://127.0.0.1:${port}/`;
const server = spawn(process.execPath, ['scripts/serve-built.mjs', String(port)], { stdio: 'ignore' });

/** The server needs a moment; a browser that comes first is refused. */
async function served(tries = 50): Promise<void> {
  const isUp = await fetch(baseURL).then(
    (answer) => answer.ok,
    () => false,
  );
  if (isUp) return;
  if (tries === 0) throw new Error('The built app is not served. Run `npm run build` first.');
  await setTimeout(200);
  await served(tries - 1);
}

const start = (profile: string) =>
  chromium.launchPersistentContext(profile, { executablePath, args: browserArgs, baseURL });

async function saved(context: BrowserContext, marks: readonly string[]) {
  const window = await newWindow(context);
  for (const mark of marks) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other, as somebody types
    await window.addOpening(mark);
    // oxlint-disable-next-line no-await-in-loop
    await window.heading(mark).waitFor();
  }
  await window.page.locator('[data-saving="saved"]').waitFor({ timeout: 20_000 });
  return window;
}

async function databaseLog(profile: string): Promise<string> {
  const all = await readdir(profile, { recursive: true });
  const logs = all.filter((name) => name.includes('indexeddb.leveldb') && name.endsWith('.log'));
  const [log] = logs.toSorted();
  if (log === undefined) throw new Error('The profile holds no log of a database.');
  return path.join(profile, log);
}

async function cut(index: number): Promise<string> {
  const profile = await mkdtemp(path.join(tmpdir(), 'latchward-power-'));
  try {
    const first = await start(profile);
    const before = await saved(first, ['ZZ-1']);
    const size = (await stat(await databaseLog(profile))).size;
    await before.addOpening('ZZ-2');
    await before.heading('ZZ-2').waitFor();
    await before.page.locator('[data-saving="saved"]').waitFor({ timeout: 20_000 });
    await first.close();
    const log = await databaseLog(profile);
    const end = (await stat(log)).size;
    const lastSave = Math.max(end - size, 1);
    await truncate(log, Math.max(0, end - Math.ceil((lastSave * (index + 1)) / (cuts + 1))));
    const second = await start(profile);
    await saved(second, ['ZZ-3']);
    await second.close();
    const third = await start(profile);
    const after = await newWindow(third);
    const missing: string[] = [];
    for (const mark of ['ZZ-1', 'ZZ-2', 'ZZ-3']) {
      // oxlint-disable-next-line no-await-in-loop -- one search field
      await after.find(mark);
      // oxlint-disable-next-line no-await-in-loop
      const isThere = await after
        .row(mark)
        .waitFor({ timeout: 5_000 })
        .then(
          () => true,
          () => false,
        );
      if (!isThere) missing.push(mark);
    }
    const said = await after.page.locator('.notices .message p').allTextContents();
    await third.close();
    return missing.length > 0
      ? `LOST ${missing.join(', ')}`
      : `kept${said.length > 0 ? `; said: ${said[0]}` : ''}`;
  } finally {
    await rm(profile, { recursive: true, force: true });
  }
}

let lost = 0;
try {
  await served();
  for (let index = 0; index < cuts; index += 1) {
    // oxlint-disable-next-line no-await-in-loop -- one browser at a time
    const outcome = await cut(index);
    if (outcome.startsWith('LOST')) lost += 1;
    console.log(`${index + 1} of ${cuts}: ${outcome}`);
  }
} finally {
  server.kill();
}
console.log(`${cuts} cuts, ${lost} with a loss`);
process.exitCode = lost > 0 ? 1 : 0;
