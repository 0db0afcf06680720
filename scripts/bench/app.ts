import { spawn } from 'node:child_process';
import { type Browser, chromium, type Page } from 'playwright';
import type { Project } from '../../src/domain/model/project.ts';
import { saveProjectText } from '../../src/domain/versions/file.ts';
import { browserArgs, findBrowser } from '../browser.mjs';
import { freePort } from '../lib/free-port.mjs';

/** The built app in a real browser, served and stopped again around the work. */
export async function withApp(work: (browser: Browser, address: string) => Promise<void>): Promise<void> {
  const port = await freePort();
  const address = `http://127.0.0.1:${port}/`;
  const server = spawn(process.execPath, ['scripts/serve-built.mjs', String(port)], { stdio: 'inherit' });
  try {
    for (;;) {
      const up = await fetch(address).then(
        ({ ok }) => ok,
        () => false,
      );
      if (up) break;
      await new Promise((done) => setTimeout(done, 200));
    }
    const executablePath = findBrowser();
    if (executablePath === undefined) throw new Error('No browser. Run: node scripts/browser.mjs --install');
    const browser = await chromium.launch({ executablePath, args: browserArgs });
    await work(browser, address);
    await browser.close();
  } finally {
    server.kill();
  }
}

/** A window in which the project is open. */
export async function pageOf(browser: Browser, address: string, project: Project): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  await page.addInitScript(() => localStorage.setItem('latchward.tourSeen', 'yes'));
  await page.goto(`${address}#/files`, { timeout: 120_000 });
  const file = page.locator('input[type="file"][accept*="json"]').first();
  await file.waitFor({ timeout: 120_000 });
  const json = {
    name: 'bench.json',
    mimeType: 'application/json',
    buffer: Buffer.from(saveProjectText(project)),
  };
  await file.setInputFiles(json, { timeout: 120_000 });
  await page.getByText('was opened').waitFor({ timeout: 120_000 });
  return page;
}

export const middleOf = (ms: readonly number[]): number =>
  ms.toSorted((a, b) => a - b)[Math.floor(ms.length / 2)] ?? 0;
