import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { readFile } from 'node:fs/promises';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'playwright/test';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));
const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
};

/** The built app on a server of its own, which can bring out a newer version at any moment. */
async function release() {
  let version = 1;
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent((request.url ?? '/').replace(/[?].*$/, '')));
    const file = join(dist, path === '/' ? 'index.html' : path);
    if (!file.startsWith(dist) || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
    if (path === '/sw.js') void readFile(file, 'utf8').then((text) => response.end(`${text}\n// ${version}`));
    else createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const address = server.address();
  return {
    url: `http://127.0.0.1:${typeof address === 'object' ? address?.port : ''}/`,
    newVersion: () => version++,
    close: () => server.close(),
  };
}

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, serviceWorkers: 'allow' });

test('an update that arrives in mid-walk is offered, takes nothing away, and starts when it is told', {
  tag: '@long',
}, async ({ page }) => {
  test.setTimeout(180_000);
  const served = await release();
  try {
    await page.goto(`${served.url}#/walk/opening-103`);
    await expect(page.getByText('stored on this device')).toBeVisible({ timeout: 90_000 });
    await page.getByRole('button', { name: 'Skip the tour' }).tap();
    await page.getByText(/^Earlier answers/).tap();
    await page.getByRole('button', { name: 'Change Leaf width' }).tap();
    const width = page.getByRole('textbox', { name: /How wide is the leaf/ });
    await width.fill('42');
    await page.evaluate(() => Object.assign(globalThis, { sameWindow: true }));

    served.newVersion();
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await expect(page.getByText('A newer version of Latchward is ready.')).toBeVisible({ timeout: 90_000 });
    // Nobody was asked yet: the same window, the same question, and what was typed.
    await page.waitForTimeout(1500);
    expect(await page.evaluate(() => Reflect.get(globalThis, 'sameWindow'))).toBe(true);
    await expect(width).toHaveValue('42');
    await page.getByRole('region', { name: 'Next question' }).getByRole('button', { name: 'Answer' }).tap();

    await Promise.all([
      page.waitForEvent('load'),
      page.getByRole('button', { name: 'Start the new version' }).tap(),
    ]);
    await expect(page.getByRole('heading', { level: 1, name: '103', exact: true })).toBeVisible();
    expect(await page.evaluate(() => Reflect.get(globalThis, 'sameWindow'))).toBeUndefined();
    await page.getByText(/^Earlier answers/).tap();
    await expect(page.getByRole('listitem').filter({ hasText: 'Leaf width' })).toContainText('42 in');
  } finally {
    served.close();
  }
});
