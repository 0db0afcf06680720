import { gzipSync } from 'node:zlib';
import { type APIRequestContext, expect, test } from 'playwright/test';

const goalBytes = 200_000;

/** The script of the page, the part that shows the schedule, the worker of the second copy, and what each imports first. */
async function firstScript(request: APIRequestContext): Promise<ReadonlyMap<string, number>> {
  const text = async (path: string) => (await request.get(path)).text();
  const inPage = [...(await text('')).matchAll(/<script [^>]*src="\.\/([^"]+)"/g)].flatMap(
    ([, src]) => src ?? [],
  );
  const entry = inPage.find((src) => src.startsWith('assets/')) ?? '';
  const [, page = ''] = /import\(`?"?'?\.\/(SchedulePage-[^`"']+)/.exec(await text(entry)) ?? [];
  const found = new Map<string, number>();
  const waiting = [...inPage, `assets/${page}`];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (found.has(path)) continue;
    // oxlint-disable-next-line no-await-in-loop -- each names the next
    const script = await text(path);
    found.set(path, gzipSync(script).length);
    for (const [, worker] of script.matchAll(/new URL\(["'`](copyWorker-[^"'`]+)["'`]/g))
      waiting.push(`assets/${worker}`);
    // Imports stand at the head of a file and name what they take, or nothing; "import(" comes later.
    for (const [, name] of script.matchAll(/(?:^|;|\})import(?:[^"'`()]*from)?["'`]\.\/([^"'`]+)["'`]/g)) {
      waiting.push(`assets/${name}`);
    }
  }
  return found;
}

test('the schedule stands with 200 kB of script, and says of no opening more than is decided', async ({
  page,
  request,
}) => {
  const first = await firstScript(request);
  const total = [...first.values()].reduce((sum, bytes) => sum + bytes, 0);
  console.log(
    [...first].map(([name, bytes]) => `${(bytes / 1000).toFixed(1).padStart(7)} kB  ${name}`).join('\n'),
  );
  console.log(`${(total / 1000).toFixed(1)} kB of script before the first screen`);
  expect(first.size).toBeGreaterThan(3);
  expect(total).toBeLessThanOrEqual(goalBytes);

  // Every other script comes only when it is let through.
  let letThrough: () => void = () => undefined;
  const gate = new Promise<void>((open) => (letThrough = open));
  await page.route('**/*.js', async (route) => {
    if (!first.has(new URL(route.request().url()).pathname.slice(1))) await gate;
    await route.continue();
  });
  await page.goto('', { waitUntil: 'commit' });
  await expect(page.getByRole('button', { name: 'New opening' })).toBeVisible();
  const waiting = page.getByRole('table', { name: 'Openings, being decided' });
  await expect(waiting.getByRole('row', { name: /^103 .*Deciding…$/ })).toBeVisible();
  await expect(page.getByRole('status').filter({ hasText: 'being decided' })).toBeVisible();
  await expect(page.getByText('Settled', { exact: true })).toHaveCount(0);
  await page.getByRole('searchbox', { name: 'Find in every field' }).fill('103');

  letThrough();
  await expect(page.getByRole('grid', { name: 'Openings' }).getByRole('link', { name: '103' })).toBeVisible();
  await expect(waiting).toHaveCount(0);
  await expect(page.getByRole('searchbox', { name: 'Find in every field' })).toHaveValue('103');
});
