import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Locator, Page } from 'playwright/test';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The page has to be opened without its policy. */
export const putChecker = (page: Page) => page.addScriptTag({ content: axeSource });

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

/** Every rule, or those of color only: a look changes nothing else. Sheets are the same in every look and at every width. */
export async function violations(
  page: Page,
  rules: 'all' | 'color',
  sheets: boolean,
): Promise<readonly string[]> {
  const found = await page.evaluate(
    async ([which, withSheets]) => {
      const { axe } = globalThis as unknown as {
        axe: { run: (context: object, options: object) => Promise<{ violations: Violation[] }> };
      };
      const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
      // 7 to 1 instead of 4.5 to 1: read in sunlight.
      const color = 'color-contrast-enhanced';
      const context = withSheets ? { include: ['html'] } : { include: ['html'], exclude: ['.paper'] };
      const result = await axe.run(
        context,
        which === 'all'
          ? { runOnly: { type: 'tag', values: standards }, rules: { [color]: { enabled: true } } }
          : { runOnly: { type: 'rule', values: [color, 'link-in-text-block'] } },
      );
      return result.violations;
    },
    [rules, sheets] as const,
  );
  return found.flatMap((one) =>
    one.nodes.map((node) => `${one.id}: ${node.html.slice(0, 160)} — ${node.failureSummary}`),
  );
}

/** What a person with a keyboard alone does not come to, or comes to without seeing it. */
export async function outOfKeys(part: Locator): Promise<readonly string[]> {
  const page = part.page();
  const wanted = await part.evaluate((root) => {
    const all = [
      ...root.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [tabindex="0"]',
      ),
    ].filter((one) => one.checkVisibility() && !one.matches(':disabled') && one.tabIndex >= 0);
    // Of a group of radio buttons the keyboard comes to one, and the arrows to the others.
    const stops = all.filter(
      (one) => !(one instanceof HTMLInputElement && one.type === 'radio' && !one.checked),
    );
    for (const [place, one] of stops.entries()) one.dataset['stop'] = String(place);
    // A place to begin from, just before the part.
    const start = document.createElement('span');
    start.tabIndex = -1;
    root.before(start);
    start.focus();
    return stops.map((one) =>
      (one.textContent?.trim() || one.getAttribute('aria-label') || one.id).slice(0, 60),
    );
  });
  const seen = new Set<string>();
  const dim: string[] = [];
  for (let press = 0; press < wanted.length + 3 && seen.size < wanted.length; press += 1) {
    // oxlint-disable-next-line no-await-in-loop -- one key after the other
    await page.keyboard.press('Tab');
    // oxlint-disable-next-line no-await-in-loop
    const at = await page.evaluate(() => {
      const one = document.activeElement as HTMLElement | null;
      const rings = [one, one?.closest('.choice, .answer-cell')].map((ringed) =>
        ringed ? getComputedStyle(ringed) : undefined,
      );
      const isRinged = rings.some(
        (style) => style?.outlineStyle === 'solid' && parseFloat(style.outlineWidth) >= 2,
      );
      return { stop: one?.dataset['stop'], isRinged };
    });
    if (at.stop === undefined) continue;
    seen.add(at.stop);
    if (!at.isRinged) dim.push(`no ring: ${wanted[Number(at.stop)]}`);
  }
  await part.evaluate((root) => {
    root.previousElementSibling?.remove();
    for (const one of root.querySelectorAll<HTMLElement>('[data-stop]')) delete one.dataset['stop'];
  });
  return [
    ...wanted.filter((_one, place) => !seen.has(String(place))).map((name) => `not reached: ${name}`),
    ...dim,
  ];
}
