import { expect, type Page, test } from 'playwright/test';
import { lookAt } from './pages/reader.ts';

const pages = [
  'schedule',
  'walk',
  'project',
  'review',
  'building',
  'plan',
  'pricing',
  'power',
  'print',
  'rules',
  'files',
  'legend',
];

/** What the policy of the page refused, and what went wrong on it. */
async function watched(page: Page): Promise<string[]> {
  const found: string[] = [];
  page.on('pageerror', (error) => found.push(error.message));
  page.on('console', (message) => {
    if (/Content Security Policy|Refused to/i.test(message.text())) found.push(message.text());
  });
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) =>
      console.error(`Refused to load ${event.blockedURI} by ${event.violatedDirective}`),
    );
  });
  return found;
}

test.describe('with what the browser has stored', () => {
  test.use({ serviceWorkers: 'allow' });

  test('a surveyor without a signal opens every page, also after a reload', async ({ page, context }) => {
    // Every file is stored first.
    test.setTimeout(180_000);
    const wrong = await watched(page);
    await page.goto('');
    await expect(page.getByText('stored on this device')).toBeVisible({ timeout: 60_000 });
    // The first screen of a phone: the tour and this notice leave four fifths of it to the page.
    await page.setViewportSize({ width: 390, height: 844 });
    const heights = await page
      .locator('.tour, .notices')
      .evaluateAll((parts) => parts.map((part) => part.getBoundingClientRect().height));
    expect(heights.every((height) => height > 0)).toBe(true);
    expect(heights.reduce((sum, height) => sum + height, 0)).toBeLessThanOrEqual(844 / 5);
    await page.setViewportSize({ width: 1440, height: 900 });
    await context.setOffline(true);
    const opens = async (name: string) => {
      await expect(page.locator('main h1').first(), name).toBeVisible({ timeout: 15_000 });
      await expect(page.getByText('could not be loaded')).toHaveCount(0);
      await expect(page.getByText('stopped working')).toHaveCount(0);
    };
    // Begun anew without a network, each page's own script comes out of what was stored.
    await page.reload();
    for (const name of pages) {
      await lookAt(page, name);
      await opens(name);
    }
    // And each of those where somebody stands when the app is begun anew.
    for (const name of ['walk', 'files']) {
      await page.goto(`#/${name}`);
      await page.reload();
      await opens(name);
    }
    expect(wrong).toEqual([]);
  });
});

test('a network that drops during the first load leaves a sentence and a way to load again, never a blank page', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const started = page.getByRole('button', { name: 'New opening' });
  // The page came and its program did not; then the program came and the page's own part did not.
  for (const [lost, says, again] of [
    [
      /assets\/index-.*\.js/,
      'Latchward has not loaded yet',
      page.getByRole('link', { name: 'Load the page again' }),
    ],
    [
      /SchedulePage-.*\.js/,
      'Schedule could not be loaded',
      page.getByRole('button', { name: 'Load the app again' }),
    ],
  ] as const) {
    await page.route(lost, (route) => route.abort('internetdisconnected'));
    await page.goto('about:blank');
    await page.goto('');
    await expect(page.getByRole('heading', { name: says })).toBeVisible();
    await page.unroute(lost);
    await again.click();
    await expect(started).toBeVisible();
    await expect(page.getByRole('heading', { name: says })).toHaveCount(0);
  }
});

/** No opening, rule or space is called so: words every object knows, and what no address may hold. */
const strangeIds = ['constructor', '__proto__', '%E0%A4%A', 'nobody'];
/** More of each kind, where a page costs little. */
const otherStrangeIds = ['toString', 'hasOwnProperty', '../x'];

test('no page breaks the policy, and no address breaks a page', async ({ page }) => {
  const wrong = await watched(page);
  await page.goto('');
  for (const name of pages) {
    await lookAt(page, name);
  }
  for (const name of ['opening', 'walk', 'rules', 'building']) {
    const cheap = name === 'opening' || name === 'walk';
    for (const id of cheap ? [...strangeIds, ...otherStrangeIds] : strangeIds) {
      await page.goto(`#/${name}/${id}`);
      await expect(page.locator('main h1').first(), `${name} ${id}`).toBeVisible();
      await expect(page.getByText('stopped working'), `${name} ${id}`).toHaveCount(0);
    }
  }
  expect(wrong).toEqual([]);
});

test('the server sends the policy, refuses what is not there and knows one address', async ({
  request,
  baseURL,
}) => {
  const page = await request.get('');
  expect(page.headers()).toMatchObject({
    'content-security-policy': expect.stringContaining("frame-ancestors 'none'"),
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'x-frame-options': 'DENY',
  });
  const code = async (path: string, options = {}) =>
    (await request.get(path, { maxRedirects: 0, ...options })).status();
  expect(await code('assets/gone.js')).toBe(404);
  expect(await code('nowhere')).toBe(404);
  expect(await code('%E0%A4%A')).toBeGreaterThanOrEqual(400);
  expect(await code('index.html', { headers: { Range: 'bytes=5-1' } })).toBe(416);
  const port = new URL(baseURL ?? '').port;
  const named = await request.get('', { headers: { Host: `localhost:${port}` }, maxRedirects: 0 });
  expect([named.status(), named.headers()['location']]).toEqual([308, `http://127.0.0.1:${port}/`]);
});
