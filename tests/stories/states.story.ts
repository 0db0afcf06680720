import { expect, type Page, test } from 'playwright/test';
import { outOfKeys, putBack, putChecker, takeOutAlike, violations } from './pages/checker.ts';
import { filesPage, openFile } from './pages/files.ts';
import { fillDisk, newWindow } from './pages/window.ts';

/**
 * No barrier where something is asked, refused or broken: those states are seen less often than the pages and are met
 * by people in trouble. Each window goes through several of them, because to start the app takes longer than to look.
 */
test.use({ bypassCSP: true, actionTimeout: 15_000 });
test.setTimeout(240_000);

async function expectNoBarrier(page: Page, state: string, part: string) {
  const look = (name: string) =>
    page.evaluate((theme) => document.documentElement.setAttribute('data-theme', theme), name);
  await look('light');
  await takeOutAlike(page);
  expect(await violations(page, 'all'), state).toEqual([]);
  await look('dark');
  expect(await violations(page, 'color'), `${state}, dark`).toEqual([]);
  await look('light');
  await putBack(page);
  expect(await outOfKeys(page.locator(part).first()), state).toEqual([]);
}

test('nobody meets a barrier where the Files page asks, refuses, previews and compares', async ({
  context,
}) => {
  const window = await newWindow(context);
  const { page } = window;
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await putChecker(page);
  await expectNoBarrier(page, 'tour', '.tour');

  const files = filesPage(page);
  await files.open();
  const copy = await window.saveCopy();
  await files.paste([
    'Door No.\tWidth\tFire Rating',
    'ZZ-1\twide\t20 MIN',
    'ZZ-1\t36 in\tB',
    '\t36 in\tnone',
  ]);
  await expect(files.preview).toContainText('Mark ZZ-1 stands in row 2');
  await page.getByText('With a passphrase').click();
  await page.getByRole('textbox', { name: 'Passphrase for the copy' }).fill('four random words here');
  const projects = page.getByRole('region', { name: 'Projects in this browser' });
  await projects.getByRole('button', { name: /^Erase for good/ }).click();
  await expect(projects).toContainText('cannot be brought back');
  const part = page.getByRole('region', { name: 'Project file', exact: true });
  await part
    .getByLabel('Project file', { exact: true })
    .setInputFiles({ name: 'list.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
  await expect(part.getByRole('alert')).toBeVisible();
  await expectNoBarrier(page, 'preview, erasing, passphrase, a refused file', 'main');

  await page.goto('#/project');
  await page.getByLabel('Name of the project').fill('Another name');
  await page.getByLabel('Name of the project').press('Tab');
  await files.open();
  await openFile(page, copy);
  await expect(page.getByRole('region', { name: 'The project is here already' })).toContainText(
    'Nothing has changed yet',
  );
  await expectNoBarrier(page, 'the same project in a file', '.import-preview');

  await page.getByRole('button', { name: 'Help' }).click();
  await expect(page.getByRole('dialog', { name: 'Help' })).toBeVisible();
  await expectNoBarrier(page, 'help', 'dialog[open]');
});

test('nobody meets a barrier on a full disk, in a second window, and on a page that did not load', {
  tag: '@long',
}, async ({ context }) => {
  const first = await newWindow(context);
  await expect(first.saving).toContainText('Saved');
  const second = await newWindow(context);
  await expect(second.saving).toContainText('Read only');
  await putChecker(second.page);
  await second.page.goto('#/project');
  await expect(second.page.getByRole('region', { name: 'Code basis' })).toBeVisible();
  await expectNoBarrier(second.page, 'read only', '.masthead');
  await second.page.close();

  // Typed text that cannot be taken, with its sentence.
  const { page } = first;
  await putChecker(page);
  await page.getByRole('button', { name: 'Skip the tour' }).click();
  await page.getByRole('button', { name: 'New opening' }).click();
  await page.getByRole('textbox', { name: 'Mark', exact: true }).fill('103');
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await expect(page.getByText('already used').first()).toBeVisible();
  await expectNoBarrier(page, 'a mark that is taken', 'main form');

  await page.getByRole('button', { name: 'Cancel' }).click();

  await fillDisk(page, true);
  await first.addOpening('ZZ-FULL');
  await expect(first.saving).toContainText('Not saved');
  await expect(first.heading('ZZ-FULL')).toBeVisible();
  await expectNoBarrier(page, 'a full disk', '.masthead');
  await fillDisk(page, false);
  // The next edit saves; how long the app waits by itself is the story of P3.
  await first.addOpening('ZZ-ROOM');
  await expect(first.saving).toContainText('Saved');

  // Offline, with a page that was never fetched.
  await page.route(/LegendPage/, (route) => route.abort());
  await page.reload();
  await expect(first.saving).toContainText('Saved');
  await putChecker(page);
  await context.setOffline(true);
  await page.goto('#/legend');
  await expect(page.getByRole('heading', { name: 'Legend could not be loaded' })).toBeVisible();
  await expectNoBarrier(page, 'a page that did not load', 'main [role="alert"]');
});

/** Luminance of a color that the browser has worked out, as in WCAG 2.2. */
const contrastOf = (page: Page, selector: string, property: 'stroke' | 'color') =>
  page
    .locator(selector)
    .first()
    .evaluate((element, name) => {
      const luminance = (color: string) => {
        const parts = [...color.matchAll(/[\d.]+/g)].slice(0, 3).map((one) => {
          const part = Number(one[0]) / 255;
          return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * (parts[0] ?? 0) + 0.7152 * (parts[1] ?? 0) + 0.0722 * (parts[2] ?? 0);
      };
      const paper = document.createElement('div');
      paper.style.background = 'Canvas';
      document.body.append(paper);
      const both = [getComputedStyle(element)[name], getComputedStyle(paper).backgroundColor].map(luminance);
      paper.remove();
      const [dark = 0, light = 0] = both.toSorted((a, b) => a - b);
      return (light + 0.05) / (dark + 0.05);
    }, property);

/** Everything by which a person sees what state an element is in. */
const lookOf = (page: Page, selector: string) =>
  page
    .locator(selector)
    .first()
    .evaluate((element) => {
      const { backgroundColor, color, borderTopStyle, borderTopWidth, outlineStyle, outlineWidth } =
        getComputedStyle(element);
      return [backgroundColor, color, borderTopStyle, borderTopWidth, outlineStyle, outlineWidth].join(' ');
    });

test('in forced colors every state stays apart, drawings stay visible; without motion nothing moves', {
  tag: '@long',
}, async ({ context }) => {
  const { page } = await newWindow(context);
  await page.getByRole('button', { name: 'Skip the tour' }).click();
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce', colorScheme });
    await page.goto('#/opening/opening-103');
    await expect(page.locator('main h1').first()).toBeVisible();
    expect(await contrastOf(page, '.drawing svg line', 'stroke'), colorScheme).toBeGreaterThanOrEqual(7);
    expect(await contrastOf(page, 'main h1', 'color'), colorScheme).toBeGreaterThanOrEqual(7);
    await page.goto('#/building');
    await expect(page.locator('.floor-drawing').first()).toBeVisible();
    expect(await contrastOf(page, '.floor-drawing rect', 'stroke'), colorScheme).toBeGreaterThanOrEqual(7);
  }
  await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce', colorScheme: 'dark' });
  await page.goto('#/walk/opening-103');
  await page
    .getByRole('button', { name: /^Change / })
    .first()
    .click();
  await expect(page.locator('main button[aria-pressed="true"]').first()).toBeVisible();
  expect(await lookOf(page, 'main button[aria-pressed="true"]')).not.toBe(
    await lookOf(page, 'main button[aria-pressed="false"]'),
  );
  await page.goto('#/schedule');
  await page.getByRole('gridcell').first().focus();
  await page.keyboard.press('ArrowDown');
  expect(await lookOf(page, '.grid-row[data-current]')).not.toBe(
    await lookOf(page, '.grid-row:not([data-current])'),
  );
  const ring = page.locator(':focus-visible');
  expect(await ring.evaluate((one) => getComputedStyle(one).outlineStyle)).toBe('solid');

  // Every drawing on every page is named, or is a shape beside its word.
  for (const [address, drawn] of [
    ['opening/opening-103', '.drawing svg'],
    ['building', '.floor-drawing'],
    ['legend', 'main svg'],
  ] as const) {
    await page.goto(`#/${address}`);
    await expect(page.locator(drawn).first()).toBeAttached();
    const nameless = await page.evaluate(() =>
      [...document.querySelectorAll('svg')].flatMap((one) => {
        if (one.closest('[aria-hidden="true"]')) return [];
        const by = one.getAttribute('aria-labelledby');
        const named = by?.split(' ').map((id) => document.getElementById(id)?.textContent ?? '');
        const name = one.getAttribute('aria-label') ?? named?.join(' ') ?? '';
        const isNamed = /^(img|group)$/.test(one.getAttribute('role') ?? '') && name.trim().includes(' ');
        return isNamed ? [] : [`${name}: ${one.outerHTML.slice(0, 120)}`];
      }),
    );
    expect(nameless, address).toEqual([]);
    const moving = await page.evaluate(() => [
      ...document.getAnimations().map((one) => one.id || one.constructor.name),
      ...[...document.querySelectorAll('*')]
        .filter((one) => {
          const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(one);
          return (
            !/^0m?s(, 0m?s)*$/.test(transitionDuration) ||
            animationName !== 'none' ||
            scrollBehavior === 'smooth'
          );
        })
        .map((one) => one.className),
    ]);
    expect(moving, address).toEqual([]);
  }
});
