import { expect, type Page } from 'playwright/test';
import { putBack, putChecker, takeOutAlike, takeOutSheets, violations } from './pages/checker.ts';
import { lookAt, test } from './pages/reader.ts';

// The checker is put into the page as a script, which the policy of the page forbids to everybody else.
test.use({ withoutPolicy: true });

const pages = [
  'schedule',
  'opening/opening-103',
  'walk/opening-103',
  'plan',
  'project',
  'review',
  // With one row of its loads and exits open.
  'building/space-daycare',
  'pricing',
  'power',
  'print',
  'rules',
  'files',
  'legend',
];

test.setTimeout(90_000);

type Look = 'light' | 'dark' | 'sunlight';
type Sight = readonly [width: number, looks: readonly Look[]];

/** Where a surveyor stands with a phone, and where every sign and word is: seen in each look, and in a narrow window. */
const wholeAlways = ['walk/opening-103', 'legend'];
const first: readonly Sight[] = [[1440, ['light']]];
// A look changes colors only, and those are the same at every width. Sheets are the same in every look.
const others: readonly Sight[] = [
  [1440, ['dark', 'sunlight']],
  [390, ['light']],
];

async function expectNoBarrier(page: Page, address: string, sights: readonly Sight[]) {
  // All sheets of a building at once: long on a busy machine.
  if (address === 'print') test.setTimeout(180_000);
  // Without motion a new look stands at once; half-way colors would be measured otherwise.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await lookAt(page, address);
  // A sheet out of sight is a box of guessed height: its lines would be judged against the desk behind it.
  const style = await page.addStyleTag({ content: '.paper { content-visibility: visible !important; }' });
  await putChecker(page);
  for (const [width, looks] of sights) {
    await page.setViewportSize({ width, height: 900 });
    // The bar at the foot covers what lies under it until one scrolls: in a window as high as the page nothing does.
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    if (address.startsWith('walk')) await page.setViewportSize({ width, height: Math.max(900, height) });
    await takeOutAlike(page);
    for (const look of looks) {
      await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), look);
      if (look !== 'light' || width !== 1440) await takeOutSheets(page);
      const found = await violations(page, look === 'light' ? 'all' : 'color');
      expect(found, `${width} px, ${look}`).toEqual([]);
    }
    await putBack(page);
  }
  await style.evaluate((element) => (element as HTMLElement).remove());
}

// One test for each page: `npm run stories -- --grep "barrier: walk"` runs one page alone.
for (const address of pages) {
  const whole = wholeAlways.includes(address);
  test(`nobody meets a barrier: ${address}`, async ({ page }) => {
    await expectNoBarrier(page, address, whole ? [...first, ...others] : first);
  });
  if (whole) continue;
  test(`nobody meets a barrier in another look or a narrow window: ${address}`, { tag: '@long' }, async ({
    page,
  }) => {
    await expectNoBarrier(page, address, others);
  });
}
